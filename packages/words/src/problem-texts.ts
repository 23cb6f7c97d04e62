import type {
  BatchRuleParameters,
  CheckParameters,
  FieldError,
  MountingRuleParameters,
  OutsideCode,
  ProblemCode,
  SceneProblemCode,
  SceneRuleParameters,
  TripRuleParameters,
} from "@sunfathom/contract";
import type { LightRefusals, MountingRefusals } from "@sunfathom/planner";
import type { FieldsErrors, QueryDetails, QueryErrors } from "./problems/query-texts.js";
import type { ServiceDetails } from "./problems/service-details.js";
import type { FieldText, OutsideText, Texts } from "./problems/texts.js";
import type { QuizRefusals } from "./quiz/refusals.js";

/** What it takes to say in one language why a scene has no answer. */
export interface SceneProblemTexts {
  /** Kinds of problem, each in a sentence. */
  readonly titles: Readonly<Record<SceneProblemCode, string>>;
  readonly details: {
    /** Of all that is wrong with a body, the first thing. */
    invalid(found: { errors: readonly FieldError[]; more: boolean }): string;
    otherModel(versions: { expected: string; is: string }): string;
  };
  /** What is wrong with a value that its schema refuses. Where `allowed` is missing, it is names alone, and they need no words. */
  readonly checks: Texts<CheckParameters, CheckText>;
  readonly lightRules: Texts<SceneRuleParameters, FieldText>;
  readonly mountingRules: Texts<MountingRuleParameters, FieldText>;
  readonly outsideLight: Texts<Pick<LightRefusals, OutsideCode & keyof LightRefusals>, OutsideText>;
  readonly outsideMounting: Texts<Pick<MountingRefusals, OutsideCode & keyof MountingRefusals>, OutsideText>;
}

export type CheckText = Pick<FieldText, "message"> & Partial<FieldText>;

/** The same for all that a service refuses. Who computes without one carries none of it. */
export interface ProblemTexts extends SceneProblemTexts {
  readonly titles: Readonly<Record<ProblemCode, string>>;
  /** A name that stands twice in a JSON object. */
  readonly repeatedName: FieldText;
  readonly query: Texts<QueryErrors, FieldText>;
  readonly fields: Texts<FieldsErrors, FieldText>;
  readonly queryDetails: Texts<QueryDetails, string>;
  readonly service: Texts<ServiceDetails, string>;
  readonly quiz: Texts<QuizRefusals, FieldText>;
  /** What is wrong between the parts of a batch. */
  readonly batch: Texts<BatchRuleParameters, FieldText>;
  /** What is wrong between the parts of a plan for a trip. */
  readonly trip: Texts<TripRuleParameters, FieldText>;
}
