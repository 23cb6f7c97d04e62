import { defaultLimits, type Limits } from "./config/limits.js";

/** For tests of something else than load: a busy machine must not turn their requests away, nor give up on them. */
export const unhurried: Limits = {
  ...defaultLimits,
  handlerTimeout_ms: 120_000,
  // Nothing comes while an answer is worked out.
  connectionTimeout_ms: 120_000,
  niceness: 0,
};
