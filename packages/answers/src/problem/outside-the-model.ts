import { flatLampNames, type Problem, type Scene } from "@sunfathom/contract";
import type { SceneProblem } from "@sunfathom/planner";
import { member } from "../validate/pointer.js";
import { problem } from "./problem.js";

/** The name under which the caller gave what the planner calls `field`. */
function asAsked(field: string, asked: Scene): string {
  if (field === "max_depth_m" && asked.depth_m !== undefined) return "depth_m";
  if (field !== "lamps" || asked.lamps !== undefined) return field;
  return flatLampNames.find((name) => asked[name] !== undefined) ?? field;
}

/**
 * The problem of a scene that is valid, but that the model cannot answer.
 * @param asked the scene as the caller gave it
 */
export function outsideTheModel({ code, message, fields }: SceneProblem, asked: Scene): Problem {
  const errors = fields.map((field) => ({
    pointer: member("", asAsked(field.field, asked)),
    code,
    message: field.message,
    allowed: field.allowed,
  }));
  return problem("outside_the_model", message, errors);
}
