import { defaultLimits, type Limits } from "./limits.js";

/** For tests of something else than load: a busy machine must not turn their requests away. */
export const unhurried: Limits = { ...defaultLimits, maxEventLoopDelay_ms: 0 };
