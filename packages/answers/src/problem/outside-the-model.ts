import type { Problem } from "@sunfathom/contract";
import type { SceneProblem } from "@sunfathom/planner";
import { member } from "../validate/pointer.js";
import { sceneProblem } from "./problem.js";

/**
 * The problem of a scene that is valid, but that the model cannot answer.
 * @param asAsked the name under which the caller gave what the planner calls `field`
 */
export function outsideTheModel(
  { code, message, fields }: SceneProblem,
  asAsked: (field: string) => string,
): Problem {
  const errors = fields.map((field) => ({
    pointer: member("", asAsked(field.field)),
    code,
    message: field.message,
    allowed: field.allowed,
  }));
  return sceneProblem("outside_the_model", message, errors);
}
