import type { IncomingMessage } from "node:http";
import { pathOf } from "../asked/path-of.js";

const undecodable = new WeakSet<IncomingMessage>();

/**
 * What to route a request by. A path with an escape that cannot be decoded is routed nowhere: the router would refuse it by
 * itself, before anything counts the request or knows what every answer carries.
 */
export function routedBy(request: Pick<IncomingMessage, "url">): string {
  const { url = "/" } = request;
  if (!url.includes("%") || decodes(pathOf(url))) return url;
  undecodable.add(request as IncomingMessage);
  return "/";
}

/** Whether the request came with an escape in its path that cannot be decoded. */
export function hasBadEscape(request: IncomingMessage): boolean {
  return undecodable.has(request);
}

function decodes(path: string): boolean {
  try {
    decodeURIComponent(path);
    return true;
  } catch {
    return false;
  }
}
