import { densityToFactor, densityToStops, densityToTransmittance } from "@sunfathom/optics";
import type { Template } from "../item/template.js";

const DENSITIES = [0.3, 0.6, 0.9, 1.2, 1.5, 1.8, 2.1];
const ASKED = { beginner: "stops", working: "factor", expert: "percent" } as const;
const PAIRS = 3;

/** Densities and what they do to light. */
export const densityMatch: Template = {
  id: "density_match",
  topic: "filter",
  interaction: "matching",
  levels: ["beginner", "working", "expert"],
  make({ draw, level, say, show }) {
    const text = say.filter.density_match;
    const asked = ASKED[level];
    const value = {
      stops: (density: number) => show.stops(densityToStops(density)),
      factor: (density: number) => text.factor({ factor: show.fixed(densityToFactor(density), 0) }),
      percent: (density: number) => show.percent(100 * densityToTransmittance(density)),
    }[asked];
    const densities = draw.sample(DENSITIES, PAIRS + 1);
    const spare = draw.pick(densities);
    const pairs = densities
      .filter((density) => density !== spare)
      .map((density) => ({ left: text.density({ density: show.density(density) }), right: value(density) }));
    return {
      given: { densities, asked },
      stem: { stops: text.stopsStem, factor: text.factorStem, percent: text.percentStem }[asked],
      answer: {
        interaction: "matching",
        pairs,
        spare: [value(spare)],
        misconception: asked === "stops" ? "density_is_stops" : "density_taken_linearly",
      },
      steps: [
        { operation: asked === "stops" ? "multiply" : "power", text: text.rule[asked] },
        { operation: "recall", text: text.last({ pairs }) },
      ],
      sources: ["density"],
      basis: "definition",
    };
  },
};
