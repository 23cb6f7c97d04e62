/** Filter and rings in front of the lens as round stops: corners, the clear diameter needed, and the room behind a dome. */
import {
  clearHalfField_deg,
  clearRadiusNeeded_mm,
  lightThroughStops,
  lossStops,
  type RoundStop,
} from "@sunfathom/optics";
import type { Estimate } from "../result/common.js";
import type { MountPlace, Vignetting, VignettingGrade } from "../result/filter-mounting.js";
import type { FilterMountingScene, StepRing } from "../scene/filter-mounting-scene.js";
import { mapFalling, mapRising } from "../uncertainty/percentiles.js";
import type { LensFacts } from "./lens.js";
import { type PupilDistance, pupilDistance } from "./pupil-distance.js";
import { portClearance_mm } from "./room.js";
import { weightInWater_g } from "./weight.js";

/** What the rims of filters and rings take from their thread's diameter (common practice: about 1.5 mm a side). */
const RIM_mm = 3;

/** Losses in the corner, in stops, up to which it counts as clear and as slight: a judgement. */
const CLEAR_STOPS = 0.1;
const SLIGHT_STOPS = 0.5;

/** Angles beyond this are left to what goes behind the lens: a stop in front would have to be many times as wide as the lens. */
export const WIDEST_IN_FRONT_deg = 85;

export interface Front {
  pupil: PupilDistance;
  /** Absent where the clear diameter is not known. */
  vignetting?: Vignetting;
  clear_diameter_needed_mm: Estimate;
  dome_clearance_mm?: Estimate;
  port_clearance_mm?: number;
  weight_g?: Estimate;
}

interface Opening {
  clear_radius_mm: number;
  /** In front of the seat. */
  forward_mm: number;
}

/** The openings of the rings, and of the filter where its size is known, from the seat forward. */
function openingsOf(
  mounted: readonly StepRing[],
  filterClear_mm: number | undefined,
  filter_mm: number,
): Opening[] {
  let forward_mm = 0;
  const openings: Opening[] = [];
  for (const { from_mm, to_mm, thickness_mm } of mounted) {
    openings.push({ clear_radius_mm: (from_mm - RIM_mm) / 2, forward_mm });
    forward_mm += thickness_mm;
    openings.push({ clear_radius_mm: (to_mm - RIM_mm) / 2, forward_mm });
  }
  if (filterClear_mm !== undefined) {
    openings.push({ clear_radius_mm: filterClear_mm / 2, forward_mm: forward_mm + filter_mm });
  }
  return openings;
}

/** Where a filter is screwed on, and through what. */
export interface Seat {
  place: MountPlace;
  /** Thread of lens or port, where there is one. */
  seat_mm: number | undefined;
  /** Rings between it and the filter. */
  mounted: readonly StepRing[];
}

export function frontOf(
  scene: FilterMountingScene,
  lens: LensFacts,
  { place, seat_mm, mounted }: Seat,
): Front {
  const pupil = pupilDistance(scene, lens, place);
  const thread_mm = scene.filter_thread_mm ?? seat_mm;
  const filterClear_mm =
    scene.filter_clear_diameter_mm ?? (thread_mm === undefined ? undefined : thread_mm - RIM_mm);
  const openings = openingsOf(mounted, filterClear_mm, scene.filter_thickness_mm);
  const rings_mm = mounted.reduce((sum, ring) => sum + ring.thickness_mm, 0);
  const stopAt = (seat: number, forward: number) =>
    place === "on_lens"
      ? { in_air_mm: seat + forward, in_water_mm: 0 }
      : { in_air_mm: seat, in_water_mm: forward };

  const needed = mapRising(
    pupil.distance_mm,
    (seat) =>
      2 *
      clearRadiusNeeded_mm(stopAt(seat, rings_mm + scene.filter_thickness_mm), lens.pupil_mm, lens.half_deg),
  );
  const stopsAt = (seat: number): RoundStop[] =>
    openings.map(({ clear_radius_mm, forward_mm }) => ({ clear_radius_mm, ...stopAt(seat, forward_mm) }));
  const port_clearance_mm = place === "on_lens" ? portClearance_mm(scene, rings_mm) : undefined;
  return {
    pupil,
    ...(port_clearance_mm === undefined ? {} : { port_clearance_mm }),
    ...(filterClear_mm === undefined ? {} : { weight_g: weightOf(scene, filterClear_mm) }),
    clear_diameter_needed_mm: needed,
    ...(filterClear_mm === undefined ? {} : { vignetting: vignettingOf(lens, pupil, stopsAt) }),
    ...(place === "on_lens" && scene.dome_radius_mm !== undefined && thread_mm !== undefined
      ? { dome_clearance_mm: domeClearance(scene.dome_radius_mm, pupil, rimsOf(scene, thread_mm, mounted)) }
      : {}),
  };
}

const weightOf = (scene: FilterMountingScene, clear_diameter_mm: number): Estimate =>
  weightInWater_g({
    clear_diameter_mm,
    thickness_mm: scene.filter_thickness_mm,
    material: scene.filter_material,
  });

function vignettingOf(
  lens: LensFacts,
  pupil: PupilDistance,
  stopsAt: (seat: number) => RoundStop[],
): Vignetting {
  const light = mapFalling(pupil.distance_mm, (seat) =>
    lightThroughStops(stopsAt(seat), lens.pupil_mm, lens.half_deg),
  );
  return {
    pupil_distance_mm: pupil.distance_mm,
    pupil_distance_assumed: pupil.assumed,
    corner_half_field_deg: lens.half_deg,
    clear_half_field_deg: mapFalling(pupil.distance_mm, (seat) =>
      clearHalfField_deg(stopsAt(seat), lens.pupil_mm),
    ),
    corner_light_percent: mapRising(light, (share) => 100 * share),
    ...(light.low > 0 ? { corner_loss_stops: mapFalling(light, (share) => lossStops(1, share)) } : {}),
    grade: gradeOf(light.likely),
  };
}

function gradeOf(light: number): VignettingGrade {
  if (light === 0) return "black";
  const stops = lossStops(1, light);
  if (stops < CLEAR_STOPS) return "clear";
  return stops < SLIGHT_STOPS ? "slight" : "dark";
}

interface Rim {
  radius_mm: number;
  /** In front of the seat. */
  forward_mm: number;
}

/** A rim is as wide outside as its thread and the rim's width. */
function rimsOf(
  { filter_thickness_mm, zoom_travel_mm }: FilterMountingScene,
  thread_mm: number,
  mounted: readonly StepRing[],
): Rim[] {
  // The dome stays where it is while the front of a zoom comes nearer.
  let forward_mm = zoom_travel_mm;
  const rims = mounted.map(({ from_mm, to_mm, thickness_mm }) => {
    forward_mm += thickness_mm;
    return { radius_mm: (Math.max(from_mm, to_mm) + RIM_mm) / 2, forward_mm };
  });
  rims.push({ radius_mm: (thread_mm + RIM_mm) / 2, forward_mm: forward_mm + filter_thickness_mm });
  return rims;
}

/** Room between the rims and a dome around the entrance pupil. */
function domeClearance(dome_mm: number, pupil: PupilDistance, rims: readonly Rim[]): Estimate {
  return mapFalling(pupil.distance_mm, (seat) =>
    rims.reduce(
      (least, rim) => Math.min(least, dome_mm - Math.hypot(seat + rim.forward_mm, rim.radius_mm)),
      Number.POSITIVE_INFINITY,
    ),
  );
}
