import type { Template } from "../item/template.js";

/** A density of 0.3 is a stop to within 0.4 %: filters are named so, and so is what they do to light. */
const STOP_DENSITY = 0.3;
const STOPS = [1, 2, 3, 4, 5, 6, 7];
const ASKED = { beginner: "stops", working: "factor", expert: "share" } as const;
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
      stops: (stops: number) => show.stops(stops),
      factor: (stops: number) => text.factor({ factor: 2 ** stops }),
      share: (stops: number) => text.share({ of: 2 ** stops }),
    }[asked];
    const drawn = draw.sample(STOPS, PAIRS + 1);
    const spare = draw.pick(drawn);
    const densityOf = (stops: number): number => Number((stops * STOP_DENSITY).toFixed(1));
    const pairs = drawn
      .filter((stops) => stops !== spare)
      .map((stops) => ({
        left: text.density({ density: show.density(densityOf(stops)) }),
        right: value(stops),
      }));
    return {
      given: { densities: drawn.map(densityOf), asked },
      stem: { stops: text.stopsStem, factor: text.factorStem, share: text.shareStem }[asked],
      answer: {
        interaction: "matching",
        pairs,
        spare: [value(spare)],
        misconception: asked === "stops" ? "density_is_stops" : "density_taken_linearly",
      },
      steps: [
        { operation: asked === "stops" ? "double" : "multiply", text: text.rule[asked] },
        { operation: "recall", text: text.last({ pairs }) },
      ],
      sources: ["density"],
      basis: "definition",
    };
  },
};
