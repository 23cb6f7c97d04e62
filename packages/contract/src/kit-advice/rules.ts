import type { RepeatedId } from "../rules/repeated-ids.js";

/** What each error of a request for a kit comes with that is none of one value alone, by its code. */
export interface KitRuleParameters {
  dive_ids_unique: RepeatedId;
  piece_ids_unique: RepeatedId;
  /** A field of a dive that is a piece, or that stands beside the dives. */
  kit_dive_field: { name: string };
  /** A field that goes with other pieces. */
  piece_field: { name: string; item: string; fields: readonly string[] };
  piece_incomplete: { item: string; missing: readonly string[] };
}

export type KitRuleCode = keyof KitRuleParameters;

export const kitRuleCodes = [
  "dive_ids_unique",
  "piece_ids_unique",
  "kit_dive_field",
  "piece_field",
  "piece_incomplete",
] as const satisfies readonly KitRuleCode[];
