import type { ProblemPage } from "@sunfathom/contract";
import type { Fixed } from "../../http/sent/send-fixed.js";
import { inline, page } from "./html.js";

/** The page of a kind of problem, for people. */
export function problemHtml({ title, code, status, explanation, errors = [] }: ProblemPage): Fixed {
  const rows = errors.map(
    ({ code, meaning }) =>
      `<tr id="${inline(code)}"><td><code>${inline(code)}</code></td><td>${inline(meaning)}</td></tr>`,
  );
  const table =
    rows.length === 0
      ? ""
      : `<h2>Codes of its errors</h2>
<table>
<thead><tr><th>Code</th><th>What it means</th></tr></thead>
<tbody>
${rows.join("\n")}
</tbody>
</table>`;
  return page(
    title,
    "../../",
    `<h1>${inline(title)}</h1>
<p>Code <code>${inline(code)}</code>, HTTP status ${status}.</p>
<p>${inline(explanation)}</p>
${table}`,
  );
}
