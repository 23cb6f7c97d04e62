import type { MountingCauses } from "../codes/causes.js";
import type { CautionCode, MountingCautionCode } from "../codes/cautions.js";
import type { Coded } from "../codes/coded.js";
import type { FilterMountingReasons } from "../codes/filter-mounting.js";
import type { MountingSteps } from "../codes/mounting-steps.js";
import type { FilterHolder, StepRing } from "../scene/filter-mounting-scene.js";
import type { FilterChange } from "../scene/scene.js";
import type { AnswerParts, Estimate } from "./common.js";

export interface FilterMountingAnswer
  extends FilterMountingFigures,
    AnswerParts<FilterMountingReasons, MountingCauses, CautionCode | MountingCautionCode> {
  /** What to do, in order. Common practice. */
  procedure: Coded<MountingSteps>[];
}

/** `on_lens` is inside the housing; `before_port` and `before_window` are in the water. */
export type MountPlace = "on_lens" | "before_port" | "before_window" | "behind_lens";

export type MountVerdict = "fits" | "fits_with_care" | "does_not_fit";

export interface FilterMountingFigures {
  /** The advised holder: the one asked for unless it does not fit. */
  holder: FilterHolder;
  place: MountPlace;
  /** Of the advised holder; `does_not_fit` only where none does, and then the reasons say what to change. */
  verdict: MountVerdict;
  /** Whether, and how, this holder lets the filter be changed at depth. */
  filter_change_underwater: FilterChange;
  /** Every holder, best first. */
  options: MountOption[];
  port: PortFigures;
  /** Present where the filter screws into a thread. */
  ring_chain?: RingChain;
  /** Present for filters in front of the lens whose clear diameter is known. */
  vignetting?: Vignetting;
  /** Clear diameter at the filter's place that takes nothing from the corners; present for filters in front of the lens. */
  clear_diameter_needed_mm?: Estimate;
  /** Gap between the filter's or a ring's rim and the dome, with the entrance pupil in its centre; present on a lens behind a dome of known radius. */
  dome_clearance_mm?: Estimate;
  /** Room left before the port with the zoom at its longest; present on a lens where the gap before the port is known. */
  port_clearance_mm?: number;
  /** Of filter and rim, without rings or holder; present in front of the lens where its size is known. */
  filter_weight_in_water_g?: Estimate;
  /** Present where the filter goes behind the lens. */
  rear_sheet?: RearSheet;
}

/** With the reason that decides. */
export type MountOption = Coded<FilterMountingReasons> & {
  holder: FilterHolder;
  place: MountPlace;
  verdict: MountVerdict;
};

/** What the port makes of the lens's picture. */
export interface PortFigures {
  /** Full fields over the diagonal. */
  field_in_air_deg: number;
  field_in_water_deg: number;
  /** Flat port: how much larger things appear near the axis, and their apparent share of the true distance. */
  magnification?: number;
  apparent_distance_share?: number;
  /** Flat port: how much farther from the centre blue (450 nm) falls than red (650 nm) at the corner; absent within 6 degrees of grazing. */
  lateral_colour_percent?: number;
  /** Dome of known radius: where infinity appears, in front of its vertex and from its centre, where the entrance pupil belongs. */
  virtual_infinity_from_vertex_mm?: number;
  virtual_infinity_from_centre_mm?: number;
}

export interface RingChain {
  /** Whether the rings owned lead from lens or port to the filter, and not only by cutting the corners off. */
  closes: boolean;
  from_mm: number;
  to_mm: number;
  /** In the order in which they are screwed on; empty where none is needed or the chain does not close. */
  rings: StepRing[];
  total_thickness_mm: number;
  /** Ring to buy: present where the chain does not close, or closes only by narrowing below both threads. */
  buy_from_mm?: number;
  buy_to_mm?: number;
}

export type VignettingGrade = "clear" | "slight" | "dark" | "black";

/** Darkening by filter and rings alone; the lens's own falloff comes on top. */
export interface Vignetting {
  /** From where the first ring or the filter sits; its spread is what makes the rest uncertain. */
  pupil_distance_mm: Estimate;
  pupil_distance_assumed: boolean;
  /** Half the field, in air at the lens, of the corner and of what is wholly clear. */
  corner_half_field_deg: number;
  clear_half_field_deg: Estimate;
  /** Light left in the corner. */
  corner_light_percent: Estimate;
  /** The same as a loss; absent where the corner may be black. */
  corner_loss_stops?: Estimate;
  /** By the likely loss: `clear` below 0.1 stop, `slight` below 0.5, `dark` beyond, `black` where no light is left. */
  grade: VignettingGrade;
}

/**
 * Whether far things stay sharp with the sheet in place: always behind a dome that shows nothing farther than the lens can
 * focus; else hidden by depth of field; else only with a lens that turns past infinity.
 */
export type SheetFocus = "in_reach" | "within_depth_of_field" | "past_infinity_needed";

export interface RearSheet {
  /** Size to cut; absent until the opening is measured. */
  cut_width_mm?: number;
  cut_height_mm?: number;
  /** How far the sheet moves the image behind the sensor. */
  focus_shift_mm: number;
  /** Blur on the sensor if the lens is not focused anew, and what is usually allowed (diagonal / 1500). */
  blur_if_not_refocused_mm: number;
  blur_allowed_mm: number;
  /** Absent where it cannot be told without the dome's radius. */
  focus?: SheetFocus;
  /** True distance of the farthest thing that a lens which stops at infinity still focuses; absent where all is in reach or the dome's radius is not known. */
  farthest_sharp_m?: number;
}
