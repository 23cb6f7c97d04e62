import type { KeptAnswer } from "./answers-kept.js";
import { exemplify } from "./exemplify.js";
import type { JsonObject } from "./json.js";
import { describeParts } from "./parts.js";
import { share } from "./share.js";
import { tidy } from "./tidy.js";

/**
 * The description in its final form.
 * @param written as its writer made it; not changed
 * @param answers to show as examples
 */
export function finish<T extends object>(written: T, answers: Readonly<Record<string, KeptAnswer>> = {}): T {
  const plain: JsonObject = JSON.parse(JSON.stringify(written));
  const paths = tidy(plain["paths"] ?? {});
  // What the components say stays as it is: there, too, a name may be "in" or "example".
  return JSON.parse(JSON.stringify(describeParts(share(exemplify({ ...plain, paths }, answers)))));
}
