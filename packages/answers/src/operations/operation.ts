import type { ComponentName, FieldError } from "@sunfathom/contract";
import type { AnswerParts, Scene } from "@sunfathom/planner";
import type { Example, SceneKind } from "../scene/scene-kind.js";
import type { Ready, Refused } from "./outcome.js";
import { prepare } from "./prepare.js";

/** What a calculation is called, and what comes out. */
interface Described {
  /** Name, and last part of its path. */
  name: string;
  path: string;
  /** `operationId` of its POST, and of its GET twin. */
  postId: string;
  getId: string;
  summary: string;
  description: string;
  /** Component of the contract that its answer keeps. */
  answer: ComponentName;
}

/** A calculation on scenes of one kind, and who works it out. */
interface Calculation<Own, ExampleName> extends Described {
  /** @throws SceneProblem where the scene lies outside the model */
  plan: (scene: Own) => AnswerParts;
  /** Scenes to try it with. */
  examples: readonly ExampleName[];
}

/** A calculation, whatever kind of scene it takes. */
export interface Operation extends Described {
  /** Component of the contract that a request keeps. */
  request: ComponentName;
  /** Fields of a request that mean nothing without a list. */
  besideLists: readonly string[];
  /** Scenes to try it with. */
  examples: readonly (Example<object> & { name: string })[];
  /**
   * Checks a scene from outside, and leaves the computing for later.
   * @param found errors that reading the request has already met
   */
  prepare: (raw: unknown, found?: readonly FieldError[]) => Ready | Refused;
}

/** Makes operations of the calculations that take scenes of one kind. */
export function taking<Wire extends object, Own extends object, ExampleName extends string>(
  kind: SceneKind<Wire, Own, ExampleName>,
) {
  return <const Name extends string>({
    plan,
    examples,
    ...described
  }: Calculation<Own, ExampleName> & { name: Name }): Operation & { name: Name } => ({
    ...described,
    request: kind.component,
    besideLists: kind.besideLists,
    examples: examples.map((name) => ({ name, ...kind.examples[name] })),
    prepare: (raw, found = []) => prepare(kind, { answer: described.answer, plan }, raw, found),
  });
}

/** What the planner must hand over so that an answer of the wire type `Wire` can be made of it. */
type Result<Wire> = Omit<Wire, "scene" | "model"> & { sources: string[] };

/** Names of fields, however deep, that `Own` has and `Wire` does not. */
type Undeclared<Own, Wire> = Own extends readonly (infer OwnItem)[]
  ? Wire extends readonly (infer WireItem)[]
    ? Undeclared<OwnItem, WireItem>
    : never
  : Own extends object
    ? {
        [K in keyof Own]-?: K extends keyof Wire ? Undeclared<NonNullable<Own[K]>, NonNullable<Wire[K]>> : K;
      }[keyof Own]
    : never;

/**
 * The type of a calculation on scenes `Of` whose result `Own` has all that the contract declares for `Wire`, and
 * nothing that it does not; another one that nothing fits, and that names the field, otherwise.
 */
export type Plan<Own, Wire, Of = Scene> = [Undeclared<Own, Result<Wire>>] extends [never]
  ? (scene: Of) => Result<Wire>
  : { notInTheContract: Undeclared<Own, Result<Wire>> };
