import { densityToStops, stopsToDensity } from "@sunfathom/optics";
import {
  type ExposureLimits,
  FITS_WITHIN_STOPS,
  limitsOf,
  settingsFor,
} from "../camera/exposure-settings.js";
import type { Setting } from "../codes/steps.js";
import { meteredOnSubject, sensitivityFor } from "../exposure-loss/sensitivity.js";
import { handDepth } from "../light/hand-depth.js";
import { itemAt, lastOf, type NonEmpty, nonEmpty } from "../lists/non-empty.js";
import type { ExposureAtDepth } from "../result/exposure-loss.js";
import type { FilterChange, KitItem, Scene } from "../scene/scene.js";
import type { Leg } from "./legs.js";

/** For less than this nobody mounts neutral density: the aperture or the exposure time takes it. A judgement. */
const WORTH_NEUTRAL_STOPS = 1;
/** Neutral filters are sold in whole stops. */
const DENSITY_A_STOP = 0.3;
const hundredths = (density: number): number => Math.round(density * 100) / 100;

/** A depth of one leg, and how the camera is set there. */
export interface Station {
  leg: Leg;
  exposure: ExposureAtDepth;
  setting: Setting;
}

interface Neutral {
  density: number;
  /** What is too much at the brightest place, in stops. */
  excess_stops: number;
  mount: FilterChange;
  /** The caller's, if one is owned. */
  id?: string;
  /** Where it comes off going down and goes on coming up; absent where it stays on. */
  off?: { leg: Leg; depth_m: number; behind: Setting; without: Setting };
}

export interface ExposurePlan {
  /** Shallow first; where legs meet there is one for each. */
  stations: NonEmpty<Station>;
  neutral?: Neutral;
}

const offBy = (ev100: number, limits: ExposureLimits): number =>
  settingsFor(sensitivityFor(ev100), limits).off_by_stops;

/** Stops too bright at the least sensitive settings; below 0 where there is room. */
const excessAt = (ev100: number, { min_iso, max_f_number, shutter_s }: ExposureLimits): number =>
  -Math.log2((sensitivityFor(ev100) * max_f_number ** 2) / shutter_s / min_iso);

function set(ev100: number, limits: ExposureLimits, density?: number): Setting {
  const { iso, f_number } = settingsFor(
    sensitivityFor(ev100 - (density === undefined ? 0 : densityToStops(density))),
    limits,
  );
  return { iso, f_number, ...(density === undefined ? {} : { behind: { density } }) };
}

/** Exposure times shorter than those of a film's frame, as they stand on a dial: thirds of a stop, one over these seconds. */
const DIAL_HZ = [
  60, 80, 100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250, 1600, 2000, 2500, 3200, 4000, 5000,
  6400, 8000,
];

/** Without neutral density: the aperture closes beyond what the diver fixed, and then the exposure gets shorter. */
function closed(ev100: number, scene: Scene): Setting {
  const own = limitsOf(scene);
  if (offBy(ev100, own) <= FITS_WITHIN_STOPS) return set(ev100, own);
  const free = { ...own, max_f_number: scene.max_f_number };
  const left = offBy(ev100, free);
  if (left <= FITS_WITHIN_STOPS) return set(ev100, free);
  const needed = 2 ** left / own.shutter_s;
  const shutter_s = 1 / (DIAL_HZ.find((hz) => hz >= needed) ?? needed);
  return { ...set(ev100, { ...free, shutter_s }), shutter: { shutter_s } };
}

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

/**
 * How the camera is set over the dive. Neutral density is used where it can come off as soon as it is not needed, or is needed all the
 * way; elsewhere the aperture closes, and the exposure gets shorter, for as long as it is too bright.
 */
export function exposurePlanFor(scene: Scene, legs: Readonly<NonEmpty<Leg>>): ExposurePlan {
  const limits = limitsOf(scene);
  const points = legs.flatMap((leg) =>
    leg.exposure.depths.map((exposure) => ({ leg, exposure, ev: meteredOnSubject(exposure) })),
  );
  const excess = points.map(({ ev }) => excessAt(ev, limits));
  const most = Math.max(...excess);
  const bright = excess.map((stops) => stops > FITS_WITHIN_STOPS);
  const plain = (): ExposurePlan => ({
    stations: nonEmpty(
      points.map(({ leg, exposure, ev }) => ({ leg, exposure, setting: closed(ev, scene) })),
      "stations",
    ),
  });
  // A camera that exposes itself shortens the exposure instead.
  if (most < WORTH_NEUTRAL_STOPS || scene.exposure_mode === "auto") return plain();

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
  if (!taking || !joined || (scene.filter_change_underwater === "none" && !all)) return plain();
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

/** How far one setting lets in more light than another, in stops. */
export const opensBy = (from: Setting, to: Setting, shutter_s: number): number =>
  Math.log2(to.iso / from.iso) -
  2 * Math.log2(to.f_number / from.f_number) +
  Math.log2((to.shutter?.shutter_s ?? shutter_s) / (from.shutter?.shutter_s ?? shutter_s));

export const startOfPlan = ({ stations }: ExposurePlan): Station => stations[0];
export const endOfPlan = ({ stations }: ExposurePlan): Station => lastOf(stations);
