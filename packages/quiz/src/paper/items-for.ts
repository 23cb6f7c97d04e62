import { checkpoint } from "@sunfathom/planner";
import { drawAim, LENGTH_RULES, type LengthRule, standsByLength } from "../item/aim.js";
import type { Draft } from "../item/draft.js";
import { isFair } from "../item/fair.js";
import { fingerprintOf } from "../item/fingerprint.js";
import { finish } from "../item/finish.js";
import type { Item, Level, Origin, Topic, Units } from "../item/item.js";
import type { Maker, Template } from "../item/template.js";
import { CATALOGUES, LANGUAGES, type Language } from "../messages/catalogue.js";
import { QuizProblem } from "../quiz-problem.js";
import { Draw } from "../random/draw.js";
import { TEMPLATES } from "../templates/table.js";

export const MOST_ITEMS = 200;

export interface PaperRequest {
  /** Any text; the same seed gives the same paper with the same model version and texts, in whichever language it is said. */
  seed: string;
  level: Level;
  /** 1 to 200. */
  count: number;
  /** Ids of the templates to draw from; all of the level when absent. */
  templates?: readonly string[];
  /** What they are about; everything when absent. */
  topics?: readonly Topic[];
  /** Fingerprints of questions that are not to be asked again. */
  avoid?: readonly string[];
  units: Units;
  language: Language;
}

/** Draws without anything new after which a turn is over. */
const PATIENCE = 100;
/**
 * What is asked of lengths, turn by turn; after the last one a template counts as used up. Any length does where nothing else is
 * left, as in a paper that asks a template for most of what it holds, with the aim that was drawn first and then with others.
 */
const TURNS: readonly (LengthRule | undefined)[] = [
  ...LENGTH_RULES,
  undefined,
  undefined,
  undefined,
  undefined,
];

/**
 * A paper of questions with their keys, no two alike. Templates take turns, so that a paper covers the job evenly.
 * @throws QuizProblem where the count is out of range, a template is unknown or not for this level, or the templates asked for
 * do not hold so many different questions.
 */
export function itemsFor(request: PaperRequest): Item[] {
  const { seed, level, count } = request;
  if (!Number.isInteger(count) || count < 1 || count > MOST_ITEMS) {
    throw new QuizProblem({ code: "count_out_of_range", parameters: { most: MOST_ITEMS } }, "count");
  }
  const makers = everyLanguage(request);
  const seen = new Set<string>(request.avoid);
  const items: Item[] = [];
  let rest = templatesOf(request);
  for (let round = 0; items.length < count && rest.length > 0; round++) {
    const turn = new Draw(`${seed} ${level} round ${round}`).shuffle(rest).slice(0, count - items.length);
    const usedUp = new Set<Template>();
    for (const template of turn) {
      const at = { id: `q${items.length + 1}`, round };
      const item = nextItem(template, { request, makers, seen }, at);
      if (item) items.push(item);
      else usedUp.add(template);
    }
    rest = rest.filter((template) => !usedUp.has(template));
  }
  if (items.length < count) {
    throw new QuizProblem({ code: "too_few_questions", parameters: { found: items.length } }, "count");
  }
  return items;
}

/** Texts and numbers in the language and units of a paper. */
function wordsOf({ language, units }: Pick<PaperRequest, "language" | "units">): Pick<Maker, "say" | "show"> {
  const say = CATALOGUES[language];
  return { say, show: say.show(units) };
}

type Words = Omit<Maker, "draw" | "aim">;

/** A paper's own language first, and then the others. */
function everyLanguage({ level, language, units }: PaperRequest): readonly [Words, ...Words[]] {
  const others = LANGUAGES.filter((other) => other !== language);
  return [
    { level, ...wordsOf({ language, units }) },
    ...others.map((other) => ({ level, ...wordsOf({ language: other, units }) })),
  ];
}

interface Wanted {
  request: Source;
  /** Of every language, the paper's own first. */
  makers: readonly [Words, ...Words[]];
  /** What the paper asks already. */
  seen: Set<string>;
}

/**
 * The next question of a template that the paper does not have yet; undefined when none turns up. It is taken where it is fair in
 * every language: so a seed asks the same in each of them, and in none does the length of a text tell the answer.
 */
