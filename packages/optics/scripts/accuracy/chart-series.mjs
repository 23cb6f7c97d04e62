import {
  area,
  line,
  symbol,
  symbolCircle,
  symbolCross,
  symbolDiamond,
  symbolSquare,
  symbolStar,
  symbolTriangle,
} from "d3-shape";
import { escapeText } from "./chart-axis.mjs";

/** Colours that stay apart for colour-blind readers: Okabe & Ito 2008, Color Universal Design. */
export const COLOURS = {
  blue: "#0072b2",
  vermilion: "#d55e00",
  green: "#009e73",
  purple: "#cc79a7",
  orange: "#e69f00",
  sky: "#56b4e9",
  black: "#000000",
};

const SHAPES = {
  circle: symbolCircle,
  square: symbolSquare,
  triangle: symbolTriangle,
  diamond: symbolDiamond,
  cross: symbolCross,
  star: symbolStar,
};

const shapePath = (shape, size) => symbol(SHAPES[shape], size).digits(2)();

/** A marker at a place, open so that a line under it stays visible. */
export const marker = (shape, colour, x, y, size = 28) =>
  `<path d="${shapePath(shape, size)}" transform="translate(${x},${y})" fill="#fff" fill-opacity="0.6" stroke="${colour}" stroke-width="1.3"/>`;

export const stroke = (colour, dash) =>
  `fill="none" stroke="${colour}" stroke-width="1.6"${dash ? ` stroke-dasharray="${dash}"` : ""}`;

const DRAW = {
  line({ points, colour, dash }, x, y) {
    const path = line(
      (p) => x.at(p[0]),
      (p) => y.at(p[1]),
    ).digits(1)(points);
    return [`<path d="${path}" ${stroke(colour, dash)}/>`];
  },
  /** Points [x, low, high]. */
  band({ points, colour }, x, y) {
    const path = area()
      .x((p) => x.at(p[0]))
      .y0((p) => y.at(y.hold(p[1])))
      .y1((p) => y.at(y.hold(p[2])))
      .digits(1)(points);
    return [`<path d="${path}" fill="${colour}" fill-opacity="0.18"/>`];
  },
  /** Points [x, y] or [x, y, low, high] with a bar between. */
  points({ points, colour, shape = "circle" }, x, y) {
    return points.flatMap(([px, py, low, high]) => {
      if (!x.holds(px) || !y.holds(py)) throw new Error(`point ${px}, ${py} lies off the chart`);
      const bar =
        low === undefined
          ? []
          : [
              `<path d="M${x.at(px)},${y.at(y.hold(low))}V${y.at(y.hold(high))}" ${stroke(colour)} stroke-opacity="0.6"/>`,
            ];
      return [...bar, marker(shape, colour, x.at(px), y.at(py))];
    });
  },
  /** Points [x, low, high] as bars along y. */
  spans({ points, colour, width = 5 }, x, y) {
    return points.map(
      ([px, low, high]) =>
        `<path d="M${x.at(px)},${y.at(low)}V${y.at(high)}" fill="none" stroke="${colour}" stroke-width="${width}" stroke-opacity="0.55"/>`,
    );
  },
  text({ at, text, anchor = "start", colour = "#222", dx = 0, dy = 0 }, x, y) {
    return [
      `<text class="tick" text-anchor="${anchor}" x="${x.at(at[0]) + dx}" y="${y.at(at[1]) + dy}" style="fill:${colour}">${escapeText(text)}</text>`,
    ];
  },
};

/** @param series `kind` names how it is drawn; the rest is what that kind takes. */
export const drawSeries = (series, x, y) => DRAW[series.kind](series, x, y);
