import { IncomingMessage, type OutgoingHttpHeaders, ServerResponse } from "node:http";
import { Socket } from "node:net";
import type { FastifyInstance, FastifyReply } from "fastify";
import helmet from "helmet";

/**
 * Headers that tell browsers to make nothing of an answer but data. `/docs` brings policies of its own.
 * Transport security is for whoever ends TLS to promise: the service cannot know that its whole domain speaks it.
 * @see https://github.com/helmetjs/helmet
 */
export const securityHeaders: OutgoingHttpHeaders = headersOf(
  helmet({
    contentSecurityPolicy: {
      useDefaults: false,
      directives: { defaultSrc: ["'none'"] },
    },
    strictTransportSecurity: false,
    // What only documents or browsers of the past obey would be a third of all headers. Who may frame an answer matters where there is
    // something to press: pages say it themselves.
    crossOriginOpenerPolicy: false,
    crossOriginResourcePolicy: false,
    referrerPolicy: false,
    originAgentCluster: false,
    xDnsPrefetchControl: false,
    xDownloadOptions: false,
    xFrameOptions: false,
    xPermittedCrossDomainPolicies: false,
    xXssProtection: false,
  }),
);

export function registerHelmet(app: FastifyInstance): void {
  app.addHook("onRequest", (_, reply, done) => {
    reply.headers(securityHeaders);
    done();
  });
}

/**
 * Takes off an answer, that is for the script of a page which may read it, what only documents and embedded files obey: with the headers
 * of CORS there would be more of them than a brief answer has bytes. That data is never guessed to be a script stays said.
 */
export function withoutDocumentHeaders(reply: FastifyReply): void {
  reply.removeHeader("content-security-policy").removeHeader("cross-origin-resource-policy");
}

/**
 * What the library sets on an answer. With these settings that is the same for all, so it is asked once: set one by one on
 * each, as it does, headers cost Node.js a tenth of a 304.
 */
function headersOf(setHeaders: ReturnType<typeof helmet>): OutgoingHttpHeaders {
  const request = new IncomingMessage(new Socket());
  const response = new ServerResponse(request);
  setHeaders(request, response, (error) => {
    if (error !== undefined) throw error;
  });
  return response.getHeaders();
}
