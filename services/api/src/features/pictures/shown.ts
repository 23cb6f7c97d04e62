import { draw } from "./draw.js";
import type { PictureName } from "./look.js";

/** Pictures that README.md shows. They lie beside the answers that the documentation shows, since a page without a service has no routes. */
export const shownNames = [
  "chart-under-water",
  "light-with-depth",
  "filter-map",
] as const satisfies readonly PictureName[];

export const fileOf = (name: PictureName): URL =>
  new URL(`../../../docs/generated/${name}.svg`, import.meta.url);

/** The dive that README.md begins with, by the height of its sun. */
const scene = {
  visibility_m: 25,
  water_hue: "blue",
  sun_elevation_deg: 50,
  min_depth_m: 5,
  max_depth_m: 18,
};

/** The text of a picture that is shown. */
export function shown(name: PictureName): string {
  const look = { format: "svg", width_px: 800, theme: "light" } as const;
  const drawn = draw({ name, scene, look, language: "en" });
  if (drawn.status !== "ok") throw new Error(`${name} has no picture.`);
  return Buffer.from(drawn.bytes).toString("utf8");
}
