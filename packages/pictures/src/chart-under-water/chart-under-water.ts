import { type ChartStages, type ChartUnderWater, chartUnderWater as figuresOf } from "@sunfathom/planner";
import type { ChartUnderWaterTexts, PictureTexts } from "@sunfathom/words";
import { type Look, type LookAsked, lookOf } from "../look.js";
import type { Picture } from "../picture.js";
import { type Block, gap, page, paragraph } from "../svg/page.js";
import { wheel } from "./wheel.js";

const STAGES = ["daylight", "balanced", "finished"] as const;

/** The chart as it is, with what there is to say of it. */
function truth(
  look: Look,
  { truth: patches, grey_count }: ChartUnderWater,
  texts: readonly [string, string],
): Block {
  const { size, margin, width, colours } = look;
  const radius = Math.min(200, Math.max(104, 0.15 * width));
  const beside = width > 620;
  const x = beside ? margin + 2 * radius + 2 * size : margin;
  const said = texts.map((text, i) =>
    paragraph({
      text,
      size,
      ...(i === 0 ? { weight: "semibold" as const } : {}),
      fill: colours.text,
      x,
      width: width - margin - x,
    }),
  );
  const height = said.reduce((sum, block) => sum + block.height, 0);
  const top = beside ? Math.max(0, radius - height / 2) : 2 * radius + 0.6 * size;
  return {
    height: beside ? Math.max(2 * radius, height) : top + height,
    at: (y) => {
      let line = y + top;
      const lines = said.flatMap((block) => {
        const drawn = block.at(line);
        line += block.height;
        return drawn;
      });
      const center = beside ? margin + radius : width / 2;
      return [...wheel({ x: center, y: y + radius, radius, patches, greyCount: grey_count }, look), ...lines];
    },
  };
}

interface Row {
  name: string;
  stages: ChartStages;
  figures: ChartUnderWater;
}

/** One row of wheels under its name. */
function row(look: Look, { name, stages, figures }: Row, texts: ChartUnderWaterTexts): Block {
  const { size, small, margin, width, colours } = look;
  const column = (width - 2 * margin) / STAGES.length;
  const radius = Math.min(170, 0.46 * column);
  const names = { daylight: texts.daylight, balanced: texts.balanced, finished: texts.finished(figures) };
  const inColumn = (text: string, i: number, fill: string): Block =>
    paragraph({ text, size: small, fill, x: margin + column * i, width: column - 0.6 * small });
  const head = paragraph({
    text: name,
    size,
    weight: "semibold",
    fill: colours.text,
    x: margin,
    width: width - 2 * margin,
  });
  const heads = STAGES.map((stage, i) => inColumn(names[stage], i, colours.quiet));
  const feet = STAGES.map((stage, i) =>
    inColumn(texts.off({ delta_e00: stages[stage].delta_e00 }), i, colours.text),
  );
  const tallest = (blocks: readonly Block[]): number => Math.max(...blocks.map(({ height }) => height));
  const wheels = head.height + tallest(heads) + 0.4 * size;
  const below = wheels + 2 * radius + 0.3 * size;
  return {
    height: below + tallest(feet) + 0.8 * size,
    at: (y) => [
      ...head.at(y),
      ...heads.flatMap((block) => block.at(y + head.height)),
      ...STAGES.flatMap((stage, i) =>
        wheel(
          {
            x: margin + column * i + radius,
            y: y + wheels + radius,
            radius,
            patches: stages[stage].patches,
            truth: figures.truth,
            greyCount: figures.grey_count,
          },
          look,
        ),
      ),
      ...feet.flatMap((block) => block.at(y + below)),
    ],
  };
}

/** The chart through the camera, without and with the filter, beside the truth, from figures. */
function drawChartUnderWater(figures: ChartUnderWater, asked: LookAsked, words: PictureTexts): string {
  const texts = words.chart_under_water;
  const look = lookOf(asked);
  const { size, headline, small, margin, width, colours } = look;
  const inner = { x: margin, width: width - 2 * margin };
  const title = texts.headline(figures, look.units);
  const note = (text: string) => paragraph({ text, size: small, fill: colours.quiet, ...inner });
  return page(look, { title, description: `${texts.description(figures, look.units)} ${words.caution}` }, [
    paragraph({ text: title, size: headline, weight: "semibold", fill: colours.text, ...inner }),
    gap(0.8 * size),
    truth(look, figures, [texts.truth, texts.reading]),
    gap(size),
    row(look, { name: texts.without, stages: figures.without, figures }, texts),
    row(look, { name: texts.filtered(figures), stages: figures.filtered, figures }, texts),
    note(texts.screen),
    note(words.caution),
  ]);
}

export const chartUnderWater: Picture<"chart-under-water"> = {
  name: "chart-under-water",
  of: "filter-choice",
  summary: "What a filter does to colours",
  description:
    "The 24-patch chart in the middle of the filmed depths as the camera makes it: at its daylight setting, with the white balance set, and finished, without and with the filter that is advised there, each beside the true colours.",
  cost: () => 10,
  drawing: (scene) => {
    const figures = figuresOf(scene);
    return (asked, words) => drawChartUnderWater(figures, asked, words);
  },
};
