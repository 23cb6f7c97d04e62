import type { Coded } from "@sunfathom/planner";
import type { Texts } from "@sunfathom/words";

/** What a code with its parameters is in words. */
export function say<Codes, Text>({ code, parameters }: Coded<Codes>, texts: Texts<Codes, Text>): Text {
  // A code comes with the parameters that its text takes, which the compiler does not see where it may be any of them.
  const text: (parameters: never) => Text = texts[code];
  return text(parameters as never);
}

/** A code as it leaves, whichever it is. */
export interface SaidCode {
  code: string;
  parameters: object;
}
