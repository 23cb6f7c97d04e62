import type { CautionCode, LightCauses } from "@sunfathom/planner";
import type { Texts } from "./problems/texts.js";

/** What a cause of doubt is, and what would shrink it. */
export interface CauseText {
  text: string;
  how_to_shrink: string;
}

/** What it takes to put into words what every answer carries: its reasons, causes of doubt and cautions. */
export interface AnswerTexts<Reasons, Causes = LightCauses, Cautions extends string = CautionCode> {
  readonly reasons: Texts<Reasons, string>;
  readonly causes: Texts<Causes, CauseText>;
  readonly cautions: Readonly<Record<Cautions, string>>;
}

/** What to do, and why. */
export interface StepText {
  text: string;
  why: string;
}

/** What to take, and what for. */
export interface TakeText {
  what: string;
  why: string;
}
