import type { Fixed } from "../../http/sent/send-fixed.js";
import type { Guide } from "./built.js";
import { escapeHtml, page } from "./html.js";

/** What the guides are, each with a sentence. @param root the way to the service's root */
export function guideIndex(root: string, guides: readonly Guide[]): Fixed {
  const items = guides.map(
    ({ name, title, summary }) =>
      `<dt><a href="${root}docs/guides/${name}">${escapeHtml(title)}</a></dt><dd>${escapeHtml(summary)}</dd>`,
  );
  return page("Guides", root, `<h1>Guides</h1>\n<dl>\n${items.join("\n")}\n</dl>`);
}

/** A guide, with the way to the next one. */
export function guidePage({ name, title, html }: Guide, guides: readonly Guide[]): Fixed {
  const next = guides[guides.findIndex((guide) => guide.name === name) + 1];
  const onward =
    next === undefined ? "" : `<p>Next: <a href="${next.name}">${escapeHtml(next.title)}</a></p>`;
  return page(title, "../../../", `${html}\n${onward}`);
}
