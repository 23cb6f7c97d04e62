import type { PupilBasis } from "../codes/filter-mounting.js";
import type { Estimate } from "../result/common.js";
import type { MountPlace } from "../result/filter-mounting.js";
import type { FilterMountingScene, LensKind } from "../scene/filter-mounting-scene.js";
import { SMALL_FORMAT_mm } from "./format.js";
import type { LensFacts } from "./lens.js";

/**
 * How far behind its thread a lens has its entrance pupil, as a share of the distance at which the bare thread would halve the
 * light in the corner. Lenses are built to take one ordinary filter without darkening (common practice, no published source);
 * longer lenses leave more room. Shares from memory of a few lenses.
 */
const SHARE: Record<Exclude<LensKind, "fisheye">, number> = { wide: 0.7, standard: 0.5 };

/** Where no thread tells: from the front rim to the pupil, as a share of the picture's diagonal, from memory. */
const SHARE_OF_DIAGONAL: Record<LensKind, number> = { wide: 0.55, fisheye: 0.35, standard: 0.7 };

/** From the front of a flat port to the front rim of the lens behind it, glass included, from memory. */
const PORT_AND_GAP_mm = 15;

/** The same of an action camera's dive housing, whose window lies close to the camera's own. From memory. */
const SMALL_PORT_AND_GAP_mm = 6;

/** From the window of an action camera to its lens's pupil, from memory. */
const WINDOW_mm = 5;

/** From likely to the 10th and 90th percentile: of what is assumed, and of a given distance, as the pupil moves with the angle. */
const SPREAD_ASSUMED = 0.2;
const SPREAD_GIVEN = 0.1;

export interface PupilDistance {
  distance_mm: Estimate;
  assumed: boolean;
  /** What an assumed distance is taken from. */
  from: PupilBasis;
  spread_percent: number;
}

/** From the seat of filter or first ring (lens thread, front of the port, camera window) back to the entrance pupil. */
export function pupilDistance(scene: FilterMountingScene, lens: LensFacts, place: MountPlace): PupilDistance {
  const given = scene.entrance_pupil_distance_mm;
  const from = basisOf(scene, place);
  const inLens = given ?? assumed_mm(scene, lens, from);
  const gap_mm = lens.diagonal_mm <= SMALL_FORMAT_mm ? SMALL_PORT_AND_GAP_mm : PORT_AND_GAP_mm;
  const ahead = place === "before_port" ? gap_mm : 0;
  const likely = inLens + ahead;
  // A distance that is taken from the format is as unsure as the format.
  const ofFormat = given === undefined && from === "sensor" ? lens.diagonal_spread : undefined;
  const spread_mm = (format = 1) =>
    Math.hypot(
      inLens * (given === undefined ? SPREAD_ASSUMED : SPREAD_GIVEN),
      inLens * (format - 1),
      ahead * SPREAD_ASSUMED,
    );
  const [down_mm, up_mm] = [spread_mm(ofFormat?.low), spread_mm(ofFormat?.high)];
  return {
    distance_mm: { low: Math.max(0, likely - down_mm), likely, high: likely + up_mm },
    assumed: given === undefined,
    from,
    spread_percent: (100 * Math.max(down_mm, up_mm)) / likely,
  };
}

function basisOf({ lens_kind, lens_thread_mm }: FilterMountingScene, place: MountPlace): PupilBasis {
  if (place === "before_window") return "window";
  return lens_thread_mm === undefined || lens_kind === "fisheye" ? "sensor" : "thread";
}

function assumed_mm(
  { lens_kind, lens_thread_mm = 0 }: FilterMountingScene,
  lens: LensFacts,
  from: PupilBasis,
): number {
  if (from === "window") return WINDOW_mm;
  if (from === "sensor" || lens_kind === "fisheye") return SHARE_OF_DIAGONAL[lens_kind] * lens.diagonal_mm;
  return (SHARE[lens_kind] * lens_thread_mm) / 2 / Math.tan((lens.half_deg * Math.PI) / 180);
}
