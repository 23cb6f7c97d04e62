import { CAUTIONS_OF, type CautionCode, cautionsIn } from "@sunfathom/planner";
import type { Item } from "../item/item.js";
import { CATALOGUES, type Language } from "../messages/catalogue.js";
import { TEMPLATES } from "../templates/table.js";

/** What to take care of, in words. */
export interface Caution {
  code: CautionCode;
  text: string;
}

const ADVISES = new Map(TEMPLATES.map(({ id, advises = [] }) => [id, advises]));

const codesOf = ({ template }: Pick<Item, "template">) =>
  (ADVISES.get(template) ?? []).flatMap((advice) => CAUTIONS_OF[advice]);

const inWords = (codes: readonly string[], language: Language): Caution[] =>
  cautionsIn(codes).map(({ code }) => ({ code, text: CATALOGUES[language].cautions[code] }));

/** What to take care of before acting on what these questions are about; first, that none of it is a dive plan. */
export const cautionsOf = (items: readonly Pick<Item, "template">[], language: Language): Caution[] =>
  inWords(["not_a_dive_planner", ...items.flatMap(codesOf)], language);

/** The same of one question, beyond what goes for all. */
export const ownCautions = (item: Pick<Item, "template">, language: Language): Caution[] =>
  inWords(codesOf(item), language);
