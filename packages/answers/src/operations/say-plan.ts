import type { diveAdvice as plan } from "@sunfathom/planner";
import type { TextUnits, Words } from "@sunfathom/words";
import { figuresOf } from "../say/figures-of.js";
import { say as sayCode } from "../say/say.js";
import { sayParts } from "../say/say-parts.js";

/** A plan in words. */
export const sayPlan = (
  planned: ReturnType<typeof plan>,
  texts: Words["dive-advice"],
  units?: TextUnits,
) => ({
  ...sayParts(planned, texts, units),
  summary: planned.summary.map((part) => sayCode(part, texts.summary, units)).join(" "),
  summary_parts: planned.summary,
  close_calls: planned.close_calls.map((call) => ({ ...call, text: sayCode(call, texts.summary, units) })),
  steps: planned.steps.map((step) => ({
    ...step,
    ...sayCode(step, texts.steps, units),
    figures: figuresOf(step.parameters),
  })),
  take: planned.take.map((item) => ({ ...item, ...sayCode(item, texts.take, units) })),
});
