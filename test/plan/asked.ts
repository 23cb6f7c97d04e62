/** Plans as callers get them: from a scene as sent to an answer as it goes over the wire. */
import { diveAdvice } from "../../packages/answers/src/operations/calculations/dive-advice.js";
import { en } from "../../packages/words/src/en/index.js";

const asking = diveAdvice.in(en["dive-advice"]);

/** @returns the plan, or undefined where the scene is refused. */
// biome-ignore lint/suspicious/noExplicitAny: answers are read as they come over the wire.
export function planFor(scene: object): any {
  const reply = asking.reply(scene);
  return reply.status === "ok" ? reply.body : undefined;
}
