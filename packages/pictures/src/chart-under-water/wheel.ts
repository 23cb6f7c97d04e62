import type { LinearRgb } from "@sunfathom/planner";
import { arc } from "d3-shape";
import { hexOf, isLight } from "../colour/srgb.js";
import type { Look } from "../look.js";
import { type Element, el } from "../svg/element.js";

interface Sector {
  innerRadius: number;
  outerRadius: number;
  startAngle: number;
  endAngle: number;
}

interface Wheel {
  x: number;
  y: number;
  radius: number;
  /** By hue, then the greys. */
  patches: readonly LinearRgb[];
  /** Along the inner edge of each field; the patches alone where it is left out. */
  truth?: readonly LinearRgb[];
  greyCount: number;
}

/** Radii of the ring of colours and of the greys within it, and the share of a field that its inner edge takes. */
const RING = 0.46;
const CORE = 0.4;
const EYE = 0.1;
const EDGE = 0.3;

const shape = arc<Sector>().digits(1);

/** Colours in a ring by their hues, greys in a disc within it: a layout of our own. */
export function wheel({ x, y, radius, patches, truth, greyCount }: Wheel, look: Look): Element[] {
  const colours = patches.length - greyCount;
  const sectorOf = (place: number): Sector => {
    const isGrey = place >= colours;
    const [nth, of] = isGrey ? [place - colours, greyCount] : [place, colours];
    return {
      innerRadius: radius * (isGrey ? EYE : RING),
      outerRadius: radius * (isGrey ? CORE : 1),
      startAngle: (2 * Math.PI * nth) / of,
      endAngle: (2 * Math.PI * (nth + 1)) / of,
    };
  };
  const fields = el(
    "g",
    { transform: `translate(${Math.round(x)} ${Math.round(y)})`, "shape-rendering": "crispEdges" },
    ...patches.map((colour, place) => el("path", { d: shape(sectorOf(place)) ?? "", fill: hexOf(colour) })),
    ...(truth ?? []).map((colour, place) => {
      const { innerRadius, outerRadius, ...angles } = sectorOf(place);
      const edge = innerRadius + EDGE * (outerRadius - innerRadius);
      return el("path", {
        d: shape({ ...angles, innerRadius, outerRadius: edge }) ?? "",
        fill: hexOf(colour),
      });
    }),
  );
  return truth === undefined ? [fields, ...numbers(patches, sectorOf, { x, y }, look)] : [fields];
}

function numbers(
  patches: readonly LinearRgb[],
  sectorOf: (place: number) => Sector,
  center: { x: number; y: number },
  look: Look,
): Element[] {
  const size = Math.max(12, 0.8 * look.small);
  return patches.map((colour, place) => {
    const [x, y] = shape.centroid(sectorOf(place));
    return el(
      "text",
      {
        x: center.x + x,
        y: center.y + y + 0.36 * size,
        "text-anchor": "middle",
        "font-size": size,
        fill: isLight(colour) ? "#000000" : "#ffffff",
      },
      String(place + 1),
    );
  });
}
