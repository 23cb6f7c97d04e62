import { mountingExamples, pascal, type SceneName, sceneExamples } from "@sunfathom/contract";
import type { SceneProblemTexts, Words } from "@sunfathom/words";
import { abouts, calculationsIn } from "../generated/calculations.js";
import { said } from "../problem/say-refusal.js";
import type { About } from "./about.js";
import type { Calculation } from "./calculation.js";
import type { OperationName } from "./calculations.js";

interface Example {
  name: string;
  summary: string;
  scene: object;
}

/** A calculation as a service offers it. */
export interface Operation extends Calculation, Omit<About, "examples"> {
  name: OperationName;
  /** `operationId` of its POST, and of its GET twin. */
  postId: string;
  getId: string;
  examples: readonly Example[];
}

type Examples = Readonly<Record<string, Omit<Example, "name">>>;
const examples: Readonly<Record<SceneName, Examples>> = {
  Scene: sceneExamples,
  MountingScene: mountingExamples,
};

/**
 * Every calculation in the words of one language, with what it says of itself. Apart from the calculations: whoever computes without
 * a service describes nothing.
 */
export const operationsIn = (words: Words, problems: SceneProblemTexts): readonly Operation[] =>
  calculationsIn(words, said(problems)).map((calculation) => {
    const about: About = abouts[calculation.name];
    return {
      ...calculation,
      ...about,
      postId: `compute${pascal(calculation.name)}`,
      getId: `read${pascal(calculation.name)}`,
      examples: about.examples.map((name) => exampleOf(examples[calculation.request], name)),
    };
  });

function exampleOf(known: Examples, name: string): Example {
  const found = known[name];
  if (found === undefined) throw new Error(`There is no example ${name}.`);
  return { name, ...found };
}
