import type { RepeatedId } from "../rules/repeated-ids.js";

/** What each error of a batch comes with that is none of one value alone, by its code. */
export interface BatchRuleParameters {
  /** It names items, and a scene with what differs as well. */
  batch_one_way: { name: string };
  batch_ids_unique: RepeatedId;
  /** An entry of `vary` is empty. */
  vary_names_a_field: Record<never, never>;
  /** Fields of one entry of `vary` go together: `first` has `wanted` values. */
  vary_lengths_equal: { name: string; length: number; first: string; wanted: number };
  /** An earlier entry of `vary` has the field already. */
  vary_field_once: { name: string; first: string };
  batch_size: { scenes: number; most: number };
}

export type BatchRuleCode = keyof BatchRuleParameters;

export const batchRuleCodes = [
  "batch_one_way",
  "batch_ids_unique",
  "vary_names_a_field",
  "vary_lengths_equal",
  "vary_field_once",
  "batch_size",
] as const satisfies readonly BatchRuleCode[];
