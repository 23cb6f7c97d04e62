import type { FastifyInstance } from "fastify";
import helmet from "helmet";

/**
 * Headers that tell browsers to make nothing of an answer but data. `/docs` brings a content security policy of its own.
 * Transport security is for whoever ends TLS to promise: the service cannot know that its whole domain speaks it.
 * By the library itself, built once: its plugin for the framework builds it anew for every request.
 * @see https://github.com/helmetjs/helmet
 */
export function registerHelmet(app: FastifyInstance): void {
  const setHeaders = helmet({
    contentSecurityPolicy: {
      useDefaults: false,
      directives: { defaultSrc: ["'none'"], frameAncestors: ["'none'"] },
    },
    referrerPolicy: { policy: "no-referrer" },
    strictTransportSecurity: false,
  });
  app.addHook("onRequest", ({ raw }, reply, done) => setHeaders(raw, reply.raw, () => done()));
}
