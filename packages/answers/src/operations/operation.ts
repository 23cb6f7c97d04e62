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
export type Result<Wire> = Omit<Wire, "scene" | "model"> & { sources: string[] };
