import rateLimit from "@fastify/rate-limit";
import type { FastifyInstance } from "fastify";
import { isOperational } from "../http/operational.js";
import { pathOf } from "../http/path-of.js";
import { sendPlainProblem } from "../http/send-problem.js";
import type { Limits } from "../limits.js";

/**
 * Counts the requests of each client (by address; of IPv6 by its /64) and refuses those beyond the limit. The plugin
 * keeps the count; its header fields are those of an old draft, so the fields of the current one are written here.
 * @see https://github.com/fastify/fastify-rate-limit
 * @see https://datatracker.ietf.org/doc/draft-ietf-httpapi-ratelimit-headers/ (version 10: `RateLimit-Policy`, `RateLimit`)
 */
export async function registerRateLimit(app: FastifyInstance, limits: Limits): Promise<void> {
  const { requestsPerWindow: quota, window_s } = limits;
  if (quota === 0) return;
  await app.register(rateLimit, { global: false, ipv6Subnet: 64 });
  const count = app.createRateLimit({ max: quota, timeWindow: window_s * 1000 });
  const policy = `"default";q=${quota};w=${window_s}`;
  app.addHook("onRequest", async (request, reply) => {
    if (isOperational(pathOf(request.raw.url ?? ""))) return;
    const counted = await count(request);
    if (counted.isAllowed) return;
    const { remaining, isExceeded, ttlInSeconds } = counted;
    reply
      .header("ratelimit-policy", policy)
      .header("ratelimit", `"default";r=${remaining};t=${ttlInSeconds}`);
    if (!isExceeded) return;
    reply.header("retry-after", String(ttlInSeconds));
    const detail = `More than ${quota} requests in ${window_s} s. Try again in ${ttlInSeconds} s.`;
    return sendPlainProblem(reply, "too_many_requests", detail);
  });
}
