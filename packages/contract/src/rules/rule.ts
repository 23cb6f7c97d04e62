import type { RuleCode } from "../problem/rule-meanings.js";
import type { Scene } from "../scene/scene.js";

export interface Violation {
  /** JSON pointer to the value that is wrong. */
  pointer: string;
  message: string;
  allowed: string;
}

/** What must hold between fields of a scene that its schema, which looks at one field at a time, cannot say. */
export interface Rule<S = Scene> {
  /** Stable code, which errors carry. `ruleMeanings` has the rule in a sentence. */
  code: RuleCode;
  /** Fields that it concerns; it is not asked where one of them is not well formed. */
  fields: readonly (keyof S & string)[];
  violations: (scene: S) => Violation[];
}
