import helmet from "@fastify/helmet";
import type { FastifyInstance } from "fastify";

/**
 * Headers that tell browsers to make nothing of an answer but data. `/docs` brings a content security policy of its own.
 * Transport security is for whoever ends TLS to promise: the service cannot know that its whole domain speaks it.
 * @see https://github.com/fastify/fastify-helmet
 */
export async function registerHelmet(app: FastifyInstance): Promise<void> {
  await app.register(helmet, {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: { defaultSrc: ["'none'"], frameAncestors: ["'none'"] },
    },
    referrerPolicy: { policy: "no-referrer" },
    strictTransportSecurity: false,
  });
}
