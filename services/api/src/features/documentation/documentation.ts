import { readFileSync } from "node:fs";
import type { FastifyInstance } from "fastify";
import { type Fixed, fixed, sendFixed } from "../../http/sent/send-fixed.js";
import { built, written } from "./built.js";
import { clientPath } from "./client-package.js";
import { guideIndex, guidePage } from "./guides.js";
import { pagePolicies } from "./html.js";
import { referencePage, referencePolicies } from "./reference.js";

const script = "text/javascript; charset=utf-8";
const style = "text/css; charset=utf-8";

/** A page or a file with what else goes with it. */
interface Shown {
  file: Fixed;
  policies: Record<string, string>;
}

/**
 * The page that shows the description and the guides beside it, served whole from here: they load nothing from elsewhere. All is read
 * once and sent from memory: read for each request, files would stay open for as long as each caller takes to read them.
 * @see https://github.com/Authress-Engineering/openapi-explorer
 */
export function documentationRoutes(app: FastifyInstance): void {
  for (const [path, { file, policies }] of files())
    app.get(path, { schema: { hide: true }, config: { budget: "documentation" } }, (request, reply) =>
      sendFixed(request, reply.headers(policies), file),
    );
}

let read: Map<string, Shown> | undefined;

/** By their paths. Nearly 1 MB, so once for a process. */
function files(): Map<string, Shown> {
  read ??= readAll();
  return read;
}

function readAll(): Map<string, Shown> {
  const { guides } = written();
  const reference = (root: string) => ({
    file: referencePage(root, guides, clientPath()),
    policies: referencePolicies,
  });
  const page = (file: Fixed) => ({ file, policies: pagePolicies });
  const part = (type: string, content: Buffer) => ({ file: fixed(type, content), policies: {} });
  return new Map<string, Shown>([
    ["/docs", reference("")],
    ["/docs/", reference("../../")],
    ["/docs/guides", page(guideIndex("../../", guides))],
    ["/docs/guides/", page(guideIndex("../../../", guides))],
    ...guides.map((guide): [string, Shown] => [`/docs/guides/${guide.name}`, page(guidePage(guide, guides))]),
    ["/docs/static/openapi-explorer.min.js", part(script, built("openapi-explorer.min.js"))],
    [
      "/docs/static/openapi-explorer.min.js.LICENSE.txt",
      part("text/plain; charset=utf-8", built("LICENSE.txt")),
    ],
    ["/docs/static/reference.js", part(script, own("reference.js"))],
    ["/docs/static/samples.js", part(script, own("samples.js"))],
    ["/docs/static/search.js", part(script, own("search.js"))],
    ["/docs/static/reference.css", part(style, own("reference.css"))],
    ["/docs/static/pages.css", part(style, own("pages.css"))],
    ["/docs/static/icon.svg", part("image/svg+xml", own("icon.svg"))],
  ]);
}

const own = (name: string) => readFileSync(new URL(`../../../docs/${name}`, import.meta.url));
