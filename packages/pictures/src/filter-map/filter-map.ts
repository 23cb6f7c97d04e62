import { type FilterMap, filterMap as figuresOf } from "@sunfathom/planner";
import type { FilterMapTexts, PictureTexts } from "@sunfathom/words";
import { errorColour } from "../colour/ramp.js";
import { hexOf, isLight } from "../colour/srgb.js";
import { type Look, type LookAsked, lookOf } from "../look.js";
import type { Picture } from "../picture.js";
import { diveBar, diveKey } from "../svg/dive-mark.js";
import { type Element, el } from "../svg/element.js";
import { keyed } from "../svg/keyed.js";
import { type Block, gap, page } from "../svg/page.js";
import { axisTitle, sayingsOf } from "../svg/sayings.js";
import { widthOf } from "../text/measure.js";
import type { Theme } from "../theme.js";

/** Narrower than this, every second density is drawn. */
const ALL_COLUMNS_FROM_PX = 600;

interface Drawn {
  figures: FilterMap;
  texts: FilterMapTexts;
  theme: Theme;
}

/** Errors as a table of coloured fields: densities go to the right, depth goes down, as it does. */
function fields(look: Look, { figures, texts, theme }: Drawn): Block {
  const { width, margin, size, small, colours, units, stroke } = look;
  const every = width < ALL_COLUMNS_FROM_PX ? 2 : 1;
  const columns = figures.densities.map((_, c) => c).filter((c) => c % every === 0);
  const rowHeight = Math.max(1.9 * size, Math.min(44, 0.045 * width));
  const labels = figures.depths_m.map((depth_m) => texts.at_depth({ depth_m }, units));
  const left = margin + Math.max(...labels.map((label) => widthOf(label, small))) + 1.4 * small;
  const column = (width - margin - left) / columns.length;
  const across = axisTitle(look, texts.across(figures));
  const top = across.height + 1.7 * size;
  /** The column whose density is nearest. */
  const columnOf = (density: number): number =>
    nearest(
      columns.map((c) => figures.densities[c] ?? 0),
      density,
    );
  return {
    height: top + rowHeight * figures.depths_m.length + 0.5 * size,
    at: (y0) => {
      const yOf = (row: number): number => y0 + top + rowHeight * row;
      const rowAt = (depth_m: number): number => nearest(figures.depths_m, depth_m);
      const cells = figures.depths_m.flatMap((_, row) =>
        columns.flatMap((c, place): Element[] => {
          const delta_e00 = figures.delta_e00[row]?.[c] ?? 0;
          const colour = errorColour(delta_e00, theme);
          return [
            el("rect", {
              x: left + column * place,
              y: yOf(row),
              width: column,
              height: rowHeight,
              fill: hexOf(colour),
            }),
            el(
              "text",
              {
                x: left + column * (place + 0.5),
                y: yOf(row + 0.5) + 0.36 * small,
                fill: isLight(colour) ? "#000000" : "#ffffff",
              },
              texts.error({ delta_e00 }),
            ),
          ];
        }),
      );
      const [shallow, deep] = [rowAt(figures.min_depth_m), rowAt(figures.max_depth_m)];
      return [
        ...across.at(y0),
        el(
          "g",
          { "font-size": small, fill: colours.quiet },
          ...columns.map((c, place) =>
            el(
              "text",
              { x: left + column * (place + 0.5), y: yOf(0) - 0.5 * small, "text-anchor": "middle" },
              c === 0 ? texts.none : texts.at_density({ density: figures.densities[c] ?? 0 }),
            ),
          ),
          ...labels.map((label, row) =>
            el(
              "text",
              { x: left - 0.9 * small, y: yOf(row + 0.5) + 0.36 * small, "text-anchor": "end" },
              label,
            ),
          ),
        ),
        el("g", { "font-size": small, "text-anchor": "middle", "shape-rendering": "crispEdges" }, ...cells),
        diveBar({ x: left, top: yOf(shallow), bottom: yOf(deep + 1) }, look),
        ...(figures.band === undefined
          ? []
          : framed(
              {
                x: left + column * columnOf(figures.band.from),
                width: column * (columnOf(figures.band.to) - columnOf(figures.band.from) + 1),
                y: yOf(shallow),
                height: yOf(deep + 1) - yOf(shallow),
              },
              stroke,
            )),
      ];
    },
  };
}

/** The place of the number that is nearest. */
function nearest(among: readonly number[], to: number): number {
  const off = among.map((one) => Math.abs(one - to));
  return off.indexOf(Math.min(...off));
}

interface Frame {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** A frame that is seen on light fields and on dark ones. */
function framed(area: Frame, stroke: number): Element[] {
  const box = { ...area, fill: "none" };
  return [
    el("rect", { ...box, stroke: "#ffffff", "stroke-width": 2.4 * stroke }),
    el("rect", { ...box, stroke: "#000000", "stroke-width": 1.2 * stroke }),
  ];
}

function drawFilterMap(figures: FilterMap, asked: LookAsked, words: PictureTexts): string {
  const texts = words.filter_map;
  const look = lookOf(asked);
  const { size, colours, stroke, units } = look;
  const say = sayingsOf(look);
  const title = texts.headline(figures, units);
  const { band } = figures;
  return page(look, { title, description: `${texts.description(figures, units)} ${words.caution}` }, [
    say.title(title),
    gap(0.4 * size),
    say.text(texts.reading),
    gap(0.8 * size),
    fields(look, { figures, texts, theme: asked.theme }),
    gap(0.4 * size),
    ...(band === undefined
      ? [say.text(texts.no_band)]
      : [
          keyed(look, texts.band(band), (x, y) => [
            el("rect", {
              x: x - 0.9 * size,
              y: y - 0.55 * size,
              width: 1.8 * size,
              height: 1.1 * size,
              fill: "none",
              stroke: colours.text,
              "stroke-width": 1.2 * stroke,
            }),
          ]),
        ]),
    diveKey(look, texts.dive(figures, units)),
    gap(0.5 * size),
    say.note(words.caution),
  ]);
}

export const filterMap: Picture<"filter-map"> = {
  name: "filter-map",
  of: "filter-choice",
  summary: "How far colours are off, by density and depth",
  description:
    "Mean colour errors behind filters of the kind that is advised, from none to five stops, from near the surface to the deepest filmed depth, each as a number on a field that is the darker the larger it is. The advised densities are framed over the filmed depths.",
  cost: () => 60,
  drawing: (scene) => {
    const figures = figuresOf(scene);
    return (asked, words) => drawFilterMap(figures, asked, words);
  },
};
