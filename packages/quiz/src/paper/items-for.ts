import { type Aim, drawAim, LENGTH_RULES, type LengthRule, standsByLength } from "../item/aim.js";
import { isFair } from "../item/fair.js";
import { finish } from "../item/finish.js";
import type { Item, Level, Units } from "../item/item.js";
import type { Maker, Template } from "../item/template.js";
import { CATALOGUES, type Language } from "../messages/catalogue.js";
import { showIn } from "../messages/show.js";
import { QuizProblem } from "../quiz-problem.js";
import { Draw } from "../random/draw.js";
import { TEMPLATES } from "../templates/table.js";

export const MOST_ITEMS = 200;

export interface PaperRequest {
  /** Any text; the same seed gives the same paper with the same model version. */
  seed: string;
  level: Level;
  /** 1 to 200. */
  count: number;
  /** Ids of the templates to draw from; all of the level when absent. */
  templates?: readonly string[];
  units: Units;
  language: Language;
}

/** Draws without anything new after which a turn is over, and further aims after which a template counts as used up. */
const PATIENCE = 100;
const FURTHER_AIMS = 3;

/**
 * A paper of questions with their keys, no two alike. Templates take turns, so that a paper covers the job evenly.
 * @throws QuizProblem where the count is out of range, a template is unknown or not for this level, or the templates asked for
 * do not hold so many different questions.
 */
export function itemsFor(request: PaperRequest): Item[] {
  const { seed, level, count, units, language } = request;
  if (!Number.isInteger(count) || count < 1 || count > MOST_ITEMS) {
    throw new QuizProblem("count_out_of_range", `A paper has 1 to ${MOST_ITEMS} questions.`, "count");
  }
  const maker = { level, say: CATALOGUES[language], show: showIn(units) };
  const seen = new Set<string>();
  const items: Item[] = [];
  let rest = templatesOf(request);
  for (let round = 0; items.length < count && rest.length > 0; round++) {
    const turn = new Draw(`${seed} ${level} round ${round}`).shuffle(rest).slice(0, count - items.length);
    const usedUp = new Set<Template>();
    for (const template of turn) {
      const item = nextItem(template, `${seed} ${level} ${round}`, maker, seen, `q${items.length + 1}`);
      if (item) items.push(item);
      else usedUp.add(template);
    }
    rest = rest.filter((template) => !usedUp.has(template));
  }
  if (items.length < count) {
    throw new QuizProblem(
      "too_few_questions",
      `These templates hold only ${items.length} different questions at this level. Ask for fewer, or for more templates.`,
      "count",
    );
  }
  return items;
}

/** The next question of a template that the paper does not have yet; undefined when none turns up. */
function nextItem(
  template: Template,
  seed: string,
  language: Omit<Maker, "draw" | "aim">,
  seen: Set<string>,
  id: string,
): Item | undefined {
  const aims = new Draw(`${seed} ${template.id} aim`);
  const first = drawAim(aims);
  // Another aim only where the first is used up, as in a paper that asks a template for most of what it holds; then any length.
  const turns: { aim: Aim; rule?: LengthRule }[] = [
    ...LENGTH_RULES.map((rule) => ({ aim: first, rule })),
    { aim: first },
    ...Array.from({ length: FURTHER_AIMS }, () => ({ aim: drawAim(aims) })),
  ];
  for (const [turn, { aim, rule }] of turns.entries()) {
    for (let attempt = 0; attempt < PATIENCE; attempt++) {
      const draw = new Draw(`${seed} ${template.id} ${turn} ${attempt}`);
      const maker = { ...language, draw, aim };
      const draft = template.make(maker);
      if (!draft || !isFair(draft)) continue;
      if (rule !== undefined && !standsByLength(draft.answer, aim, rule)) continue;
      const same = `${template.id} ${JSON.stringify(draft.given)}`;
      if (seen.has(same)) continue;
      seen.add(same);
      return finish(template, draft, maker, id);
    }
  }
  return undefined;
}

function templatesOf({ templates, level }: PaperRequest): Template[] {
  const forLevel = TEMPLATES.filter(({ levels }) => levels.includes(level));
  if (!templates) return forLevel;
  return [...new Set(templates)].map((id, i) => {
    const known = TEMPLATES.find((template) => template.id === id);
    const field = `templates/${i}`;
    if (!known)
      throw new QuizProblem("template_unknown", `There is no template ${JSON.stringify(id)}.`, field);
    if (!known.levels.includes(level)) {
      const levels = known.levels.join(", ");
      throw new QuizProblem(
        "template_not_at_level",
        `${id} is not asked at this level, only at: ${levels}.`,
        field,
      );
    }
    return known;
  });
}
