import {
  defocusBlur_mm,
  domeObjectDistance,
  farthestSharp_mm,
  focusShift_mm,
  WATER_INDEX,
} from "@sunfathom/optics";
import type { PortFigures, RearSheet } from "../result/filter-mounting.js";
import type { FilterMountingScene } from "../scene/filter-mounting-scene.js";
import type { LensFacts } from "./lens.js";
import { type Reason, reason } from "./reason.js";

/** Smaller than a slot in all, and wider than a taped opening on each side (common practice, from memory). */
const PLAY_IN_SLOT_mm = 0.5;
const OVERLAP_UNDER_TAPE_mm = 2;

/** Blur that depth of field allows: the picture's diagonal over this (common practice). */
const BLUR_PER_DIAGONAL = 1500;

/** Size to cut and what the sheet does to focus. */
export function rearSheetOf(scene: FilterMountingScene, lens: LensFacts): RearSheet {
  const shift = focusShift_mm(scene.sheet_thickness_mm, scene.sheet_refractive_index);
  const blur_if_not_refocused_mm = defocusBlur_mm(shift, scene.f_number);
  const blur_allowed_mm = lens.diagonal_mm / BLUR_PER_DIAGONAL;
  const farthest = farthestTrue_mm(scene, farthestSharp_mm(lens.focal_mm, shift));
  const hidden = blur_if_not_refocused_mm <= blur_allowed_mm;
  return {
    ...cutSize(scene),
    focus_shift_mm: shift,
    blur_if_not_refocused_mm,
    blur_allowed_mm,
    ...farFocus(farthest, hidden),
  };
}

function farFocus(
  farthest_mm: number | undefined,
  hidden: boolean,
): Pick<RearSheet, "focus" | "farthest_sharp_m"> {
  if (farthest_mm === Number.POSITIVE_INFINITY) return { focus: "in_reach" };
  if (farthest_mm === undefined) return hidden ? { focus: "within_depth_of_field" } : {};
  const focus = hidden ? "within_depth_of_field" : "past_infinity_needed";
  return { focus, farthest_sharp_m: farthest_mm / 1000 };
}

/**
 * True distance of what appears `apparent_mm` from the lens; undefined behind a dome of unknown radius. The lens is taken to
 * stand right behind a flat port, and its pupil in the centre of a dome, inside of which nothing can appear.
 */
function farthestTrue_mm(
  { port_kind, dome_radius_mm }: FilterMountingScene,
  apparent_mm: number,
): number | undefined {
  if (port_kind !== "dome") return apparent_mm * WATER_INDEX;
  if (dome_radius_mm === undefined) return undefined;
  return apparent_mm <= dome_radius_mm ? 0 : domeObjectDistance(dome_radius_mm, apparent_mm - dome_radius_mm);
}

function cutSize(scene: FilterMountingScene): Pick<RearSheet, "cut_width_mm" | "cut_height_mm"> {
  const { rear_opening_width_mm: width, rear_opening_height_mm: height } = scene;
  if (width === undefined || height === undefined) return {};
  const more = scene.rear_fixing === "slot" ? -PLAY_IN_SLOT_mm : 2 * OVERLAP_UNDER_TAPE_mm;
  return { cut_width_mm: width + more, cut_height_mm: height + more };
}

/** Size and shift, and where focus ends unless that was said as a fault. */
export function rearSheetReasons(sheet: RearSheet, port: PortFigures): Reason[] {
  const { cut_width_mm: width_mm, cut_height_mm: height_mm } = sheet;
  const from_centre_mm = port.virtual_infinity_from_centre_mm;
  return [
    width_mm === undefined || height_mm === undefined
      ? reason("sheet_measure_opening", "common_practice")
      : reason("sheet_cut", "common_practice", { width_mm, height_mm }),
    reason("sheet_shifts_focus", "computed", {
      shift_mm: sheet.focus_shift_mm,
      blur_mm: sheet.blur_if_not_refocused_mm,
      allowed_mm: sheet.blur_allowed_mm,
    }),
    ...(sheet.focus === "in_reach" && from_centre_mm !== undefined
      ? [reason("sheet_all_in_reach", "computed", { from_centre_mm })]
      : []),
    ...(sheet.focus === "within_depth_of_field" ? sheetFarReasons(sheet) : []),
  ];
}

/** Where focus ends for a lens that stops at infinity; empty where it does not. */
export function sheetFarReasons({
  focus,
  farthest_sharp_m: farthest_m,
  blur_if_not_refocused_mm: blur_mm,
}: RearSheet): Reason[] {
  if (farthest_m === undefined) return [];
  return focus === "past_infinity_needed"
    ? [reason("sheet_infinity_lost", "computed", { farthest_m, blur_mm })]
    : [reason("sheet_infinity_hidden", "computed", { farthest_m })];
}
