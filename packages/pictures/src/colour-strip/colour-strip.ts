import {
  type ColourStrip,
  colourStrip as figuresOf,
  STRIP_PATCHES,
  type StripColumn,
} from "@sunfathom/planner";
import type { ColourStripTexts, PictureTexts } from "@sunfathom/words";
import { hexOf } from "../colour/srgb.js";
import { type Look, type LookAsked, lookOf } from "../look.js";
import type { Picture } from "../picture.js";
import { diveBar, diveKey } from "../svg/dive-mark.js";
import { type Element, el } from "../svg/element.js";
import { type Block, gap, page, paragraph } from "../svg/page.js";
import { sayingsOf } from "../svg/sayings.js";
import { widthOf } from "../text/measure.js";

/** Depths along the left edge, shares of the deepest. */
const MARKS = [0, 0.25, 0.5, 0.75, 1];

/** Three strips side by side, depth going down, as it does. */
function strips(look: Look, figures: ColourStrip, texts: ColourStripTexts): Block {
  const { width, margin, size, small, colours, units } = look;
  const columns: { strip: StripColumn; name: string }[] = [
    { strip: figures.daylight, name: texts.daylight },
    { strip: figures.balanced, name: texts.balanced },
    { strip: figures.filtered, name: texts.filtered(figures) },
  ];
  const labels = [
    texts.truth,
    ...MARKS.map((share) => texts.at_depth({ depth_m: share * figures.max_depth_m }, units)),
  ];
  const left = margin + Math.max(...labels.map((label) => widthOf(label, small))) + 1.2 * small;
  const between = Math.max(10, width / 50);
  const each = (width - margin - left - 2 * between) / 3;
  const placeOf = (c: number) => ({ x: left + c * (each + between), width: each });
  const heads = columns.map(({ name }, c) =>
    paragraph({ text: name, size: small, weight: "semibold", fill: colours.text, ...placeOf(c) }),
  );
  const feet = columns.map(({ strip }, c) =>
    paragraph({ text: texts.off(strip), size: small, fill: colours.text, ...placeOf(c) }),
  );
  const head = Math.max(...heads.map(({ height }) => height)) + 0.4 * size;
  const names = 1.7 * small;
  const truth = 2.2 * size;
  const height = Math.min(620, Math.max(280, 0.5 * width));
  const patch = each / STRIP_PATCHES.length;
  // Under a narrow strip, the key alone names the patches.
  const fitNames = STRIP_PATCHES.every((one) => widthOf(texts.names[one], small) < 0.95 * patch);
  const above = head + (fitNames ? names : 0);
  return {
    height: above + truth + height + 0.4 * size + Math.max(...feet.map((foot) => foot.height)),
    at: (y0) => {
      const top = y0 + above + truth;
      const rowHeight = height / figures.depths_m.length;
      const yOf = (depth_m: number): number => top + (height * depth_m) / figures.max_depth_m;
      const column = ({ strip }: (typeof columns)[number], c: number): Element[] => {
        const { x } = placeOf(c);
        const cell = (fill: string, p: number, y: number, tall: number): Element =>
          el("rect", { x: x + p * patch, y, width: patch, height: tall, fill });
        return [
          ...STRIP_PATCHES.map((one, p) => cell(hexOf(figures.truth[one]), p, top - truth, 0.8 * truth)),
          ...strip.colours.flatMap((row, r) =>
            // A little more than a row, so that no seam shows.
            STRIP_PATCHES.map((one, p) =>
              cell(
                hexOf(row[one]),
                p,
                top + r * rowHeight,
                rowHeight + (r + 1 < strip.colours.length ? 0.6 : 0),
              ),
            ),
          ),
        ];
      };
      return [
        ...heads.flatMap((block) => block.at(y0)),
        ...(fitNames
          ? columns.flatMap((_, c) =>
              STRIP_PATCHES.map((one, p) =>
                el(
                  "text",
                  {
                    x: placeOf(c).x + (p + 0.5) * patch,
                    y: y0 + head + small,
                    "text-anchor": "middle",
                    "font-size": small,
                    fill: colours.quiet,
                  },
                  texts.names[one],
                ),
              ),
            )
          : []),
        ...columns.flatMap(column),
        el(
          "g",
          { "font-size": small, fill: colours.quiet, "text-anchor": "end" },
          el("text", { x: left - 1 * small, y: top - 0.6 * truth + 0.36 * small }, texts.truth),
          ...MARKS.map((share) =>
            el(
              "text",
              {
                x: left - 1 * small,
                y: yOf(share * figures.max_depth_m) + (share === 0 ? 0.74 : share === 1 ? 0 : 0.36) * small,
              },
              texts.at_depth({ depth_m: share * figures.max_depth_m }, units),
            ),
          ),
        ),
        diveBar({ x: left, top: yOf(figures.min_depth_m), bottom: yOf(figures.max_depth_m) }, look),
        ...feet.flatMap((block) => block.at(top + height + 0.4 * size)),
      ];
    },
  };
}

function drawColourStrip(figures: ColourStrip, asked: LookAsked, words: PictureTexts): string {
  const texts = words.colour_strip;
  const look = lookOf(asked);
  const { size, units } = look;
  const say = sayingsOf(look);
  const title = texts.headline(figures, units);
  return page(look, { title, description: `${texts.description(figures, units)} ${words.caution}` }, [
    say.title(title),
    gap(0.4 * size),
    say.text(texts.reading),
    gap(0.8 * size),
    strips(look, figures, texts),
    gap(0.6 * size),
    diveKey(look, texts.dive(figures, units)),
    gap(0.4 * size),
    say.note(texts.screen),
    say.note(words.caution),
  ]);
}

export const colourStrip: Picture<"colour-strip"> = {
  name: "colour-strip",
  of: "filter-choice",
  summary: "How colours fade on the way down",
  description:
    "Grey, red and skin from the surface to the deepest filmed depth as the camera makes them: at its daylight setting, with the white balance set at each depth, and with the filter that is advised as well, each under the true colours.",
  cost: () => 70,
  drawing: (scene) => {
    const figures = figuresOf(scene);
    return (asked, words) => drawColourStrip(figures, asked, words);
  },
};
