import type { ComponentName, SceneExampleName } from "@sunfathom/contract";
import type { AnswerParts, Scene } from "@sunfathom/planner";

/** A calculation: what it is called, what goes in, what comes out, and who works it out. */
export interface Operation {
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
  /** @throws SceneProblem where the scene lies outside the model */
  plan: (scene: Scene) => AnswerParts;
  /** Scenes to try it with. */
  examples: readonly SceneExampleName[];
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
 * The type of a calculation whose result `Own` has all that the contract declares for `Wire`, and nothing that it does
 * not; another one that nothing fits, and that names the field, otherwise.
 */
export type Plan<Own, Wire> = [Undeclared<Own, Result<Wire>>] extends [never]
  ? (scene: Scene) => Result<Wire>
  : { notInTheContract: Undeclared<Own, Result<Wire>> };
