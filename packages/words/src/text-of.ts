import type { Coded } from "@sunfathom/planner";
import type { Texts, TextUnits } from "./problems/texts.js";

/** What one of several codes is in words, for a sentence around it. */
export function textOf<Codes>(
  texts: Texts<Codes, string>,
  { code, parameters }: Coded<Codes>,
  units?: TextUnits,
): string {
  const text: (parameters: never, units?: TextUnits) => string = texts[code];
  return text(parameters as never, units);
}
