import { CAUTIONS_OF, type Caution, cautionsIn } from "@sunfathom/planner";
import type { Item } from "../item/item.js";
import { TEMPLATES } from "../templates/table.js";

const ADVISES = new Map(TEMPLATES.map(({ id, advises = [] }) => [id, advises]));

const codesOf = ({ template }: Pick<Item, "template">) =>
  (ADVISES.get(template) ?? []).flatMap((advice) => CAUTIONS_OF[advice]);

/** What to take care of before acting on what these questions are about; first, that none of it is a dive plan. */
export const cautionsOf = (items: readonly Pick<Item, "template">[]): Caution[] =>
  cautionsIn(["not_a_dive_planner", ...items.flatMap(codesOf)]);

/** The same of one question, beyond what goes for all. */
export const ownCautions = (item: Pick<Item, "template">): Caution[] => cautionsIn(codesOf(item));
