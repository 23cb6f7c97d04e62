import type { AnswerParts, Basis, Reason, UncertaintyCause } from "@sunfathom/planner";
import type { AnswerTexts, CauseText, Texts, TextUnits } from "@sunfathom/words";
import { figuresOf } from "./figures-of.js";
import { type SaidCode, say } from "./say.js";

/** What every answer carries, in words. */
export interface SaidParts {
  reasons: (SaidCode & {
    text: string;
    basis: Basis;
    figures: { name: string; value: number }[];
  })[];
  cautions: { code: string; text: string }[];
  uncertainty: { cause: string; text: string; share: number; how_to_shrink: string; parameters: object }[];
}

/** An answer of the planner with its reasons, causes of doubt and cautions in words. */
export function sayParts<
  Reasons,
  Causes,
  Cautions extends string,
  Planned extends AnswerParts<Reasons, Causes, Cautions>,
>(
  planned: Planned & AnswerParts<Reasons, Causes, Cautions>,
  { reasons, cautions, causes }: AnswerTexts<Reasons, Causes, Cautions>,
  units?: TextUnits,
): Omit<Planned, keyof SaidParts> & SaidParts {
  return {
    ...planned,
    reasons: planned.reasons.map((reason) => sayReason(reason, reasons, units)),
    cautions: planned.cautions.map(({ code }) => ({ code, text: cautions[code] })),
    uncertainty: planned.uncertainty.map((cause) => sayCause(cause, causes)),
  };
}

export const sayReason = <Reasons>(
  reason: Reason<Reasons>,
  texts: Texts<Reasons, string>,
  units?: TextUnits,
): SaidParts["reasons"][number] => {
  const { code, basis, parameters } = reason;
  return {
    code,
    text: say(reason, texts, units),
    basis,
    figures: figuresOf(parameters as object),
    parameters: parameters as object,
  };
};

const sayCause = <Causes>(cause: UncertaintyCause<Causes>, texts: Texts<Causes, CauseText>) => ({
  cause: cause.code as string,
  ...say(cause, texts),
  share: cause.share,
  parameters: cause.parameters as object,
});
