import type { StandIn } from "@sunfathom/optics";
import type { BalanceSteps } from "../codes/balance-procedure.js";
import type { CardNotes } from "../codes/card-notes.js";
import type { Coded } from "../codes/coded.js";
import type { LightReasons } from "../codes/light.js";
import type { WhiteBalanceReasons } from "../codes/white-balance.js";
import type { NonEmpty } from "../lists/non-empty.js";
import type { AnswerParts, Estimate } from "./common.js";

export interface WhiteBalanceAnswer extends WhiteBalanceDecision, OnCard {
  /** What to do, in order. */
  procedure: Coded<BalanceSteps>[];
  /** On the card that it is set on; empty where it is set on none. */
  card_notes: Coded<CardNotes>[];
}

/** What was decided, before it is put into steps. */
export interface WhiteBalanceDecision
  extends WhiteBalanceFigures,
    AnswerParts<WhiteBalanceReasons & LightReasons> {}

/** A balance on something else than a card. */
export interface BalanceOnStandIn {
  stand_in: StandIn;
  /** On a grey card, at the first balance, in CIEDE2000. */
  cast_left_delta_e00: number;
  /** Of hands, of the palest and darkest that are published. */
  least_cast_delta_e00?: number;
  most_cast_delta_e00?: number;
}

/** What a balance on a card comes with; empty for any other. */
export interface OnCard {
  /** Without a card, the least cast first. */
  stand_ins?: BalanceOnStandIn[];
  /** Where a white and a grey card lie on a histogram, of full codes; absent for a logarithmic curve. */
  white_card_level_percent?: number;
  grey_card_level_percent?: number;
}

export type BalanceMethod = "card" | "card_at_lamp_distance" | "kelvin" | "auto";

export interface WhiteBalanceFigures {
  /** Balance on a card; `card_at_lamp_distance` where lamps are the only light or lead; else as the scene has it. */
  method: BalanceMethod;
  /** Where one balance is no longer good, going down and coming up: the depths at which to balance. First entry: the start. */
  balance_depths_descending_m: number[];
  balance_depths_ascending_m: number[];
  /** Colour shift between two balances that was allowed, in CIEDE2000. */
  balance_tolerance_delta_e00: number;
  /** For lamps: their own colour temperature, to be set where there is no card, and what it would leave on a grey card. */
  lamp_kelvin_setting_K?: number;
  lamp_kelvin_leaves_delta_e00?: Estimate;
  depths: NonEmpty<BalanceAtDepth>;
}

export interface BalanceAtDepth {
  depth_m: number;
  /** Gains of the channels that make a card neutral, the smallest being 1. */
  red_gain: Estimate;
  green_gain: Estimate;
  blue_gain: Estimate;
  /** Whether the camera's balance reaches them, and how far it falls short between channels. */
  in_reach: boolean;
  short_of_reach_stops: number;
  /** Cast that stays on a grey card after balancing, in CIEDE2000. */
  cast_left_delta_e00: number;
  /** The same after one on a card; present where the balance is another one. */
  card_cast_left_delta_e00?: number;
  /** Correlated colour temperature of the light on the card; absent where it has no meaning. */
  cct_K?: number;
  duv: number;
}
