import type { AnswerParts, LightReasons } from "@sunfathom/planner";
import type { AnswerTexts, Texts } from "@sunfathom/words";
import { figuresOf } from "./figures-of.js";
import { type SaidParts, type SaidReason, sayCause, sayReason } from "./say-parts.js";

type Parts = Omit<AnswerParts<LightReasons>, "reasons" | "cautions" | "uncertainty">;

/** The same for a decision whose reasons still have their texts. */
export function sayWorded<Planned extends Parts>(
  planned: Planned,
  { causes, cautions, reasons }: Record<keyof AnswerTexts<unknown>, object>,
): Omit<Planned, keyof SaidParts> & SaidParts {
  const from = planned as unknown as AnswerParts<LightReasons>;
  const said = (reason: (typeof from.reasons)[number]): SaidReason =>
    "text" in reason
      ? ({ ...reason, figures: figuresOf(reason.parameters) } as unknown as SaidReason)
      : sayReason(reason, reasons as Texts<LightReasons, string>);
  return {
    ...planned,
    reasons: from.reasons.map(said),
    cautions: from.cautions.map(({ code }) => ({
      code,
      text: (cautions as Record<string, string>)[code] ?? "",
    })),
    uncertainty: from.uncertainty.map((cause) => sayCause(cause, causes as never)),
  };
}
