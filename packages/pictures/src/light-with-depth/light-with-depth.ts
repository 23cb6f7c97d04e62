import { type LightOverDepth, lightOverDepth } from "@sunfathom/planner";
import type { PictureTexts } from "@sunfathom/words";
import { type LookAsked, lookOf } from "../look.js";
import type { Picture } from "../picture.js";
import { gap, page, paragraph } from "../svg/page.js";
import { curves } from "./curves.js";
import { keyOfCurves, keyOfMarks } from "./key.js";

/** Red, green, blue and the eye over depth, from figures. */
export function drawLightWithDepth(figures: LightOverDepth, asked: LookAsked, words: PictureTexts): string {
  const texts = words.light_with_depth;
  const look = lookOf(asked);
  const { size, headline, small, margin, width, colours } = look;
  const inner = { x: margin, width: width - 2 * margin };
  const title = texts.headline({ red_to_tenth_depth_m: figures.red_to_tenth_depth_m.likely }, look.units);
  const note = (text: string) => paragraph({ text, size: small, fill: colours.quiet, ...inner });
  const description = [
    texts.description({ ...figures, end_m: figures.depths_m.at(-1) ?? 0 }, look.units),
    ...(figures.has_daylight ? [] : [texts.no_daylight]),
    words.caution,
  ].join(" ");
  return page(look, { title, description }, [
    paragraph({ text: title, size: headline, weight: "semibold", fill: colours.text, ...inner }),
    ...(figures.has_daylight ? [] : [note(texts.no_daylight)]),
    gap(0.5 * size),
    curves(look, figures, texts),
    gap(0.6 * size),
    keyOfCurves(look, figures, texts),
    gap(0.5 * size),
    ...keyOfMarks(look, figures, texts),
    gap(0.5 * size),
    note(`${texts.bands} ${texts.shaded}`),
    note(words.caution),
  ]);
}

export const lightWithDepth: Picture<"light-with-depth"> = {
  name: "light-with-depth",
  of: "attenuation",
  summary: "How the light fades on the way down",
  description:
    "Red, green, blue and light as the eye sees it, over depth, with the bounds between which they run 8 times in 10, the depths at which red is down to a tenth and a hundredth, and the depths that are filmed.",
  cost: () => 20,
  drawing: (scene) => {
    const figures = lightOverDepth(scene);
    return (asked, words) => drawLightWithDepth(figures, asked, words);
  },
};
