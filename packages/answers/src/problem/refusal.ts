import type { FieldError, JsonSchema, Rule, SceneName } from "@sunfathom/contract";
import type { SceneProblem } from "@sunfathom/planner";

/** What a kind of scene must keep. */
export interface Kept {
  component: SceneName;
  schema: JsonSchema;
  /** Between its fields. */
  rules: readonly Rule<never>[];
}

/** Why a scene is not answered, before that is put into words. */
export type Refusal =
  | {
      code: "invalid_scene";
      kind: Kept;
      raw: unknown;
      /** Errors that reading the request has already met. */
      found: readonly FieldError[];
    }
  | { code: "model_version_mismatch"; expected: string; is: string }
  | {
      code: "outside_the_model";
      kind: Kept;
      refused: SceneProblem;
      /** The name under which the caller gave the field that it concerns. */
      field: string;
    };

/** A scene that is not answered, and that somebody else puts into words. */
export interface Unanswered {
  status: "refused";
  refusal: Refusal;
}

/** Leaves a refusal as it is: a page that computes offline loads the texts of refusals apart from what answers need. */
export const unsaid = (refusal: Refusal): Unanswered => ({ status: "refused", refusal });
