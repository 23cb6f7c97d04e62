import { sunPosition } from "@sunfathom/optics";
import type { Conditions } from "./conditions.js";

/** Where place and day are not known, a sun that much of the world sees at noon through much of the year. */
const TYPICAL_NOON_DEG = 60;
const QUARTER_HOUR_MS = 15 * 60 * 1000;
const QUARTERS_EITHER_SIDE = 48;

/** The highest sun within twelve hours of the scene's instant, or a typical noon where place and time are not known. */
export function highestSun_deg({ scene, sun }: Conditions): number {
  const { latitude_deg, longitude_deg } = scene;
  if (!sun?.instant || latitude_deg === undefined || longitude_deg === undefined) return TYPICAL_NOON_DEG;
  const start = sun.instant.getTime();
  let highest = sun.elevation_deg;
  for (let quarter = -QUARTERS_EITHER_SIDE; quarter <= QUARTERS_EITHER_SIDE; quarter++) {
    const at = new Date(start + quarter * QUARTER_HOUR_MS);
    highest = Math.max(highest, sunPosition({ latitude_deg, longitude_deg }, at).elevation_refracted_deg);
  }
  return highest;
}
