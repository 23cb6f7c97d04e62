/**
 * A slate that goes under water: a plan on one side of A5, in letters of at least 14 pt, black on white with one colour. What does not
 * fit goes by its rank and is counted; no caution and none of the three numbers ever goes.
 */
import {
  type CautionCode,
  diveAdvice,
  type MountingCautionCode,
  mountedAdvice,
  type NamedFilter,
  type Scene,
} from "@sunfathom/planner";
import type { SlateTexts, TextUnits } from "@sunfathom/words";
import { type Lines, linesIn } from "../sheet/lines.js";
import { type Mark, pointsOf, type Sheet } from "../sheet/sheet.js";
import { widthOf } from "../text/measure.js";
import { PARTS, type Planned, type SlateLine, slateLines, withoutLeast } from "./slate-lines.js";

/** A5, landscape. ISO 216. */
const WIDTH = pointsOf(210);
const HEIGHT = pointsOf(148);
/** For a printer's own margin, and a hole. */
const MARGIN = pointsOf(7);
const INNER = WIDTH - 2 * MARGIN;
/** Of its letters, the largest first: the plan is as large as fits whole, and shortened at the least size alone. */
const SIZES = [18, 17, 16, 15, 14] as const;
const NUMBER_TO_TEXT = 1.7;
const BLACK = "#000000";
/** Blue is seen furthest down, where a red line would be black. */
const COLOUR = "#0b47a1";
const GAP = 5;
/** Of the box with the cautions, from its edge to its text. */
const INSET = 6;

/** One of the three numbers, with what it is. */
function numberCell([value, label]: readonly [string, string], size: number, width: number): Lines {
  const large = NUMBER_TO_TEXT * size;
  const fits = widthOf(value, large, "semibold") <= width;
  const number = linesIn(value, {
    size: fits ? large : size,
    weight: "semibold",
    fill: COLOUR,
    width,
  });
  const name = linesIn(label, { size, fill: BLACK, width });
  return {
    height: number.height + name.height,
    at: (x, y) => [...number.at(x, y), ...name.at(x, y + number.height)],
  };
}

interface Block {
  height: number;
  at: (y: number) => Mark[];
}

/** The filter as the plan's step names it. */
function filterOf({ steps, filter_kind: kind }: Planned): NamedFilter {
  for (const { code, parameters } of steps)
    if (code === "mount_filter" || code === "keep_filter" || code === "carry_filter")
      return parameters.filter;
  return { kind };
}

function numbers(planned: Planned, size: number, texts: SlateTexts, units: TextUnits): Block {
  const { remember } = planned;
  const filter = filterOf(planned);
  const width = (INNER - 2 * GAP) / 3;
  const cells = [
    texts.filter({ filter }),
    texts.first_balance({ depth_m: remember.first_balance_depth_m }, units),
    texts.starting_iso({ iso: remember.starting_iso }),
  ].map((texts) => numberCell(texts, size, width - GAP));
  return {
    height: Math.max(...cells.map(({ height }) => height)),
    at: (y) => cells.flatMap((cell, i) => cell.at(MARGIN + i * (width + GAP), y)),
  };
}

function parts(lines: readonly SlateLine[], left: number, size: number, texts: SlateTexts): Block {
  const column = Math.max(...PARTS.map((part) => widthOf(texts.parts[part], size, "semibold"))) + 8;
  const more = left === 0 ? [] : [texts.more({ count: left })];
  const rows = PARTS.map((part) => ({
    part,
    text: [
      ...lines.filter((line) => line.part === part).map(({ text }) => text),
      ...(part === "after" ? more : []),
    ].join(" "),
  })).filter(({ text }) => text !== "");
  const drawn = rows.map(({ part, text }) => ({
    name: linesIn(texts.parts[part], { size, weight: "semibold", fill: COLOUR, width: column }),
    text: linesIn(text, { size, fill: BLACK, width: INNER - column }),
  }));
  return {
    height: drawn.reduce((sum, { text }) => sum + text.height + GAP, 0),
    at: (y) => {
      let top = y;
      return drawn.flatMap(({ name, text }) => {
        const marks: Mark[] = [
          {
            kind: "line",
            from: [MARGIN, top],
            to: [WIDTH - MARGIN, top],
            pen: { stroke: COLOUR, stroke_width: 0.5 },
          },
          ...name.at(MARGIN, top + GAP / 2),
          ...text.at(MARGIN + column, top + GAP / 2),
        ];
        top += text.height + GAP;
        return marks;
      });
    },
  };
}

