/** A picture of what is left of daylight, wavelength by wavelength. */
import { scaleLinear } from "d3-scale";
import { area, line } from "d3-shape";
import type { Picture } from "../item/item.js";
import type { Catalogue } from "../messages/catalogue.js";
import { el, text, xml } from "../xml/xml.js";

const WIDTH = 480;
const HEIGHT = 280;
const LEFT = 56;
const RIGHT = 16;
const TOP = 16;
const BOTTOM = 48;
const FROM_NM = 400;
const TO_NM = 700;
const TICKS_NM = [400, 450, 500, 550, 600, 650, 700];
const TICKS_PERCENT = [0, 20, 40, 60, 80, 100];
/** Told in the text alternative. */
const TOLD_NM = [425, 475, 525, 575, 600, 650];

const two = (value: number): string => value.toFixed(1);

/**
 * @param left share left, 0 to 1, per wavelength.
 * @param depth as the question says it.
 */
export function spectrumPicture(
  wavelengths_nm: readonly number[],
  left: readonly number[],
  depth: string,
  say: Catalogue,
): Picture {
  const x = scaleLinear([FROM_NM, TO_NM], [LEFT, WIDTH - RIGHT]);
  const y = scaleLinear([0, 100], [HEIGHT - BOTTOM, TOP]);
  const points = wavelengths_nm
    .map((nm, i): [number, number] => [nm, 100 * (left[i] ?? 0)])
    .filter(([nm]) => nm >= FROM_NM && nm <= TO_NM);
  const curve =
    line<[number, number]>(
      ([nm]) => x(nm),
      ([, percent]) => y(percent),
    ).digits(1)(points) ?? "";
  const below =
    area<[number, number]>(
      ([nm]) => x(nm),
      y(0),
      ([, percent]) => y(percent),
    ).digits(1)(points) ?? "";
  const words = say.light.picture;
  const shares = TOLD_NM.map((nm) => ({ nm, percent: points.find(([at]) => at === nm)?.[1] ?? 0 }));
  const alt = words.alt({ depth, shares });
  const label = (at: { x: number; y: number; anchor: string; turn?: boolean }, content: string) =>
    el(
      "text",
      {
        x: two(at.x),
        y: two(at.y),
        "text-anchor": at.anchor,
        ...(at.turn ? { transform: `rotate(-90 ${two(at.x)} ${two(at.y)})` } : {}),
      },
      text(content),
    );
  const svg = el(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${WIDTH} ${HEIGHT}`,
      width: WIDTH,
      height: HEIGHT,
      role: "img",
    },
    el("title", {}, text(words.title({ depth }))),
    el("desc", {}, text(alt)),
    el("rect", { width: WIDTH, height: HEIGHT, fill: "#ffffff" }),
    el(
      "g",
      { stroke: "#d0d5da", "stroke-width": 1 },
      ...TICKS_PERCENT.map((p) => el("line", { x1: LEFT, x2: WIDTH - RIGHT, y1: two(y(p)), y2: two(y(p)) })),
      ...TICKS_NM.map((nm) => el("line", { x1: two(x(nm)), x2: two(x(nm)), y1: TOP, y2: HEIGHT - BOTTOM })),
    ),
    el("path", { d: below, fill: "#1f5f8b", "fill-opacity": "0.15" }),
    el("path", { d: curve, fill: "none", stroke: "#1f5f8b", "stroke-width": 2 }),
    el(
      "g",
      { "font-family": "sans-serif", "font-size": 12, fill: "#20262c" },
      ...TICKS_PERCENT.map((p) => label({ x: LEFT - 8, y: y(p) + 4, anchor: "end" }, String(p))),
      ...TICKS_NM.map((nm) => label({ x: x(nm), y: HEIGHT - BOTTOM + 18, anchor: "middle" }, String(nm))),
      label({ x: (LEFT + WIDTH - RIGHT) / 2, y: HEIGHT - 10, anchor: "middle" }, words.xAxis),
      label({ x: 16, y: (TOP + HEIGHT - BOTTOM) / 2, anchor: "middle", turn: true }, words.yAxis),
    ),
  );
  return { svg: xml(svg), alt };
}
