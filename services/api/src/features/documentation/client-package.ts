import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { FastifyInstance } from "fastify";
import { type Fixed, fixed, fixedJson, sendFixed } from "../../http/sent/send-fixed.js";
import { sendRefusal } from "../../http/sent/send-problem.js";

/** Filled by the build (see .ci/setup.mjs). */
const folder = fileURLToPath(new URL("../../../client/", import.meta.url));
const fileName = /^sunfathom-sdk-(.+)\.tgz$/;

/** The client that belongs to this service, as npm and its like install it. */
export interface ClientPackage {
  version: string;
  /** path of the tarball, which its version belongs to for ever */
  tarball: string;
  /** Subresource Integrity, as lock files keep it */
  integrity: string;
}

/** A URL with a version never means another file. */
const forEver = "public, max-age=31536000, immutable";

/**
 * `/sdk` says which client belongs to this service, `/sdk/sunfathom-sdk-<version>.tgz` is it, and `/sdk/latest` is it too, for
 * a first try. They count against the budget of the documentation.
 */
export function clientPackageRoutes(app: FastifyInstance): void {
  const { client, tarball, index } = packed();
  const options = { schema: { hide: true }, config: { budget: "documentation" as const } };
  const give = (path: string, file: Fixed) =>
    app.get(path, options, (request, reply) => sendFixed(request, reply, file));
  give("/sdk", index);
  give("/sdk/latest", tarball);
  give(client.tarball, { ...tarball, cacheControl: forEver });
  app.get("/sdk/*", options, (_request, reply) => {
    sendRefusal(reply, { because: "no_such_client", path: client.tarball });
  });
}

let kept: { client: ClientPackage; tarball: Fixed; index: Fixed } | undefined;

/**
 * Read once for a process.
 * @throws Error where the build has not made it
 */
function packed() {
  kept ??= read();
  return kept;
}

function read() {
  const [name] = readdirSync(folder).filter((file) => fileName.test(file));
  const [, version] = fileName.exec(name ?? "") ?? [];
  if (name === undefined || version === undefined)
    throw new Error(`There is no client in ${folder}: build first.`);
  const bytes = readFileSync(`${folder}${name}`);
  const client: ClientPackage = {
    version,
    tarball: `/sdk/${name}`,
    integrity: `sha512-${createHash("sha512").update(bytes).digest("base64")}`,
  };
  return { client, tarball: fixed("application/gzip", bytes), index: fixedJson(JSON.stringify(client)) };
}

/** Where the client of this service is, as a path. */
export const clientPath = (): string => packed().client.tarball;