/** The ascent first, as it is under water. */
type Code = CautionCode | MountingCautionCode;
const inOrder = (codes: readonly Code[]): Code[] =>
  [...codes].sort((a, b) => Number(b === "ascent_first") - Number(a === "ascent_first"));

function cautions({ cautions: codes }: Planned, size: number, texts: SlateTexts): Block {
  const [first, ...others] = inOrder(codes.map(({ code }) => code)).map((code) => texts.cautions[code]);
  const width = INNER - 2 * INSET;
  const head = linesIn(first ?? "", { size, weight: "semibold", fill: BLACK, width });
  const rest = linesIn(others.join(" "), { size, fill: BLACK, width });
  const height = head.height + rest.height + INSET;
  return {
    height,
    at: (y) => [
      {
        kind: "rectangle",
        x: MARGIN,
        y,
        width: INNER,
        height,
        pen: { stroke: COLOUR, stroke_width: 1.5 },
      },
      ...head.at(MARGIN + INSET, y + INSET / 2),
      ...rest.at(MARGIN + INSET, y + INSET / 2 + head.height),
    ],
  };
}

interface Attempt {
  marks: Mark[];
  fits: boolean;
}

/** The slate with so many of its lines, in letters of one size. */
function attempt(
  answer: Planned,
  title: string,
  { lines, left, size }: { lines: readonly SlateLine[]; left: number; size: number },
  { texts, units }: { texts: SlateTexts; units: TextUnits },
): Attempt {
  const head = linesIn(title, { size, weight: "semibold", fill: BLACK, width: INNER });
  const top = numbers(answer, size, texts, units);
  const middle = parts(lines, left, size, texts);
  const bottom = cautions(answer, size, texts);
  const used = head.height + top.height + middle.height + bottom.height + 2 * GAP;
  const numbersAt = MARGIN + head.height;
  return {
    fits: used <= HEIGHT - 2 * MARGIN,
    marks: [
      ...head.at(MARGIN, MARGIN),
      ...top.at(numbersAt),
      ...middle.at(numbersAt + top.height + GAP),
      ...bottom.at(HEIGHT - MARGIN - bottom.height),
    ],
  };
}

/** @throws RangeError where numbers and cautions alone do not fit: then the texts are too long */
export function drawSlate(
  answer: Planned,
  depths: Pick<Scene, "min_depth_m" | "max_depth_m">,
  texts: SlateTexts,
  units: TextUnits = "metric",
): Sheet {
  const title = texts.title(depths, units);
  const sheet = (marks: Mark[]): Sheet => ({
    width: WIDTH,
    height: HEIGHT,
    title,
    description: texts.description(depths, units),
    marks,
  });
  const all = slateLines(answer, texts, units);
  for (const size of SIZES) {
    const whole = attempt(answer, title, { lines: all, left: 0, size }, { texts, units });
    if (whole.fits) return sheet(whole.marks);
  }
  const size = Math.min(...SIZES);
  let lines = withoutLeast(all);
  while (lines !== undefined) {
    const shorter = attempt(
      answer,
      title,
      { lines, left: all.length - lines.length, size },
      { texts, units },
    );
    if (shorter.fits) return sheet(shorter.marks);
    lines = withoutLeast(lines);
  }
  throw new RangeError("cautions and numbers leave no room on a slate");
}

const planOf = (scene: Scene): Planned =>
  scene.port_kind === undefined ? diveAdvice(scene) : mountedAdvice(scene, diveAdvice);

/**
 * The slate of a dive.
 * @throws SceneProblem as `diveAdvice` does
 */
export const slateOf = (scene: Scene, texts: SlateTexts, units?: TextUnits): Sheet =>
  drawSlate(planOf(scene), scene, texts, units);
