import { densityToStops } from "@sunfathom/optics";
import type { Template } from "../item/template.js";

const POOL = {
  // The filters that divers carry: ND2, ND4, ND8 and ND16.
  beginner: [0.3, 0.6, 0.9, 1.2],
  working: [0.4, 0.45, 0.5, 0.55, 0.65, 0.7, 0.75, 0.8, 0.85, 0.95, 1.05, 1.1, 1.25, 1.4],
};
const PARTS = [0.15, 0.2, 0.25, 0.35, 0.4, 0.45, 0.55, 0.65, 0.7, 0.85];

/** Density as stops. */
export const densityToStopsTemplate: Template = {
  id: "density_to_stops",
  topic: "filter",
  interaction: "numeric",
  levels: ["beginner", "working", "expert"],
  make({ draw, level, say, show }) {
    const text = say.filter.density_to_stops;
    const parts = level === "expert" ? draw.sample(PARTS, 2) : [draw.pick(POOL[level])];
    const [first = 0, second = 0] = draw.shuffle(parts);
    const density = Number((first + second).toFixed(2));
    const stops = densityToStops(density);
    const d = show.density(density);
    const two = { first: show.density(first), second: show.density(second) };
    const stem =
      level === "expert"
        ? text.stackStem(two)
        : draw.below(2) === 0
          ? text.stem({ density: d })
          : text.colourStem({ density: d });
    return {
      given: { densities: parts, stem_kind: stem === text.colourStem({ density: d }) ? "colour" : "neutral" },
      stem,
      answer: {
        interaction: "numeric",
        value: stops,
        unit: "stops",
        decimals: 1,
        tolerance: 0.1,
        anticipated: [
          { misconception: "density_is_stops", value: density },
          { misconception: "density_is_factor", value: 10 ** density },
          ...(level === "expert"
            ? ([
                { misconception: "densities_multiplied", value: densityToStops(first * second) },
                { misconception: "densest_filter_counts", value: densityToStops(Math.max(first, second)) },
              ] as const)
            : []),
        ],
      },
      steps: [
        ...(level === "expert" ? [{ operation: "add" as const, text: text.sum({ ...two, sum: d }) }] : []),
        {
          operation: level === "beginner" ? "double" : "multiply",
          text: (level === "beginner" ? text.whole : text.last)({ density: d, stops: show.stops(stops) }),
        },
      ],
      sources: ["density"],
      basis: "definition",
    };
  },
};
