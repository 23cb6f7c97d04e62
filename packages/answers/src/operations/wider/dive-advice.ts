import type { DiveAdviceAnswer } from "@sunfathom/contract";
import { type Coded, type MountStepCodes, mountedAdvice, type diveAdvice as plan } from "@sunfathom/planner";
import type { StepText, Texts, TextUnits, Words } from "@sunfathom/words";
import { say as sayCode } from "../../say/say.js";
import type { Saying } from "../calculation.js";
import type { sayPlan as sayAnyPlan } from "../say-plan.js";

/** The texts of a plan, and of what holds its filters. */
export interface MountedTexts {
  plan: Words["dive-advice"];
  mounting: Words["filter-mounting"];
}

/** All of a plan's texts, with those of mounts among them. */
function together({ plan: own, mounting }: MountedTexts) {
  const all = <Codes>(codes: readonly Coded<Codes>[], texts: Texts<Codes, string>, units?: TextUnits) =>
    codes.map((code) => sayCode(code, texts, units)).join(" ");
  const steps: Texts<MountStepCodes, StepText> = {
    no_filter_fits: (p, units) => ({
      text: own.steps.no_filter(p, units).text,
      why: all(p.why, mounting.reasons, units),
    }),
    fit_filter: (p, units) => ({
      text: `${all(p.how, mounting.reasons, units)} ${all(p.do, mounting.procedure, units)}`,
      why: all(p.why, mounting.reasons, units),
    }),
  };
  return {
    ...own,
    reasons: { ...own.reasons, ...mounting.reasons },
    cautions: { ...own.cautions, ...mounting.cautions },
    summary: { ...own.summary, ...mounting.reasons },
    steps: { ...own.steps, ...steps },
    take: { ...own.take, ...mounting.take },
  };
}

type Planned = ReturnType<typeof mountedAdvice>;

/** A plan as any other, and how its filters are held. */
function say(
  planned: Planned,
  { texts, units }: { texts: MountedTexts; units: TextUnits },
  sayPlan: typeof sayAnyPlan,
) {
  const { mounting, ...rest } = planned;
  // Its codes are those of a plan and of mounts, and so are its texts, which the compiler holds to one another above.
  const said = sayPlan(rest as ReturnType<typeof plan>, together(texts), units);
  return mounting === undefined
    ? said
    : {
        ...said,
        mounting: {
          ...mounting,
          options: mounting.options.map((option) => ({
            ...option,
            text: sayCode(option, texts.mounting.reasons, units),
          })),
        },
      };
}

/** Who plans, and says, what scenes ask for that say what their filters are mounted on. */
export const mounts = {
  mounted: mountedAdvice,
  sayMounted: say satisfies Saying<ReturnType<typeof say>, DiveAdviceAnswer>,
};
export type Mounts = typeof mounts;

/** Its texts among those of one language. */
export const textsOf = (words: Pick<Words, "dive-advice" | "filter-mounting">): MountedTexts => ({
  plan: words["dive-advice"],
  mounting: words["filter-mounting"],
});
