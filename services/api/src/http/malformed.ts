import type { IncomingMessage } from "node:http";
import type { FastifyReply, FastifyRequest } from "fastify";
import { sendPlainProblem } from "./send-problem.js";
import { hasBadEscape } from "./target.js";

/** More lines than any client and the proxies before it send. */
const mostHeaders = 100;

/** Refuses what can be read as HTTP and is none all the same, with a problem like any other. */
export function refuseMalformed({ raw }: FastifyRequest, reply: FastifyReply, done: () => void): void {
  const fault = faultOf(raw);
  // Node.js leaves out what comes behind the 2000th, the length of a body among it.
  if (raw.rawHeaders.length > 2 * mostHeaders)
    sendPlainProblem(reply, "headers_too_large", `The request has more than ${mostHeaders} headers.`);
  else if (fault === undefined) done();
  else sendPlainProblem(reply, "malformed_request", fault);
}

function faultOf(request: IncomingMessage): string | undefined {
  if (hasBadEscape(request)) return "The path holds an escape that cannot be decoded.";
  // RFC 9112, section 3.2: which of two is meant, servers and proxies may see differently.
  const hosts = hostsIn(request.rawHeaders);
  if (hosts > 1) return "The request has more than one Host header.";
  if (hosts === 0 && request.httpVersion === "1.1") return "The request has no Host header.";
  // RFC 9110, section 10.1.1: there is no other expectation.
  const { expect } = request.headers;
  if (expect !== undefined && expect.toLowerCase() !== "100-continue")
    return "The Expect header can only be 100-continue.";
  return undefined;
}

/** @param rawHeaders names and values in turn, as they came */
function hostsIn(rawHeaders: readonly string[]): number {
  let count = 0;
  for (let at = 0; at < rawHeaders.length; at += 2)
    if (rawHeaders[at]?.length === 4 && rawHeaders[at]?.toLowerCase() === "host") count += 1;
  return count;
}
