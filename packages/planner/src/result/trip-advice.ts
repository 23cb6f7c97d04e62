import type { LightCauses } from "../codes/causes.js";
import type { CautionCode, MountingCautionCode } from "../codes/cautions.js";
import type { Coded } from "../codes/coded.js";
import type { FilterVerdict } from "../codes/named-filter.js";
import type { PieceFrom, RingBetween, TripAdviceReasons, TripPlanCodes } from "../codes/trip-advice.js";
import type { FilterHolder } from "../scene/filter-mounting-scene.js";
import type { AnswerParts, Estimate } from "./common.js";
import type { MountVerdict } from "./filter-mounting.js";

export interface TripAdviceResult
  extends AnswerParts<TripAdviceReasons, LightCauses, CautionCode | MountingCautionCode> {
  /** In the order in which they were given. */
  dives: TripDivePlan[];
  /** What each guest needs over all dives, in the order in which they were given. */
  crates: Crate[];
  packing: Packing;
}

export interface TripDivePlan {
  id: string;
  /** When it begins, in UTC, RFC 3339. */
  time: string;
  plans: GuestPlan[];
}

/** A piece in a guest's hands. */
export interface PieceInUse {
  piece_id: string;
  from: PieceFrom;
  filter_kind: FilterVerdict;
  filter_density?: number;
  /** Absent where the camera says nothing of port and lens. */
  holder?: FilterHolder;
  /** Present with the holder; what does not fit is not handed out. */
  verdict?: Exclude<MountVerdict, "does_not_fit">;
  /** In the order in which they are screwed on. */
  rings: RingInUse[];
}

export interface RingInUse {
  ring_id: string;
  from: PieceFrom;
}

/** How the camera is set at a depth. */
export interface TripSetting {
  depth_m: number;
  iso: number;
  f_number: number;
  shutter_s: number;
  /** Above 0 too bright, below 0 too dark, whatever is set. */
  off_by_stops: number;
}

export interface GuestPlan {
  guest_id: string;
  /** Absent where the lens stays bare. */
  piece?: PieceInUse;
  /** Mean over the filmed depths; absent without daylight, as are what follows. */
  colour_error_delta_e00?: Estimate;
  /** What the piece takes off the colour error; 0 without one. */
  gains_delta_e00?: number;
  /** At the shallow end, and at the deep end where that is another. */
  settings: TripSetting[];
  plan: Coded<TripPlanCodes>[];
}

export interface Crate {
  guest_id: string;
  /** Each with the dives on which it is used, in their order. */
  pieces: (PieceInUse & { dive_ids: string[] })[];
}

/** What goes on the boat. */
export interface Packing {
  /** Pieces of the shelf that someone uses: so many at a time, at most. */
  pieces: { piece_id: string; quantity: number }[];
  /** The same of the shop's rings, and how many of these lack. */
  rings: { ring_id: string; quantity: number; short_by: number }[];
  /** Rings with which a guest could use something whom nothing fits as things stand. */
  rings_to_get: (RingBetween & { guest_ids: string[] })[];
  /** What stays ashore, and how many of it. */
  not_needed: { piece_id: string; quantity: number }[];
}
