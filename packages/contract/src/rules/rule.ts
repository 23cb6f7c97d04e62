import type { Scene } from "../scene/scene.js";
import type { RuleCode, RuleParameters } from "./rule-parameters.js";

/** What breaks a rule. Carries no sentence: those are made of the rule's code and these parameters. */
export interface Violation<Parameters = RuleParameters[RuleCode]> {
  /** JSON pointer to the value that is wrong. */
  pointer: string;
  parameters: Parameters;
}

/** The rule of one code. */
export interface RuleOf<Code extends RuleCode, S = Scene> {
  /** Stable code, which errors carry. */
  code: Code;
  /** Fields that it concerns; it is not asked where one of them is not well formed. */
  fields: readonly (keyof S & string)[];
  violations: (scene: S) => Violation<RuleParameters[Code]>[];
}

/** What must hold between fields of a scene that its schema, which looks at one field at a time, cannot say. */
export type Rule<S = Scene> = { [Code in RuleCode]: RuleOf<Code, S> }[RuleCode];

/** What breaks a rule, at a pointer. */
export const broken = <Parameters>(pointer: string, parameters: Parameters): Violation<Parameters> => ({
  pointer,
  parameters,
});
