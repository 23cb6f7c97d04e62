import {
  entrancePupilRadius_mm,
  fieldOfView_deg,
  focalLength_mm,
  imageHeight,
  type Projection,
} from "@sunfathom/optics";
import type { Estimate } from "../result/common.js";
import type { FilterMountingScene } from "../scene/filter-mounting-scene.js";
import { mapRising } from "../uncertainty/percentiles.js";
import { formatAssumed } from "./format.js";
import { fieldTooWide, formatContradicts, lensUnknown, outsideImageCircle } from "./problems.js";
import { type Reason, reason } from "./reason.js";

/** Through a flat window no more is taken than this: at the edge of it, 85 degrees, it reflects more than half (Fresnel). */
const WIDEST_THROUGH_FLAT_deg = 170;

/** How far focal length, format and field may disagree when all three are given; real lenses bend lines a little. */
const CONTRADICTION_SHARE = 0.1;

const KNOWN: Estimate = { low: 1, likely: 1, high: 1 };

/** The lens as geometry. */
export interface LensFacts {
  projection: Projection;
  focal_mm: number;
  diagonal_mm: number;
  /** The diagonal as a multiple of that: all 1 where it is known. */
  diagonal_spread: Estimate;
  /** Half the field over the diagonal, in air. */
  half_deg: number;
  /** Radius of the entrance pupil at the f-number given. */
  pupil_mm: number;
  reasons: Reason[];
}

/**
 * Field and entrance pupil from focal length and format, or from the field given.
 * @throws SceneProblem where the field cannot be known, contradicts itself, or does not pass the port or the lens kind.
 */
export function lensOf(scene: FilterMountingScene): LensFacts {
  const { focal_length_mm, field_of_view_deg, sensor_diagonal_mm, lens_kind, port_kind } = scene;
  const projection: Projection = lens_kind === "fisheye" ? "equisolid" : "rectilinear";
  const assumed = formatAssumed(scene);
  const format_mm = sensor_diagonal_mm ?? assumed.likely;
  const field_deg = field_of_view_deg ?? fieldFromFocal(projection, focal_length_mm, format_mm);
  const widest = lens_kind === "fisheye" && port_kind === "dome" ? 220 : WIDEST_THROUGH_FLAT_deg;
  if (field_deg > widest) throw fieldTooWide(scene, field_deg, widest);

  const half_deg = field_deg / 2;
  const focal_mm = focal_length_mm ?? focalLength_mm(projection, field_deg, format_mm);
  const diagonal_mm = 2 * focal_mm * imageHeight(projection, half_deg);
  if (sensor_diagonal_mm && Math.abs(diagonal_mm / sensor_diagonal_mm - 1) > CONTRADICTION_SHARE) {
    throw formatContradicts(sensor_diagonal_mm, diagonal_mm);
  }
  const isAssumed = sensor_diagonal_mm === undefined && !(focal_length_mm && field_of_view_deg);
  return {
    projection,
    focal_mm,
    diagonal_mm,
    diagonal_spread: isAssumed ? mapRising(assumed, (mm) => mm / assumed.likely) : KNOWN,
    half_deg,
    pupil_mm: entrancePupilRadius_mm(focal_mm, scene.f_number),
    reasons: isAssumed ? [reason("format_assumed", "common_practice", { diagonal_mm: assumed.likely })] : [],
  };
}

function fieldFromFocal(projection: Projection, focal_mm: number | undefined, format_mm: number): number {
  if (focal_mm === undefined) throw lensUnknown();
  const field = fieldOfView_deg(projection, focal_mm, format_mm);
  if (field === undefined) throw outsideImageCircle(focal_mm, format_mm);
  return field;
}
