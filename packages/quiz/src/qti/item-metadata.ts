/**
 * What a question is about, where QTI has it: in the manifest, beside the question's file. Language, topic, level and difficulty in
 * the elements of IEEE 1484.12.1 (Learning Object Metadata, 1.3, 1.5 and 5.8), in the binding that QTI packages use; how it is
 * answered in QTI's own `qtiMetadata` (1EdTech, QTI 2.1 and 3.0, metadata and usage data).
 */
import type { Interaction, Item } from "../item/item.js";
import { difficultyWord } from "../xml/difficulty-word.js";
import { type Element, el, text } from "../xml/xml.js";
import type { QtiVersion } from "./names.js";

export const LOM = "http://ltsc.ieee.org/xsd/LOM";
export const QTI_METADATA = {
  "3.0": "http://www.imsglobal.org/xsd/imsqti_metadata_v3p0",
  "2.1": "http://www.imsglobal.org/xsd/imsqti_metadata_v2p1",
} as const satisfies Record<QtiVersion, string>;

const INTERACTIONS: Readonly<Record<Interaction, string>> = {
  single_choice: "choiceInteraction",
  multiple_choice: "choiceInteraction",
  numeric: "textEntryInteraction",
  ordering: "orderInteraction",
  matching: "matchInteraction",
};

const leaf = (name: string, content: string): Element => el(name, {}, text(content));
/** Codes are English words. */
const keyword = (code: string): Element =>
  el("imsmd:keyword", {}, el("imsmd:string", { language: "en" }, text(code)));

/** @param keys whether solutions and feedback are in the question's file */
export function itemMetadata(
  { topic, level, difficulty, interaction }: Item,
  { language, keys }: { language: string; keys: boolean },
): Element {
  return el(
    "metadata",
    {},
    el(
      "imsmd:lom",
      {},
      el("imsmd:general", {}, leaf("imsmd:language", language), keyword(topic), keyword(level)),
      el(
        "imsmd:educational",
        {},
        el(
          "imsmd:difficulty",
          {},
          leaf("imsmd:source", "LOMv1.0"),
          leaf("imsmd:value", difficultyWord(difficulty)),
        ),
      ),
    ),
    el(
      "imsqti:qtiMetadata",
      {},
      leaf("imsqti:timeDependent", "false"),
      leaf("imsqti:interactionType", INTERACTIONS[interaction]),
      ...(keys
        ? [leaf("imsqti:feedbackType", "nonadaptive"), leaf("imsqti:solutionAvailable", "true")]
        : [leaf("imsqti:solutionAvailable", "false")]),
    ),
  );
}
