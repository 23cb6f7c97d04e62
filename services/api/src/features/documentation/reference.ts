import { type Fixed, fixed } from "../../http/sent/send-fixed.js";
import type { Guide } from "./built.js";
import { escapeHtml } from "./html.js";

/**
 * What the page of the reference may do: run what comes from here and ask the service itself. Its renderer brings its styles with its
 * elements, so that this page alone takes styles that stand in it.
 */
export const referencePolicies = {
  "content-security-policy": [
    "default-src 'none'",
    "base-uri 'none'",
    "connect-src 'self'",
    "font-src 'self' data:",
    "form-action 'none'",
    "frame-ancestors 'self'",
    "img-src 'self' data: blob:",
    "script-src 'self'",
    "script-src-attr 'none'",
    "style-src 'self' 'unsafe-inline'",
  ].join("; "),
  "referrer-policy": "no-referrer",
};

/**
 * The page of the reference.
 * @param root the way from the page's own path to the service's root
 */
export function referencePage(root: string, guides: readonly Guide[], clientPath: string): Fixed {
  const listed = guides.map(
    ({ name, title, summary }) =>
      `<li><a href="${root}docs/guides/${name}">${escapeHtml(title)}</a>: ${escapeHtml(summary)}</li>`,
  );
  return fixed(
    "text/html; charset=utf-8",
    `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Sunfathom: API documentation</title>
<link rel="stylesheet" href="${root}docs/static/reference.css">
<link rel="icon" type="image/svg+xml" href="${root}docs/static/icon.svg">
<script type="module" src="${root}docs/static/openapi-explorer.min.js"></script>
<script type="module" src="${root}docs/static/reference.js"></script>
</head>
<body>
<openapi-explorer hide-server-selection="true" default-schema-tab="body" schema-expand-level="1" nav-bg-color="#0b3244" primary-color="#04617f" secondary-color="#f4c95d">
<nav slot="overview-footer" id="guides">
<h2><label for="find">Find a call or a field</label></h2>
<input type="search" id="find" autocomplete="off" spellcheck="false" placeholder="white balance, kit, lamp_count">
<ul id="found"></ul>
<h2>Guides</h2>
<ul>
${listed.join("\n")}
<li><a href="${root}changelog">Changes</a>: what was added, and which figures moved</li>
</ul>
<h2>The client</h2>
<p>Typed, for TypeScript and JavaScript, with the same answers offline:</p>
<pre>npm install <span id="service">https://this.service</span>${escapeHtml(clientPath)}</pre>
<p>The description itself: <a href="${root}openapi.json">JSON</a>, <a href="${root}openapi.yaml">YAML</a>.</p>
</nav>
</openapi-explorer>
<noscript><p>The reference needs scripts; the <a href="${root}docs/guides/">guides</a> and <a href="${root}openapi.yaml">the description</a> do not.</p></noscript>
</body>
</html>
`,
  );
}
