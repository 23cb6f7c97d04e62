import type { MixedLightMap, MixedLightVerdict } from "@sunfathom/planner";
import { type MixedLightMapTexts, metresPerFoot } from "@sunfathom/words";
import { scaleLinear } from "d3-scale";
import type { Look } from "../look.js";
import { type Element, el } from "../svg/element.js";
import { letterAt } from "../svg/letter.js";
import type { Block } from "../svg/page.js";
import { axisTitle } from "../svg/sayings.js";
import { deepestInside, runsOf } from "./regions.js";

interface Area {
  x: number;
  y: number;
  width: number;
  height: number;
}

const LETTERS: Readonly<Record<MixedLightVerdict, string>> = {
  lamps_lead: "A",
  lights_fight: "B",
  daylight_leads: "C",
  lamps_only: "A",
  daylight_only: "C",
};
export const letterOf = (verdict: MixedLightVerdict): string => LETTERS[verdict];

const fillOf = (verdict: MixedLightVerdict, { lights, accent }: Look["colours"]): string =>
  verdict === "lights_fight" ? lights.red : letterOf(verdict) === "A" ? accent : lights.blue;

/** An area in the colour of its light; where the two fight, hatched as well. */
export function filled(verdict: MixedLightVerdict, area: Area, look: Look): Element[] {
  const { colours } = look;
  const tint = el("rect", { ...area, fill: fillOf(verdict, colours), "fill-opacity": 0.22 });
  if (verdict !== "lights_fight") return [tint];
  return [
    tint,
    el("path", { d: hatching([area], look), stroke: colours.lights.red, "stroke-width": 1, fill: "none" }),
  ];
}

/** Lines at 45 degrees through areas, on through the next where they meet. */
function hatching(areas: readonly Area[], { size, width: page }: Look): string {
  const spacing = Math.max(0.9 * size, page / 52);
  const lines: string[] = [];
  for (const { x, y, width, height } of areas) {
    // A line is where x + y is a multiple of the spacing, from one area to the next.
    for (let at = Math.ceil((x + y) / spacing) * spacing; at < x + y + width + height; at += spacing) {
      const left = Math.max(x, at - y - height);
      const right = Math.min(x + width, at - y);
      if (right - left > 0.5)
        lines.push(
          `M${left.toFixed(1)} ${(at - left).toFixed(1)}L${right.toFixed(1)} ${(at - right).toFixed(1)}`,
        );
    }
  }
  return lines.join("");
}

/** The map: distance of the video lights to the right, depth down, as it goes. */
export function field(look: Look, figures: MixedLightMap, texts: MixedLightMapTexts): Block {
  const { width, margin, size, small, colours, stroke, units } = look;
  const { verdicts, end_depth_m, end_distance_m, own_distance_m, min_depth_m, max_depth_m } = figures;
  const height = Math.min(640, Math.max(240, 0.5 * width));
  const left = margin + 3.4 * size;
  const right = width - margin - 0.8 * size;
  const across = axisTitle(look, texts.across);
  const top = across.height + 1.7 * size;
  const unit_m = units === "imperial" ? metresPerFoot : 1;
  const ticks = (end_m: number, room: number, each: number): number[] =>
    scaleLinear([0, end_m / unit_m], [0, 1])
      .ticks(Math.min(8, Math.max(2, Math.floor(room / each))))
      .map((value) => value * unit_m);
  return {
    height: top + height + 0.6 * size,
    at: (y0) => {
      const x = scaleLinear([0, end_distance_m], [left, right]);
      const y = scaleLinear([0, end_depth_m], [y0 + top, y0 + top + height]);
      const [columns, rows] = [figures.distances_m.length, figures.depths_m.length];
      const areas = runsOf(verdicts).map(({ verdict, row, from, to }) => ({
        verdict,
        x: left + ((right - left) * from) / columns,
        width: ((right - left) * (to - from)) / columns,
        y: y0 + top + (height * row) / rows,
        height: height / rows,
      }));
      const fights = areas.filter(({ verdict }) => verdict === "lights_fight");
      const film = [y(min_depth_m), y(max_depth_m)] as const;
      const least = Math.max(0, 1.6 * size - (film[1] - film[0])) / 2;
      return [
        ...across.at(y0),
        el(
          "g",
          { "shape-rendering": "crispEdges", "fill-opacity": 0.22 },
          ...areas.map(({ verdict, ...area }) => el("rect", { ...area, fill: fillOf(verdict, colours) })),
        ),
        el("path", {
          d: hatching(fights, look),
          stroke: colours.lights.red,
          "stroke-width": 1,
          fill: "none",
        }),
        el("rect", {
          x: left,
          y: y0 + top,
          width: right - left,
          height,
          fill: "none",
          stroke: colours.quiet,
        }),
        el(
          "g",
          { "font-size": small, fill: colours.quiet },
          ...ticks(end_distance_m, right - left, 4.5 * size)
            .filter((distance_m) => distance_m > 0)
            .map((distance_m) =>
              el(
                "text",
                { x: x(distance_m), y: y(0) - 0.6 * small, "text-anchor": "middle" },
                texts.at_distance({ distance_m }, units),
              ),
            ),
          ...ticks(end_depth_m, height, 3 * size).map((depth_m) =>
            el(
              "text",
              { x: left - 0.8 * small, y: y(depth_m) + 0.36 * small, "text-anchor": "end" },
              texts.at_depth({ depth_m }, units),
            ),
          ),
        ),
        ...[colours.ground, colours.text].map((stroked, i) =>
          el("line", {
            x1: x(own_distance_m),
            x2: x(own_distance_m),
            y1: film[0] - least,
            y2: film[1] + least,
            stroke: stroked,
            "stroke-width": i === 0 ? 3.4 * stroke : 2 * stroke,
          }),
        ),
        ...deepestInside(verdicts, {
          column: (right - left) / columns,
          row: height / rows,
          avoid: (own_distance_m / end_distance_m) * columns,
        }).flatMap(({ verdict, row, column }) =>
          letterAt(
            letterOf(verdict),
            {
              x: left + ((right - left) * (column + 0.5)) / columns,
              y: y0 + top + (height * (row + 0.5)) / rows,
            },
            look,
            look.colours.text,
          ),
        ),
      ];
    },
  };
}
