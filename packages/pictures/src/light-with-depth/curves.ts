import { type Estimate, LIGHTS, type Light, type LightOverDepth } from "@sunfathom/planner";
import { type LightWithDepthTexts, metresPerFoot } from "@sunfathom/words";
import { scaleLinear } from "d3-scale";
import { area, curveMonotoneY, line } from "d3-shape";
import type { Look } from "../look.js";
import { type Element, el } from "../svg/element.js";
import { letterAt } from "../svg/letter.js";
import type { Block } from "../svg/page.js";
import { DASHES } from "../theme.js";
import { placed } from "./place-names.js";

type At = readonly [depth_m: number, left: Estimate];

export const dashes = (light: Light, { stroke }: Look): Record<string, string> =>
  DASHES[light].length === 0
    ? {}
    : { "stroke-dasharray": DASHES[light].map((part) => Math.round(part * stroke * 10) / 10).join(" ") };

/** Depth goes down, as it does; light left goes to the right. */
export function curves(look: Look, figures: LightOverDepth, texts: LightWithDepthTexts): Block {
  const { width, margin, size, small, stroke, colours } = look;
  const height = Math.min(760, Math.max(260, 0.55 * width));
  const { depths_m, left_percent } = figures;
  const end_m = depths_m.at(-1) ?? 0;
  const left = margin + 3 * size;
  const top = 2.8 * size;

  return {
    height: top + height + 0.6 * size,
    at: (y0) => {
      const x = scaleLinear([0, 100], [left, width - margin - size]);
      const y = scaleLinear([0, end_m], [y0 + top, y0 + top + height]);
      const pointsOf = (light: Light): At[] =>
        left_percent[light].map((estimate, d) => [depths_m[d] ?? 0, estimate]);
      const pathOf = line<At>(
        ([, { likely }]) => x(likely),
        ([depth_m]) => y(depth_m),
      )
        .curve(curveMonotoneY)
        .digits(1);
      const boundsOf = area<At>()
        .y(([depth_m]) => y(depth_m))
        .x0(([, { low }]) => x(low))
        .x1(([, { high }]) => x(high))
        .curve(curveMonotoneY)
        .digits(1);
      const names = placed(
        LIGHTS.map((light) => ({
          light,
          name: texts.names[light],
          points: pointsOf(light).map(([depth_m, { likely }]) => [x(likely), y(depth_m)] as const),
        })),
        { size, right: x(100) + size, bottom: y(end_m) },
      );
      return [
        ...dive(figures, { x: [x(0), x(100)], y }, look),
        ...grid({ x, y, end_m }, texts, look),
        el("text", { x: margin, y: y0 + small, "font-size": small, fill: colours.quiet }, texts.left),
        ...(["blue", "green", "red"] as const).map((light) =>
          el("path", {
            d: boundsOf(pointsOf(light)) ?? "",
            fill: colours.lights[light],
            "fill-opacity": 0.2,
          }),
        ),
        ...LIGHTS.map((light) =>
          el("path", {
            d: pathOf(pointsOf(light)) ?? "",
            fill: "none",
            stroke: colours.lights[light],
            "stroke-width": stroke,
            ...dashes(light, look),
          }),
        ),
        ...names.map(({ light, name, x: atX, y: atY }) =>
          el(
            "text",
            {
              x: atX,
              y: atY,
              "font-size": size,
              "font-weight": 600,
              fill: colours.lights[light],
              stroke: colours.ground,
              "stroke-width": 4,
              "stroke-linejoin": "round",
              "paint-order": "stroke",
            },
            name,
          ),
        ),
        ...marks(figures, { x: x(0), right: x(100), y }, look),
      ];
    },
  };
}

type Scale = (value: number) => number;

function grid(
  { x, y, end_m }: { x: Scale; y: Scale; end_m: number },
  texts: LightWithDepthTexts,
  { colours, small, size, units }: Look,
): Element[] {
  const percents = [0, 25, 50, 75, 100];
  const count = Math.min(8, Math.max(4, Math.floor((y(end_m) - y(0)) / (3 * size))));
  const unit_m = units === "imperial" ? metresPerFoot : 1;
  const depths = scaleLinear([0, end_m / unit_m], [0, 1])
    .ticks(count)
    .map((depth) => depth * unit_m);
  return [
    el(
      "g",
      { stroke: colours.grid },
      ...percents.map((percent) => el("line", { x1: x(percent), x2: x(percent), y1: y(0), y2: y(end_m) })),
      ...depths.map((depth) => el("line", { x1: x(0), x2: x(100), y1: y(depth), y2: y(depth) })),
    ),
    el(
      "g",
      { "font-size": small, fill: colours.quiet },
      ...percents.map((percent) =>
        el(
          "text",
          { x: x(percent), y: y(0) - 0.8 * small, "text-anchor": "middle" },
          texts.at_percent({ percent }),
        ),
      ),
      ...depths.map((depth) =>
        el(
          "text",
          { x: x(0) - 0.8 * small, y: y(depth) + 0.35 * small, "text-anchor": "end" },
          texts.at_depth({ depth_m: depth }, units),
        ),
      ),
    ),
  ];
}

/** The depths that are filmed. */
function dive(
  { min_depth_m, max_depth_m }: LightOverDepth,
  { x: [from, to], y }: { x: readonly [number, number]; y: Scale },
  { colours, stroke }: Look,
): Element[] {
  const least = 3 * stroke;
  const height = Math.max(least, y(max_depth_m) - y(min_depth_m));
  const top = (y(min_depth_m) + y(max_depth_m) - height) / 2;
  return [
    el("rect", { x: from, y: top, width: to - from, height, fill: colours.accent, "fill-opacity": 0.12 }),
    el("rect", { x: from - 2 * stroke, y: top, width: 2 * stroke, height, fill: colours.accent }),
  ];
}

/** Where red ends, by letters that are told below. */
function marks(
  { red_to_tenth_depth_m, red_to_hundredth_depth_m, depths_m }: LightOverDepth,
  { x, right, y }: { x: number; right: number; y: Scale },
  look: Look,
): Element[] {
  const end_m = depths_m.at(-1) ?? 0;
  return [
    { letter: "A", depth_m: red_to_tenth_depth_m.likely },
    { letter: "B", depth_m: red_to_hundredth_depth_m.likely },
  ]
    .filter(({ depth_m }) => depth_m <= end_m)
    .flatMap(({ letter, depth_m }) => [
      el("line", {
        x1: x,
        x2: right,
        y1: y(depth_m),
        y2: y(depth_m),
        stroke: look.colours.lights.red,
        "stroke-width": 1,
        "stroke-dasharray": "2 3",
      }),
      ...letterAt(letter, { x: right, y: y(depth_m) }, look, look.colours.lights.red),
    ]);
}
