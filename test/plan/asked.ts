/** Plans as callers get them: from a scene as sent to an answer as it goes over the wire. */
import { answer } from "../../packages/answers/src/operations/in-english.test-support.js";

/** @returns the plan, or undefined where the scene is refused. */
// biome-ignore lint/suspicious/noExplicitAny: answers are read as they come over the wire.
export function planFor(scene: object): any {
  const reply = answer("dive-advice", scene);
  return reply.status === "ok" ? reply.body : undefined;
}
