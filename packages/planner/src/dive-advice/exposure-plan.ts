import { type ExposureLimits, FITS_WITHIN_STOPS, limitsOf } from "../camera/exposure-settings.js";
import type { Setting } from "../codes/steps.js";
import { meteredOnSubject, sensitivityFor } from "../exposure-loss/sensitivity.js";
import { lastOf, type NonEmpty, nonEmpty } from "../lists/non-empty.js";
import type { ExposureAtDepth } from "../result/exposure-loss.js";
import type { Scene } from "../scene/scene.js";
import type { Leg } from "./legs.js";
import { neutralPlan } from "./neutral-plan.js";
import { type ExposurePlan, offBy, type Station, set } from "./station.js";

/** For less than this nobody mounts neutral density: the aperture or the exposure time takes it. A judgement. */
const WORTH_NEUTRAL_STOPS = 1;
/** Stops too bright at the least sensitive settings; below 0 where there is room. */
const excessAt = (ev100: number, { min_iso, max_f_number, shutter_s }: ExposureLimits): number =>
  -Math.log2((sensitivityFor(ev100) * max_f_number ** 2) / shutter_s / min_iso);

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

/**
 * How the camera is set over the dive. Neutral density is used where it can come off as soon as it is not needed, or is needed all the
 * way; elsewhere the aperture closes, and the exposure gets shorter, for as long as it is too bright.
 * @param room for filters that is left on the lens
 */
export function exposurePlanFor(scene: Scene, legs: Readonly<NonEmpty<Leg>>, room = 1): ExposurePlan {
  const limits = limitsOf(scene);
  const points = legs.flatMap((leg) =>
    leg.exposure.depths.map((exposure) => ({ leg, exposure, ev: meteredOnSubject(exposure) })),
  );
  const excess = points.map(({ ev }) => excessAt(ev, limits));
  const most = Math.max(...excess);
  // A camera that exposes itself shortens the exposure instead.
  const isNeutral = most >= WORTH_NEUTRAL_STOPS && scene.exposure_mode !== "auto" && room >= 1;
  const neutral = isNeutral ? neutralPlan(scene, points, excess) : undefined;
  if (neutral) return neutral;
  const stations = points.map(({ leg, exposure, ev }) => ({ leg, exposure, setting: closed(ev, scene) }));
  return { stations: nonEmpty(stations, "stations") };
}

/** What the whole picture asks for beyond the subject, in stops: the compensation that gives the subject its own exposure. */
export const brighterThanSubject = (exposure: ExposureAtDepth): number => {
  const subject = meteredOnSubject(exposure);
  return (exposure.scene_exposure_value_ev100?.likely ?? subject) - subject;
};

/** How far one setting lets in more light than another, in stops. */
export const opensBy = (from: Setting, to: Setting, shutter_s: number): number =>
  Math.log2(to.iso / from.iso) -
  2 * Math.log2(to.f_number / from.f_number) +
  Math.log2((to.shutter?.shutter_s ?? shutter_s) / (from.shutter?.shutter_s ?? shutter_s));

/** Less than a click of a third of a stop needs no word. */
export const DARKER_FROM_STOPS = 0.3;

export const startOfPlan = ({ stations }: ExposurePlan): Station => stations[0];
export const endOfPlan = ({ stations }: ExposurePlan): Station => lastOf(stations);
