import underPressure from "@fastify/under-pressure";
import type { FastifyInstance } from "fastify";
import { isOperational } from "../http/operational.js";
import { pathOf } from "../http/path-of.js";
import type { Limits } from "../limits.js";

/** The error handler knows it by its code. */
class Overloaded extends Error {
  readonly code = "FST_UNDER_PRESSURE";
}

const sample_ms = 1000;

/**
 * Turns requests away while the event loop runs late, so that those already taken are answered in time. Whoever asks
 * whether the process lives is still told. The start itself keeps the event loop busy: what was measured of it must not
 * turn away the first requests, so nobody is before a whole sample has been taken after it.
 * @see https://github.com/fastify/under-pressure
 */
export async function registerUnderPressure(
  app: FastifyInstance,
  { maxEventLoopDelay_ms }: Limits,
): Promise<void> {
  if (maxEventLoopDelay_ms === 0) return;
  let measuredFrom_ms = Number.POSITIVE_INFINITY;
  app.addHook("onReady", async () => {
    measuredFrom_ms = performance.now() + 2 * sample_ms;
  });
  await app.register(underPressure, {
    maxEventLoopDelay: maxEventLoopDelay_ms,
    sampleInterval: sample_ms,
    pressureHandler: async (request) => {
      if (performance.now() < measuredFrom_ms) return;
      if (!isOperational(pathOf(request.raw.url ?? ""))) throw new Overloaded();
    },
  });
}
