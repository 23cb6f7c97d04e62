import type { IncomingMessage } from "node:http";
import type { ServiceDetail } from "@sunfathom/words";
import type { FastifyReply, FastifyRequest } from "fastify";
import { sendRefusal } from "../sent/send-problem.js";
import { hasBadEscape } from "../sockets/target.js";

/** More lines than any client and the proxies before it send. */
const mostHeaders = 100;

/** Refuses what can be read as HTTP and is none all the same, with a problem like any other. */
export function refuseMalformed({ raw }: FastifyRequest, reply: FastifyReply, done: () => void): void {
  const fault = faultOf(raw);
  // Node.js leaves out what comes behind the 2000th, the length of a body among it.
  if (raw.rawHeaders.length > 2 * mostHeaders)
    sendRefusal(reply, { because: "too_many_headers", most: mostHeaders });
  else if (fault === undefined) done();
  else sendRefusal(reply, fault);
}

function faultOf(request: IncomingMessage): ServiceDetail | undefined {
  if (hasBadEscape(request)) return { because: "bad_escape" };
  // RFC 9112, section 3.2: which of two is meant, servers and proxies may see differently.
  const hosts = hostsIn(request.rawHeaders);
  if (hosts > 1) return { because: "host_repeated" };
  if (hosts === 0 && request.httpVersion === "1.1") return { because: "host_missing" };
  // RFC 9110, section 10.1.1: there is no other expectation.
  const { expect } = request.headers;
  if (expect !== undefined && expect.toLowerCase() !== "100-continue")
    return { because: "other_expectation" };
  return undefined;
}

/** @param rawHeaders names and values in turn, as they came */
function hostsIn(rawHeaders: readonly string[]): number {
  let count = 0;
  for (let at = 0; at < rawHeaders.length; at += 2)
    if (rawHeaders[at]?.length === 4 && rawHeaders[at]?.toLowerCase() === "host") count += 1;
  return count;
}
