/** A chart of curves, as pictures of questions have them: axes, grid, and each curve with its name. */
import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";
import type { Catalogue } from "../messages/catalogue.js";
import { type Element, el, text, xml } from "../xml/xml.js";

const WIDTH = 480;
const HEIGHT = 280;
const LEFT = 56;
const RIGHT = 16;
const TOP = 16;
const BOTTOM = 48;
/** Told apart by their dashes, too, for those who do not tell colours. */
const STYLES = [
  { stroke: "#a3291f", dash: "" },
  { stroke: "#1d6b35", dash: "8 4" },
  { stroke: "#1f5f8b", dash: "2 3" },
] as const;

interface Axis {
  from: number;
  to: number;
  ticks: readonly number[];
  label: string;
}

interface Curve {
  /** Absent where the curve is the only one. */
  name?: string;
  points: readonly (readonly [x: number, y: number])[];
}

export interface Chart {
  title: string;
  alt: string;
  x: Axis;
  y: Axis;
  curves: readonly Curve[];
}

/** What a picture takes of the words of its paper. */
type Words = Pick<Catalogue, "language" | "show">;

const one = (value: number): string => value.toFixed(1);

interface At {
  x: number;
  y: number;
  anchor: string;
  turn?: boolean;
}
const label = ({ x, y, anchor, turn }: At, content: string): Element =>
  el(
    "text",
    {
      x: one(x),
      y: one(y),
      "text-anchor": anchor,
      ...(turn ? { transform: `rotate(-90 ${one(x)} ${one(y)})` } : {}),
    },
    text(content),
  );

/** A chart as a complete SVG document. */
export function chartSvg({ title, alt, x: across, y: up, curves }: Chart, { language, show }: Words): string {
  const { number } = show("metric");
  const written = (value: number): string => number(value, 6);
  const x = scaleLinear([across.from, across.to], [LEFT, WIDTH - RIGHT]);
  const y = scaleLinear([up.from, up.to], [HEIGHT - BOTTOM, TOP]);
  const drawn = curves.flatMap(({ points }, i) => {
    const path = line<readonly [number, number]>(
      ([at]) => x(at),
      ([, value]) => y(value),
    ).digits(1)([...points]);
    const { stroke, dash } = STYLES[i % STYLES.length] ?? STYLES[0];
    return [
      el("path", {
        d: path ?? "",
        fill: "none",
        stroke,
        "stroke-width": 2,
        ...(dash === "" ? {} : { "stroke-dasharray": dash }),
      }),
    ];
  });
  const names = curves.flatMap(({ name }, i) => {
    if (name === undefined) return [];
    const { stroke, dash } = STYLES[i % STYLES.length] ?? STYLES[0];
    const at = { x: WIDTH - RIGHT - 8, y: TOP + 16 + 16 * i };
    return [
      el("line", {
        x1: at.x - 32,
        x2: at.x,
        y1: at.y - 4,
        y2: at.y - 4,
        stroke,
        "stroke-width": 2,
        ...(dash === "" ? {} : { "stroke-dasharray": dash }),
      }),
      label({ x: at.x - 38, y: at.y, anchor: "end" }, name),
    ];
  });
  return xml(
    el(
      "svg",
      {
        xmlns: "http://www.w3.org/2000/svg",
        "xml:lang": language,
        viewBox: `0 0 ${WIDTH} ${HEIGHT}`,
        width: WIDTH,
        height: HEIGHT,
        role: "img",
      },
      el("title", {}, text(title)),
      el("desc", {}, text(alt)),
      el("rect", { width: WIDTH, height: HEIGHT, fill: "#ffffff" }),
      el(
        "g",
        { stroke: "#d0d5da", "stroke-width": 1 },
        ...up.ticks.map((v) => el("line", { x1: LEFT, x2: WIDTH - RIGHT, y1: one(y(v)), y2: one(y(v)) })),
        ...across.ticks.map((v) =>
          el("line", { x1: one(x(v)), x2: one(x(v)), y1: TOP, y2: HEIGHT - BOTTOM }),
        ),
      ),
      ...drawn,
      el(
        "g",
        { "font-family": "sans-serif", "font-size": 12, fill: "#20262c" },
        ...up.ticks.map((v) => label({ x: LEFT - 8, y: y(v) + 4, anchor: "end" }, written(v))),
        ...across.ticks.map((v) => label({ x: x(v), y: HEIGHT - BOTTOM + 18, anchor: "middle" }, written(v))),
        label({ x: (LEFT + WIDTH - RIGHT) / 2, y: HEIGHT - 10, anchor: "middle" }, across.label),
        label({ x: 16, y: (TOP + HEIGHT - BOTTOM) / 2, anchor: "middle", turn: true }, up.label),
        ...names,
      ),
    ),
  );
}

/** Ticks at a round distance (1, 2 or 5 times a power of ten) from 0, at most `most` steps, to just beyond a value. */
export function ticksTo(value: number, most: number): number[] {
  const least = value / most;
  const power = 10 ** Math.floor(Math.log10(least));
  const step = ([1, 2, 5, 10].find((s) => s * power >= least * (1 - 1e-9)) ?? 10) * power;
  const count = Math.ceil(value / step - 1e-9);
  return Array.from({ length: count + 1 }, (_, i) => Number((i * step).toPrecision(6)));
}
