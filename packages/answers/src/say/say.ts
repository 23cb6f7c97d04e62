import type { Coded } from "@sunfathom/planner";
import type { Texts, TextUnits } from "@sunfathom/words";

/** What a code with its parameters is in words. */
export function say<Codes, Text>(
  { code, parameters }: Coded<Codes>,
  texts: Texts<Codes, Text>,
  units?: TextUnits,
): Text {
  // A code comes with the parameters that its text takes, which the compiler does not see where it may be any of them.
  const text: (parameters: never, units?: TextUnits) => Text = texts[code];
  return text(parameters as never, units);
}

/** A code as it leaves, whichever it is. */
export interface SaidCode {
  code: string;
  parameters: object;
}
