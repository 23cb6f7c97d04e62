import { mixedLightMap as figuresOf, type MixedLightMap, type MixedLightVerdict } from "@sunfathom/planner";
import type { MixedLightMapTexts, PictureTexts } from "@sunfathom/words";
import { type Look, type LookAsked, lookOf } from "../look.js";
import type { Picture } from "../picture.js";
import { el } from "../svg/element.js";
import { keyed } from "../svg/keyed.js";
import { letterAt } from "../svg/letter.js";
import { type Block, gap, page } from "../svg/page.js";
import { sayingsOf } from "../svg/sayings.js";
import { field, filled, letterOf } from "./field.js";

const ORDER: readonly MixedLightVerdict[] = [
  "lamps_lead",
  "lights_fight",
  "daylight_leads",
  "lamps_only",
  "daylight_only",
];
/** Ways out that are told: the rest stand in the answer. */
const MOST_WAYS = 2;

/** What each field of the map means, by its letter, fill and hatching. */
function keyOf(look: Look, { verdicts }: MixedLightMap, texts: MixedLightMapTexts): Block[] {
  const { size } = look;
  const met = new Set(verdicts.flat());
  return ORDER.filter((verdict) => met.has(verdict)).map((verdict) =>
    keyed(look, texts.verdicts[verdict], (x, y) => [
      ...filled(verdict, { x: x - size, y: y - 0.75 * size, width: 2 * size, height: 1.5 * size }, look),
      ...letterAt(letterOf(verdict), { x, y }, look, look.colours.text),
    ]),
  );
}

function drawMixedLightMap(figures: MixedLightMap, asked: LookAsked, words: PictureTexts): string {
  const texts = words.mixed_light_map;
  const look = lookOf(asked);
  const { size, colours, stroke, units } = look;
  const say = sayingsOf(look);
  const title = texts.headline(figures, units);
  const assumed = figures.is_assumed ? texts.assumed(figures, units) : undefined;
  const ways = figures.ways_out.slice(0, MOST_WAYS);
  const cautions = [texts.cautions, words.caution];
  const description = [texts.description(figures, units), assumed, ...cautions]
    .filter((part) => part !== undefined)
    .join(" ");
  return page(look, { title, description }, [
    say.title(title),
    ...(assumed === undefined ? [] : [gap(0.3 * size), say.text(assumed)]),
    gap(0.8 * size),
    field(look, figures, texts),
    gap(0.6 * size),
    ...keyOf(look, figures, texts),
    keyed(look, texts.own(figures, units), (x, y) => [
      el("line", {
        x1: x,
        x2: x,
        y1: y - 0.7 * size,
        y2: y + 0.7 * size,
        stroke: colours.text,
        "stroke-width": 2 * stroke,
      }),
    ]),
    ...(ways.length === 0
      ? []
      : [
          gap(0.5 * size),
          say.head(texts.ways(figures, units)),
          ...ways.map((way) => say.text(texts.way(way, units))),
        ]),
    gap(0.6 * size),
    ...cautions.map((caution) => say.note(caution)),
  ]);
}

export const mixedLightMap: Picture<"mixed-light-map"> = {
  name: "mixed-light-map",
  of: "mixed-light",
  summary: "Which light leads, by depth and by the distance of the video lights",
  description:
    "Where video lights lead, where daylight leads and where the two fight, over depth and over the distance from the video lights to the subject, with the distance that the scene has and the ways out. Where a scene has no video lights, for two usual ones.",
  cost: () => 15,
  drawing: (scene) => {
    const figures = figuresOf(scene);
    return (asked, words) => drawMixedLightMap(figures, asked, words);
  },
};
