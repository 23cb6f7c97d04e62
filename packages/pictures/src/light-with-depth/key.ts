import { LIGHTS, type LightOverDepth } from "@sunfathom/planner";
import type { LightWithDepthTexts } from "@sunfathom/words";
import type { Look } from "../look.js";
import { el } from "../svg/element.js";
import { keyed } from "../svg/keyed.js";
import { letterAt } from "../svg/letter.js";
import { type Block, paragraph } from "../svg/page.js";
import { widthOf } from "../text/measure.js";
import { dashes } from "./curves.js";

/** What the curves are, with what is left at the deepest depth. */
export function keyOfCurves(look: Look, figures: LightOverDepth, texts: LightWithDepthTexts): Block {
  const { size, margin, width, colours, stroke } = look;
  const entries = LIGHTS.map((light) => ({
    light,
    text: `${texts.names[light]} ${texts.percent({ percent: figures.left_at_max_percent[light].likely })}`,
  }));
  const sample = 2.6 * size;
  const inner = width - 2 * margin;
  const widest = Math.max(...entries.map(({ text }) => sample + widthOf(text, size) + 1.6 * size));
  const columns = inner >= 4 * widest ? 4 : inner >= 2 * widest ? 2 : 1;
  const column = Math.min(inner / columns, widest + 2 * size);
  const row = 1.5 * size;
  const head = paragraph({
    text: texts.left_at({ depth_m: figures.max_depth_m }, look.units),
    size,
    weight: "semibold",
    fill: colours.text,
    x: margin,
    width: inner,
  });
  return {
    height: head.height + row * Math.ceil(entries.length / columns),
    at: (y) => [
      ...head.at(y),
      ...entries.flatMap(({ light, text }, i) => {
        const x = margin + column * (i % columns);
        const base = y + head.height + row * Math.floor(i / columns) + size;
        return [
          el("line", {
            x1: x,
            x2: x + 2.1 * size,
            y1: base - 0.35 * size,
            y2: base - 0.35 * size,
            stroke: colours.lights[light],
            "stroke-width": stroke,
            ...dashes(light, look),
          }),
          el("text", { x: x + sample, y: base, "font-size": size, fill: colours.text }, text),
        ];
      }),
    ],
  };
}

/** What the marks mean. */
export function keyOfMarks(look: Look, figures: LightOverDepth, texts: LightWithDepthTexts): Block[] {
  const { colours, size, stroke, units } = look;
  return [
    keyed(look, texts.tenth(figures.red_to_tenth_depth_m, units), (x, y) =>
      letterAt("A", { x, y }, look, look.colours.lights.red),
    ),
    keyed(look, texts.hundredth(figures.red_to_hundredth_depth_m, units), (x, y) =>
      letterAt("B", { x, y }, look, look.colours.lights.red),
    ),
    keyed(look, texts.dive(figures, units), (x, y) => [
      el("rect", {
        x: x - size,
        y: y - 0.5 * size,
        width: 2 * size,
        height: size,
        fill: colours.accent,
        "fill-opacity": 0.12,
      }),
      el("rect", { x: x - size, y: y - 0.5 * size, width: 2 * stroke, height: size, fill: colours.accent }),
    ]),
  ];
}
