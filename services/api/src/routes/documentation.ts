import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import type { FastifyInstance } from "fastify";
import { type Fixed, fixed, sendFixed } from "../http/send-fixed.js";

/**
 * Stricter than the policy that comes with the page, which lets fonts, styles and a badge come from elsewhere, and turns
 * what is asked for over HTTP to HTTPS, where a service on a local network has none.
 */
const onlyFromHere = [
  "default-src 'self'",
  "base-uri 'self'",
  "font-src 'self' data:",
  "frame-ancestors 'self'",
  "img-src 'self' data:",
  "object-src 'none'",
  "script-src 'self'",
  "script-src-attr 'none'",
  "style-src 'self'",
].join("; ");

const pagePolicies = { "content-security-policy": onlyFromHere, "referrer-policy": "no-referrer" };

const html = "text/html; charset=utf-8";
const script = "text/javascript; charset=utf-8";
const style = "text/css; charset=utf-8";

/** Of the library's files those that the page loads, with their media types. */
const libraryFiles = {
  "swagger-ui-bundle.js": script,
  "swagger-ui.css": style,
  "index.css": style,
  "favicon-32x32.png": "image/png",
  "favicon-16x16.png": "image/png",
} as const;

/** @param folder where the page's files are, as seen from its own path */
const page = (folder: string) => `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>Sunfathom: API documentation</title>
<link rel="stylesheet" href="${folder}/swagger-ui.css">
<link rel="stylesheet" href="${folder}/index.css">
<link rel="icon" type="image/png" href="${folder}/favicon-32x32.png" sizes="32x32">
<link rel="icon" type="image/png" href="${folder}/favicon-16x16.png" sizes="16x16">
</head>
<body>
<div id="swagger-ui"></div>
<script src="${folder}/swagger-ui-bundle.js"></script>
<script src="${folder}/swagger-initializer.js"></script>
</body>
</html>
`;

/** Told apart by its ending, the page finds the description beside itself, also where a proxy serves it under a path. */
const initializer = `const here = window.location.pathname.replace(/\\/$/, "");
SwaggerUIBundle({
  url: here.replace(/[^/]*$/, "") + "openapi.json",
  dom_id: "#swagger-ui",
  deepLinking: true,
  presets: [SwaggerUIBundle.presets.apis],
  layout: "BaseLayout",
  docExpansion: "list",
  defaultModelsExpandDepth: 0,
  validatorUrl: null,
});
`;

/**
 * The page that shows the description, served whole from here: it loads nothing from elsewhere. Its files are read once and
 * sent from memory: read for each request, they would keep a file open for as long as each caller takes to read them. The
 * library's plugin is not used, as it sends them from the disk.
 * @see https://github.com/swagger-api/swagger-ui
 */
export function documentationRoutes(app: FastifyInstance): void {
  for (const [path, file] of files())
    app.get(path, { schema: { hide: true }, config: { budget: "documentation" } }, (request, reply) =>
      sendFixed(request, reply.headers(pagePolicies), file),
    );
}

let read: Map<string, Fixed> | undefined;

/** By their paths. Some 2 MB, so once for a process. */
function files(): Map<string, Fixed> {
  read ??= new Map([
    ["/docs", fixed(html, page("docs/static"))],
    ["/docs/", fixed(html, page("static"))],
    ["/docs/static/swagger-initializer.js", fixed(script, initializer)],
    ["/docs/static/pages.css", fixed(style, ownFile("pages.css"))],
    ["/docs/static/icon.svg", fixed("image/svg+xml", ownFile("icon.svg"))],
    ...libraryFilesRead(),
  ]);
  return read;
}

const ownFile = (name: string) => readFileSync(new URL(`../../docs/${name}`, import.meta.url));

function libraryFilesRead(): [string, Fixed][] {
  const require = createRequire(import.meta.url);
  const manifest = require.resolve("@fastify/swagger-ui/package.json");
  return Object.entries(libraryFiles).map(([name, type]) => [
    `/docs/static/${name}`,
    fixed(type, readFileSync(join(dirname(manifest), "static", name))),
  ]);
}
