import underPressure from "@fastify/under-pressure";
import type { FastifyInstance } from "fastify";
import { isOperational } from "../http/operational.js";
import { pathOf } from "../http/path-of.js";
import type { Limits } from "../limits.js";

/** The error handler knows it by its code. */
class Overloaded extends Error {
  readonly code = "FST_UNDER_PRESSURE";
}

/**
 * Turns requests away while the event loop runs late, so that those already taken are answered in time. Whoever asks
 * whether the process lives is still told.
 * @see https://github.com/fastify/under-pressure
 */
export async function registerUnderPressure(
  app: FastifyInstance,
  { maxEventLoopDelay_ms }: Limits,
): Promise<void> {
  if (maxEventLoopDelay_ms === 0) return;
  await app.register(underPressure, {
    maxEventLoopDelay: maxEventLoopDelay_ms,
    sampleInterval: 1000,
    pressureHandler: async (request) => {
      if (!isOperational(pathOf(request.raw.url ?? ""))) throw new Overloaded();
    },
  });
}
