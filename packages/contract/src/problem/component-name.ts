import type { ProblemCode } from "./catalogue.js";

/** Component name of a problem's schema, for example `InvalidSceneProblem`. */
export function problemComponent(code: ProblemCode): string {
  const words = code.split("_").map((word) => word.charAt(0).toUpperCase() + word.slice(1));
  return `${words.join("")}Problem`;
}
