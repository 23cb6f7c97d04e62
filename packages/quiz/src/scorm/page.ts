/** The one page of a practice package: its first page in markup, so that it is read even where nothing runs. */
import type { Paper } from "./paper.js";

interface Shown {
  paper: Paper;
  language: string;
  title: string;
  cautions: readonly string[];
}

export const PLAYER_PATH = "player.js";
export const STYLE_PATH = "player.css";

const escaped = (content: string): string =>
  content.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

/** JSON inside of markup: no tag can begin in it. */
const data = (value: unknown): string => JSON.stringify(value).replaceAll("<", "\\u003c");

/** Nothing is fetched or sent: all that the page needs comes with it, and a platform is spoken to by its own window. */
const POLICY = "connect-src 'none'; form-action 'none'; object-src 'none'; base-uri 'none'";

export function pageOf({ paper, language, title, cautions }: Shown): string {
  const { say, items } = paper;
  const paragraphs = cautions.map((text) => `<p>${escaped(text)}</p>`).join("\n");
  return `<!doctype html>
<html lang="${escaped(language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<title>${escaped(title)}</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="${STYLE_PATH}">
</head>
<body>
<main>
<h1 tabindex="-1">${escaped(title)}</h1>
<div class="practice">
<p><strong>${escaped(say.practice)}</strong> ${escaped(say.keysInside)}</p>
</div>
<aside>
<h2>${escaped(say.takeCare)}</h2>
${paragraphs}
</aside>
<p>${escaped(say.questions.replace("{count}", String(items.length)))}</p>
<noscript><p>${escaped(say.needsScript)}</p></noscript>
</main>
<script type="application/json" id="paper">${data(paper)}</script>
<script src="${PLAYER_PATH}"></script>
</body>
</html>
`;
}