function nextItem(
  template: Template,
  { request, makers, seen }: Wanted,
  { id, round }: { id: string; round: number },
): Item | undefined {
  for (const [turn, rule] of TURNS.entries()) {
    for (let attempt = 0; attempt < PATIENCE; attempt++) {
      // Not every question asks the model, and a template that is used up tries many.
      checkpoint();
      const origin = { round, turn, attempt };
      const [own, ...others] = makers;
      const drawn = fairAt(template, { request, words: own, rule }, origin);
      if (drawn === undefined) continue;
      const told = [drawn.draft];
      for (const words of others) {
        const other = fairAt(template, { request, words, rule }, origin);
        if (other === undefined) break;
        told.push(other.draft);
      }
      if (told.length < makers.length) continue;
      const { maker, draft } = drawn;
      // Alike is what asks the same, and what reads the same though it was drawn otherwise.
      const alike = [fingerprintOf(template, draft), ...told.map(readsAs)];
      if (alike.some((same) => seen.has(same))) continue;
      for (const same of alike) seen.add(same);
      return finish(template, draft, maker, { id, origin });
    }
  }
  return undefined;
}

/** What a template draws at one place of a seed, where that is fair in a language. */
function fairAt(
  template: Template,
  { request, words, rule }: { request: Source; words: Words; rule: LengthRule | undefined },
  origin: Origin,
): { maker: Maker; draft: Draft } | undefined {
  const { maker, draft } = drawnAt(template, request, words, origin);
  if (!draft || !isFair(draft)) return undefined;
  return rule === undefined || standsByLength(draft.answer, maker.aim, rule) ? { maker, draft } : undefined;
}

/** What learners read, in whatever order its entries are shown. */
function readsAs({ stem, answer }: Draft): string {
  switch (answer.interaction) {
    case "single_choice":
    case "multiple_choice":
      return JSON.stringify([stem, ...answer.options.map(({ text }) => text).sort()]);
    case "ordering":
      return JSON.stringify([stem, ...answer.entries.map(({ text }) => text).sort()]);
    case "matching":
      return JSON.stringify([stem, ...answer.pairs.map(({ left }) => left).sort()]);
    case "numeric":
      return stem;
  }
}

type Source = Pick<PaperRequest, "seed" | "level">;

/** What a template draws at one place of a seed. */
function drawnAt(
  template: Template,
  { seed, level }: Source,
  words: Words,
  { round, turn, attempt }: Origin,
): { maker: Maker; draft: Draft | undefined } {
  const own = `${seed} ${level} ${round} ${template.id}`;
  // One aim as long as lengths are ruled: another would favour what is found easily.
  const aim = drawAim(new Draw(`${own} aim ${Math.max(0, turn - LENGTH_RULES.length)}`));
  const maker = { ...words, draw: new Draw(`${own} ${turn} ${attempt}`), aim };
  return { maker, draft: template.make(maker) };
}

/**
 * The questions of a paper made again, each from where it was found. So a paper stays what it was when a text is mended, though
 * the lengths of texts have a say in what is drawn.
 * @returns undefined where they are not as many as asked for, or one is no longer made there
 */
export function itemsAgain(
  request: PaperRequest,
  found: readonly { template: string; origin: Origin }[],
): Item[] | undefined {
  const { level } = request;
  if (found.length !== request.count) return undefined;
  const words = { level, ...wordsOf(request) };
  const items: Item[] = [];
  for (const [i, { template: id, origin }] of found.entries()) {
    const template = TEMPLATES.find((known) => known.id === id);
    if (template === undefined) return undefined;
    const { maker, draft } = drawnAt(template, request, words, origin);
    if (draft === undefined) return undefined;
    items.push(finish(template, draft, maker, { id: `q${i + 1}`, origin }));
  }
  return items;
}

function templatesOf({ templates, topics, level }: PaperRequest): Template[] {
  const about = ({ topic }: Template): boolean => topics === undefined || topics.includes(topic);
  const forLevel = TEMPLATES.filter(({ levels }) => levels.includes(level));
  return (templates === undefined ? forLevel : named(templates, level)).filter(about);
}

function named(templates: readonly string[], level: Level): Template[] {
  return [...new Set(templates)].map((id, i) => {
    const known = TEMPLATES.find((template) => template.id === id);
    const field = `templates/${i}`;
    if (!known) throw new QuizProblem({ code: "template_unknown", parameters: { template: id } }, field);
    if (!known.levels.includes(level)) {
      const parameters = { template: id, levels: known.levels };
      throw new QuizProblem({ code: "template_not_at_level", parameters }, field);
    }
    return known;
  });
}
