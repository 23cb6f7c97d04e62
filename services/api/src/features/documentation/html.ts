import { type Fixed, fixed } from "../../http/sent/send-fixed.js";

const signs: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** A text as HTML shows it: nothing in it is markup, within an attribute or outside. */
export const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, (sign) => signs[sign] ?? sign);

/** The same, with what stands between backticks set as code. */
export const inline = (text: string): string => escapeHtml(text).replace(/`([^`]+)`/g, "<code>$1</code>");

/** What a page may do: show itself with the service's own style and pictures, nothing else. */
const policy = [
  "default-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
  "img-src 'self'",
  "style-src 'self'",
].join("; ");

export const pagePolicies = { "content-security-policy": policy, "referrer-policy": "no-referrer" };

/** What all pages link to, as seen from the service's root. */
const links = [
  ["docs", "Reference"],
  ["docs/guides/", "Guides"],
  ["changelog", "Changes"],
] as const;

/**
 * A page to read, whole.
 * @param root the way from the page's own path to the service's root, such as `../../`: a proxy may serve both under a path
 * @param body HTML
 */
export function page(title: string, root: string, body: string): Fixed {
  const menu = links.map(([path, name]) => `<a href="${root}${path}">${name}</a>`).join("\n");
  return fixed(
    "text/html; charset=utf-8",
    `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(title)} · Sunfathom</title>
<link rel="stylesheet" href="${root}docs/static/pages.css">
<link rel="icon" type="image/svg+xml" href="${root}docs/static/icon.svg">
</head>
<body>
<header><strong>Sunfathom</strong>
<nav>
${menu}
</nav></header>
<main>
${body}
</main>
</body>
</html>
`,
  );
}
