import { densityToStops, stopsToDensity } from "@sunfathom/optics";
import { FITS_WITHIN_STOPS, limitsOf } from "../camera/exposure-settings.js";
import { handDepth } from "../light/hand-depth.js";
import { itemAt, nonEmpty } from "../lists/non-empty.js";
import type { ExposureAtDepth } from "../result/exposure-loss.js";
import type { KitItem, Scene } from "../scene/scene.js";
import type { Leg } from "./legs.js";
import { type ExposurePlan, type Neutral, offBy, set } from "./station.js";

/** Neutral filters are sold in whole stops. */
const DENSITY_A_STOP = 0.3;
const hundredths = (density: number): number => Math.round(density * 100) / 100;

/** The weakest that is owned and enough, else the next whole stop. */
function densityFor(excess: number, kit: readonly KitItem[] = []): { density: number; id?: string } {
  const owned = kit
    .flatMap(({ id, item, filter_kind, filter_density: density }) =>
      item === "lens_filter" && filter_kind === "neutral" && density !== undefined ? [{ id, density }] : [],
    )
    .filter(({ density }) => densityToStops(density) >= excess - FITS_WITHIN_STOPS)
    .sort((a, b) => a.density - b.density)[0];
  return owned ?? { density: hundredths(Math.ceil(excess - FITS_WITHIN_STOPS) * DENSITY_A_STOP) };
}

/** A depth of one leg, and what a meter reads there. */
interface Point {
  leg: Leg;
  exposure: ExposureAtDepth;
  ev: number;
}

/**
 * The plan with neutral density over what is too bright; undefined where it would have to come off and go on again on the way, or
 * cannot come off.
 * @param excess at each point, in stops too bright at the least sensitive settings
 */
export function neutralPlan(
  scene: Scene,
  points: readonly Point[],
  excess: readonly number[],
): ExposurePlan | undefined {
  const limits = limitsOf(scene);
  const most = Math.max(...excess);
  const bright = excess.map((stops) => stops > FITS_WITHIN_STOPS);
  const lastBright = bright.lastIndexOf(true);
  const all = lastBright === points.length - 1;
  const zone = points.slice(0, lastBright + 1);
  const joined = bright.slice(0, lastBright + 1).every((is) => is);
  const reaches = ({ density: taken }: { density: number }) =>
    zone.every(({ ev }) => offBy(ev - densityToStops(taken), limits) >= -FITS_WITHIN_STOPS);
  // A camera with nothing free asks for just what is too much.
  const exact = { density: hundredths(stopsToDensity(most)) };
  const taking: { density: number; id?: string } | undefined = [densityFor(most, scene.kit), exact].find(
    reaches,
  );
  if (!taking || !joined || (scene.filter_change_underwater === "none" && !all)) return undefined;
  const { density, id } = taking;
  const neutral: Neutral = {
    density,
    excess_stops: most,
    mount: scene.filter_change_underwater,
    ...(id === undefined ? {} : { id }),
  };
  const stations = points.map(({ leg, exposure, ev }, i) => ({
    leg,
    exposure,
    setting: i <= lastBright ? set(ev, limits, density) : set(ev, limits),
  }));
  if (all) return { stations: nonEmpty(stations, "stations"), neutral };

  // It comes off between the last place where it is needed and the first where it is not.
  const [from, to] = [itemAt(points, lastBright), itemAt(points, lastBright + 1)];
  const over = itemAt(excess, lastBright) - FITS_WITHIN_STOPS;
  const fall = itemAt(excess, lastBright) - itemAt(excess, lastBright + 1);
  const share = from.exposure.depth_m === to.exposure.depth_m ? 1 : Math.min(1, over / fall);
  const between_m = from.exposure.depth_m + share * (to.exposure.depth_m - from.exposure.depth_m);
  const ev = from.ev + share * (to.ev - from.ev);
  const off = {
    leg: from.leg,
    depth_m: handDepth(between_m, from.leg.scene),
    behind: set(from.leg === to.leg ? ev : from.ev, limits, density),
    without: set(ev, limits),
  };
  return { stations: nonEmpty(stations, "stations"), neutral: { ...neutral, off } };
}
