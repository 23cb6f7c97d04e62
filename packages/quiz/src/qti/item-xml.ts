import { ownCautions } from "../cautions/cautions-of.js";
import { beforeSolution } from "../item/before-solution.js";
import type { Item } from "../item/item.js";
import type { Catalogue } from "../messages/catalogue.js";
import { type Element, el, text, xml } from "../xml/xml.js";
import { interactionOf } from "./interaction.js";
import { inVersion, type QtiVersion } from "./names.js";
import { outcome } from "./outcome.js";
import { BLANK, FEEDBACK, MAXSCORE, NO_FEEDBACK, SCORE } from "./processing.js";
import { rubric } from "./rubric.js";

const p = (content: string): Element => el("p", {}, text(content));

export interface ItemDocument {
  identifier: string;
  title: string;
  xml: string;
}

interface ItemOptions {
  version: QtiVersion;
  say: Catalogue;
  /** Path of the picture's file from the item's, where it has one. */
  picture?: string;
  /** Without them a platform shows the question and takes its response, and cannot mark it. */
  keys: boolean;
}

export function itemXml(item: Item, { version, say, picture, keys }: ItemOptions): ItemDocument {
  const identifier = `${item.id}-${item.template.replaceAll("_", "-")}`;
  const title = `${item.id}: ${say.common.title({ template: item.template })}`;
  const parts = interactionOf(item, {
    right: say.common.right,
    wrong: say.common.wrongNumber,
    partly: say.common.partlyRight,
  });
  const solution = [...item.solution.steps, say.common.sources({ sources: item.solution.sources })];
  const body = el(
    "itemBody",
    {},
    p(item.stem),
    ...(item.picture && picture ? [el("p", {}, el("img", { src: picture, alt: item.picture.alt }))] : []),
    parts.inline
      ? el(
          "p",
          {},
          parts.interaction,
          ...("unit" in item && item.unit !== "" ? [text(` ${say.common.unit(item.unit)}`)] : []),
        )
      : parts.interaction,
    ...rubric(ownCautions(item, say.language), version),
  );
  const feedback = [
    ...parts.feedback.map(({ id, text: content, lines = [] }) =>
      modal(id, version, [beforeSolution(content, item), ...lines, ...solution].map(p)),
    ),
    modal(BLANK, version, [p(say.common.blank)]),
  ];
  const feedbackOutcome = outcome(FEEDBACK, "identifier", NO_FEEDBACK);
  const score = outcome(SCORE, "float", "0", { normalMaximum: 1 });
  const maxScore = outcome(MAXSCORE, "float", "1");
  const root = el(
    "assessmentItem",
    { identifier, title, adaptive: "false", timeDependent: "false", "xml:lang": say.language },
    ...(keys
      ? [parts.declaration, score, maxScore, feedbackOutcome, body, parts.processing, ...feedback]
      : [{ ...parts.declaration, children: [] }, score, maxScore, body]),
  );
  return { identifier, title, xml: xml(inVersion(root, version)) };
}

/** In version 3.0 feedback has a body of its own. */
function modal(identifier: string, version: QtiVersion, paragraphs: readonly Element[]): Element {
  const attributes = { outcomeIdentifier: FEEDBACK, identifier, showHide: "show" };
  return version === "3.0"
    ? el("modalFeedback", attributes, el("contentBody", {}, ...paragraphs))
    : el("modalFeedback", attributes, ...paragraphs);
}
