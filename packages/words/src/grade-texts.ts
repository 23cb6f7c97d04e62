import type { NamedFilter, RedQuality, Transfer } from "@sunfathom/planner";
import type { TextUnits } from "./problems/texts.js";

/** Texts in the file of a grade: what it is for, what goes in and what comes out. */
export interface GradeTexts {
  name: (p: { depth_m: number; filter: NamedFilter }, units?: TextUnits) => string;
  /** What was done, and how far it brings colours. */
  does: (p: { finish: "matched" | "basic_edit"; without_delta_e00: number; delta_e00: number }) => string;
  holds: (p: { min_depth_m: number; max_depth_m: number }, units?: TextUnits) => string;
  /** What of red was recorded; what was not stays lost. */
  red: Readonly<Record<RedQuality, string>>;
  /** Code values that go in. */
  input: (p: { finish: "matched" | "basic_edit"; curve: Transfer }) => string;
  output: string;
  /** What goes in and comes out of a CDL, which knows no curve. */
  linear: string;
  /** Who may need it in another form. */
  convert: string;
}
