import cors from "@fastify/cors";
import type { FastifyInstance } from "fastify";
import type { Exposure } from "../exposure.js";

/**
 * Lets pages of other origins read answers, where the configuration names them; without it browsers keep to the same
 * origin. Never with credentials: the service has none to be abused.
 * @see https://github.com/fastify/fastify-cors
 */
export async function registerCors(app: FastifyInstance, origins: Exposure["corsOrigins"]): Promise<void> {
  if (origins.length === 0) return;
  await app.register(cors, {
    origin: origins === "*" ? "*" : [...origins],
    methods: ["GET", "HEAD", "POST"],
    allowedHeaders: ["Content-Type", "If-None-Match", "X-Request-Id"],
    exposedHeaders: ["ETag", "X-Request-Id", "RateLimit", "RateLimit-Policy", "Retry-After"],
    maxAge: 600,
  });
}
