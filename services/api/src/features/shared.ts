import type { Computing } from "../compute/computing.js";
import type { Limits } from "../config/limits.js";
import type { AnswerCache } from "../http/sent/answer-cache.js";

/** What features that compute have in common. */
export interface Shared {
  /** answers that are kept to be given again */
  cache: AnswerCache;
  /** where and when what is asked is worked out, and what it costs */
  computing: Computing;
  limits: Limits;
}
