import type { Scene } from "../scene/scene.js";

/** What breaks a rule. Carries no sentence: those are made of the rule's code and these parameters. */
export interface Violation<Parameters = unknown> {
  /** JSON pointer to the value that is wrong. */
  pointer: string;
  parameters: Parameters;
}

/** The rule of one code, whose violations come with `Parameters`: all that their text is made of. */
export interface RuleOf<Code extends string, Parameters, S = Scene> {
  /** Stable code, which errors carry. */
  code: Code;
  violations: (scene: S) => Violation<Parameters>[];
}

/** What must hold between fields of a scene that its schema, which looks at one field at a time, cannot say. */
export type Rule<S = Scene> = RuleOf<string, unknown, S>;

/** What the violations of each of `Rules` come with, by code. */
export type ParametersOf<Rules extends readonly { code: string }[]> = {
  [One in Rules[number] as One["code"]]: One extends {
    violations: (scene: never) => Violation<infer Parameters>[];
  }
    ? Parameters
    : never;
};

/** What a violation comes with that says all by itself. */
export type Nothing = Record<never, never>;

/** What breaks a rule, at a pointer. */
export const broken = <Parameters>(pointer: string, parameters: Parameters): Violation<Parameters> => ({
  pointer,
  parameters,
});
