import type { Item } from "./item.js";

/** Feedback without the step that it ends with, where the whole solution follows and says it again. */
export function beforeSolution(content: string, { solution }: Pick<Item, "solution">): string {
  const last = ` ${solution.steps[solution.steps.length - 1] ?? ""}`;
  return content.endsWith(last) ? content.slice(0, -last.length) : content;
}
