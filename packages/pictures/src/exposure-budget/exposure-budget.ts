import { type ExposureBudget, exposureBudget as figuresOf, LOSSES } from "@sunfathom/planner";
import type { ExposureBudgetTexts, PictureTexts } from "@sunfathom/words";
import { scaleLinear } from "d3-scale";
import { type Look, type LookAsked, lookOf } from "../look.js";
import type { Picture } from "../picture.js";
import { type Element, el } from "../svg/element.js";
import { type Block, gap, page, paragraph } from "../svg/page.js";
import { sayingsOf } from "../svg/sayings.js";
import { widthOf } from "../text/measure.js";

interface Bar {
  /** Stops that were lost before. */
  from: number;
  stops: number;
  label: string;
  said: string;
}

/** Bars of each place where light is lost, one a depth, and of all together. */
function barsOf({ depths }: ExposureBudget, texts: ExposureBudgetTexts, { units }: Look) {
  const before = depths.map(() => 0);
  const places = LOSSES.filter((at) => depths.some(({ losses }) => losses.some((loss) => loss.at === at)));
  const rows = places.map((place) => ({
    name: texts.losses[place],
    bars: depths.map(({ depth_m, losses }, d): Bar => {
      const stops = losses.find(({ at }) => at === place)?.stops ?? { low: 0, likely: 0, high: 0 };
      const from = before[d] ?? 0;
      before[d] = from + stops.likely;
      return {
        from,
        stops: stops.likely,
        label: texts.at_depth({ depth_m }, units),
        said: texts.stops(stops),
      };
    }),
  }));
  const totals = depths.flatMap(({ depth_m, total }): Bar[] =>
    total === undefined
      ? []
      : [
          {
            from: 0,
            stops: total.likely,
            label: texts.at_depth({ depth_m }, units),
            said: texts.stops(total),
          },
        ],
  );
  return totals.length === 0 ? rows : [...rows, { name: texts.total, bars: totals }];
}

/** Bars, the next beginning where the one before ends. */
function chart(look: Look, figures: ExposureBudget, texts: ExposureBudgetTexts): Block {
  const { width, margin, size, small, colours, stroke } = look;
  const rows = barsOf(figures, texts, look);
  const bars = rows.flatMap((row) => row.bars);
  const left = margin + Math.max(...bars.map(({ label }) => widthOf(label, small))) + 0.8 * small;
  const widest = Math.max(...bars.map(({ said }) => widthOf(said, small)));
  const ends = bars.flatMap(({ from, stops }) => [from, from + stops]);
  const [least, most] = [Math.min(0, ...ends), Math.max(1, ...ends)];
  // What a bar says stands to its right.
  const x = scaleLinear([least, most], [left, width - margin - widest - 0.6 * small]);
  const bar = 1.35 * small;
  const heads = rows.map(({ name }) =>
    paragraph({
      text: name,
      size,
      weight: "semibold",
      fill: colours.text,
      x: margin,
      width: width - 2 * margin,
    }),
  );
  const rowHeight = (r: number): number =>
    (heads[r]?.height ?? 0) + (rows[r]?.bars.length ?? 0) * 1.25 * bar + 0.55 * size;
  const heights = rows.map((_, r) => rowHeight(r));
  return {
    height: heights.reduce((sum, height) => sum + height, 0),
    at: (y0) => {
      let top = y0;
      const drawn: Element[] = [];
      for (const [r, row] of rows.entries()) {
        drawn.push(...(heads[r]?.at(top) ?? []));
        for (const [b, { from, stops, label, said }] of row.bars.entries()) {
          const y = top + (heads[r]?.height ?? 0) + b * 1.25 * bar + 0.25 * size;
          const [start, end] = [x(Math.min(from, from + stops)), x(Math.max(from, from + stops))];
          const isGain = stops < 0;
          drawn.push(
            el("line", { x1: left, x2: end, y1: y + bar / 2, y2: y + bar / 2, stroke: colours.grid }),
            el("rect", {
              x: start,
              y,
              width: Math.max(stroke, end - start),
              height: bar,
              // Deeper ones are filled, shallower ones hollow, gains dashed: told apart without their colours.
              fill: b === row.bars.length - 1 && !isGain ? colours.lights.blue : colours.ground,
              stroke: colours.lights.blue,
              "stroke-width": 0.7 * stroke,
              ...(isGain ? { "stroke-dasharray": `${2 * stroke} ${stroke}` } : {}),
            }),
            el(
              "text",
              {
                x: left - 0.8 * small,
                y: y + bar / 2 + 0.36 * small,
                "text-anchor": "end",
                "font-size": small,
                fill: colours.quiet,
              },
              label,
            ),
            el(
              "text",
              { x: end + 0.6 * small, y: y + bar / 2 + 0.36 * small, "font-size": small, fill: colours.text },
              said,
            ),
          );
        }
        top += heights[r] ?? 0;
      }
      return drawn;
    },
  };
}

function drawExposureBudget(figures: ExposureBudget, asked: LookAsked, words: PictureTexts): string {
  const texts = words.exposure_budget;
  const look = lookOf(asked);
  const { size, units } = look;
  const say = sayingsOf(look);
  const title = texts.headline(figures, units);
  const dark = figures.depths.every(({ total }) => total === undefined) ? [texts.no_daylight] : [];
  const description = [texts.description(figures, units), ...dark, words.caution].join(" ");
  return page(look, { title, description }, [
    say.title(title),
    gap(0.4 * size),
    ...dark.map(say.text),
    say.text(texts.reading),
    gap(0.8 * size),
    chart(look, figures, texts),
    gap(0.4 * size),
    ...figures.depths.map((depth) => say.text(texts.set(depth, units))),
    gap(0.5 * size),
    say.note(words.caution),
  ]);
}

export const exposureBudget: Picture<"exposure-budget"> = {
  name: "exposure-budget",
  of: "exposure-loss",
  summary: "Where light is lost, stop by stop",
  description:
    "The stops that are lost at the surface, on the way down, on the way to the camera, at the port and in the filter on the lens, at the shallowest filmed depth and at the deepest, each bar beginning where the one before ends; and what to set there.",
  cost: () => 15,
  drawing: (scene) => {
    const figures = figuresOf(scene);
    return (asked, words) => drawExposureBudget(figures, asked, words);
  },
};
