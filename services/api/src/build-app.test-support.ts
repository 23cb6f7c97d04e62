import { type AppOptions, createApp, poolLimits } from "./app.js";
import { ComputePool } from "./compute/pool.js";
import type { Limits } from "./config/limits.js";
import { unhurried } from "./unhurried.test-support.js";

type Options = Omit<AppOptions, "limits" | "pool"> & { limits?: Partial<Limits> };

/** Limits that the threads keep, and not each application. */
const ofThreads = ["workers", "niceness", "heavyPerClient", "waitingPerClient", "waiting"] as const;

/** Threads of all applications in this process whose tests say nothing of them: they load once, and are warm for the next. */
let threads: ComputePool | undefined;

/**
 * An application as nearly every test has it: a busy machine turns nobody away, and what a test says of limits is all that differs.
 * @param ownThreads where a test counts threads, ends them or fills them to the last place
 */
export const buildApp = ({
  limits = {},
  ownThreads = ofThreads.some((name) => name in limits),
  ...options
}: Options & { ownThreads?: boolean } = {}) => {
  if (!ownThreads) threads ??= new ComputePool(poolLimits(unhurried));
  const shared = ownThreads || threads === undefined ? {} : { pool: threads };
  return createApp({ ...options, ...shared, limits: { ...unhurried, ...limits } });
};
