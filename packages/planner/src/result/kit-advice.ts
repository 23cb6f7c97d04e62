import type { LightCauses } from "../codes/causes.js";
import type { CautionCode, MountingCautionCode } from "../codes/cautions.js";
import type { Reason } from "../codes/coded.js";
import type { KitAdviceReasons } from "../codes/kit-advice.js";
import type { FilterVerdict } from "../codes/named-filter.js";
import type { LightUse } from "../kit-advice/lighting.js";
import type { KitPiece } from "../kit-advice/plan.js";
import type { FilterHolder } from "../scene/filter-mounting-scene.js";
import type { AnswerParts, Estimate } from "./common.js";
import type { MountVerdict } from "./filter-mounting.js";

export interface KitAdviceResult
  extends AnswerParts<KitAdviceReasons, LightCauses, CautionCode | MountingCautionCode> {
  method: "exact" | "greedy";
  regret_limit_delta_e00: number;
  /** The set, by the ids of its pieces, in their order. */
  take: string[];
  /** What it loses against the whole kit on all dives together. */
  total_regret_delta_e00: number;
  dives: KitOnDive[];
  pieces: KitPieceAdvice[];
  one_more?: OneMore;
}

/** How a dive is filmed with the set. */
export interface KitOnDive {
  id: string;
  filter_id?: string;
  light_id?: string;
  lamp_filter_id?: string;
  /** Rings and holder that hold the filter. */
  held_by: string[];
  /** How it is held, where the dive says what its filters are mounted on. */
  holder?: FilterHolder;
  mount_verdict?: MountVerdict;
  change_at_depth: boolean;
  light_use: LightUse;
  colour_error_delta_e00: Estimate;
  /** With none of the pieces; absent where there is then no light to film by. */
  colour_error_without_delta_e00?: number;
  /** With all of them. */
  colour_error_whole_kit_delta_e00: number;
  regret_delta_e00: Estimate;
  filter_loss_stops: number;
  /** How likely it is that the dive loses as much as the limit. */
  probability_over_limit: number;
  verdict: "clear" | "near_tie";
}

/** What becomes of a piece. */
export type PieceRole = "take" | "leave" | "never_used" | "not_judged";

export interface KitPieceAdvice {
  id: string;
  item: KitPiece["item"];
  role: PieceRole;
  /**
   * Colour error that it buys on all dives together: what the set is worse without it, or better with it. Absent where without it a
   * dive cannot be filmed, and for what is not judged.
   */
  buys_delta_e00?: number;
  /** The dives on which it does, to the tenth that an eye could tell at the most. */
  dives: PieceOnDive[];
  /** Of a piece that is taken: how likely it is that it could as well stay. */
  probability_needless?: number;
  verdict: "clear" | "near_tie";
  reason: Reason<KitAdviceReasons>;
}

export interface PieceOnDive {
  id: string;
  /** Absent where the dive cannot be filmed without it. */
  buys_delta_e00?: number;
}

/** A filter that is not among the pieces, of the kinds and densities that are sold. */
export interface OneMore {
  filter_kind: FilterVerdict;
  filter_density: number;
  /** On all dives together, beyond what all pieces do. */
  gains_delta_e00: number;
  dives: { id: string; gains_delta_e00: number }[];
}
