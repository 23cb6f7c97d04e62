import type {
  CautionCode,
  MountingCautionCode,
  MountStepCodes,
  MountTakeCodes,
  NamedFilter,
  StepCodes,
  TakeCodes,
} from "@sunfathom/planner";
import type { Texts, TextUnits } from "./problems/texts.js";

/** Parts of a slate, in the order in which they stand on it. */
export type SlatePart = "before" | "start" | "down" | "up" | "after";

/** Texts of a slate: as few words as a diver reads at a glance. */
export interface SlateTexts {
  title: (p: { min_depth_m: number; max_depth_m: number }, units?: TextUnits) => string;
  parts: Readonly<Record<SlatePart, string>>;
  /** The three numbers to remember, each with what stands under it. */
  filter: (p: { filter: NamedFilter }) => readonly [number: string, label: string];
  first_balance: (p: { depth_m: number }, units?: TextUnits) => readonly [number: string, label: string];
  starting_iso: (p: { iso: number }) => readonly [number: string, label: string];
  /** A line that belongs to a depth. */
  at: (p: { depth_m: number; text: string }, units?: TextUnits) => string;
  steps: Texts<StepCodes & MountStepCodes, string>;
  take: Texts<TakeCodes & MountTakeCodes, string>;
  taken: (p: { items: readonly string[] }) => string;
  cautions: Readonly<Record<CautionCode | MountingCautionCode, string>>;
  /** What did not fit. */
  more: (p: { count: number }) => string;
  description: (p: { min_depth_m: number; max_depth_m: number }, units?: TextUnits) => string;
}
