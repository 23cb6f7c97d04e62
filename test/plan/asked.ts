/** Plans as callers get them: from a scene as sent to an answer as it goes over the wire. */
import { answer } from "../../packages/answers/src/operations/in-english.test-support.js";
import type { Wire } from "./wire.js";

/** @returns the plan, or undefined where the scene is refused. */
export function planFor(scene: object): Wire {
  const reply = answer("dive-advice", scene);
  return reply.status === "ok" ? reply.body : undefined;
}
