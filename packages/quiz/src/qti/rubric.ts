import type { Caution } from "../cautions/cautions-of.js";
import type { Language } from "../messages/catalogue.js";
import { type Element, el, text } from "../xml/xml.js";
import type { QtiVersion } from "./names.js";

/**
 * Cautions as a block that a player shows to learners; none where there are none. In version 3.0 it has a body of its own.
 * @param language where the document around it says none
 */
export function rubric(cautions: readonly Caution[], version: QtiVersion, language?: Language): Element[] {
  if (cautions.length === 0) return [];
  const paragraphs = cautions.map((caution) => el("p", {}, text(caution.text)));
  const content = version === "3.0" ? [el("contentBody", {}, ...paragraphs)] : paragraphs;
  const use = version === "3.0" ? { use: "instructions" } : {};
  const spoken = language === undefined ? {} : { "xml:lang": language };
  return [el("rubricBlock", { ...use, view: "candidate", ...spoken }, ...content)];
}
