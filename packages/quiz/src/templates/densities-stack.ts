import { densityToStops, densityToTransmittance } from "@sunfathom/optics";
import type { Draft } from "../item/draft.js";
import { numberOptions } from "../item/options.js";
import type { Maker, Template } from "../item/template.js";

const DENSITIES = [0.15, 0.2, 0.3, 0.4, 0.45, 0.5, 0.6, 0.7, 0.75, 0.9, 1.2];

/** Two filters, one behind the other. */
export const densitiesStack: Template = {
  id: "densities_stack",
  topic: "filter",
  interaction: "single_choice",
  levels: ["beginner", "working", "expert"],
  make({ draw, aim, level, say, show }) {
    const [a = 0, b = 0] = draw.shuffle(draw.sample(DENSITIES, 2));
    const sum = Number((a + b).toFixed(2));
    if (level === "expert") return fromShares({ draw, aim, say, show });
    const asPercent = level === "working";
    const text = say.filter.densities_stack;
    const left = (density: number): number => 100 * densityToTransmittance(density);
    const as = asPercent ? left : (density: number) => density;
    const both = left(a) + left(b);
    const options = numberOptions(
      { draw, aim },
      {
        key: as(sum),
        wrong: [
          ["densities_multiplied", as(a * b)],
          ["densest_filter_counts", as(Math.max(a, b))],
          ["densest_filter_doubled", as(2 * Math.max(a, b))],
          ["densities_averaged", as((a + b) / 2)],
          ...(asPercent
            ? ([
                ["logarithm_to_ten", left(densityToStops(sum))],
                ["density_taken_linearly", 100 / (10 * sum)],
                // Each only where it says something possible.
                [both < 100 ? "transmittances_added" : "absorptions_added", both < 100 ? both : both - 100],
              ] as const)
            : ([
                ["density_is_stops", densityToStops(sum)],
                // Ten and more would be no density that anyone takes for one.
                ["density_is_factor", sum < 1 ? 10 ** sum : Number.NaN],
              ] as const)),
        ],
        text: asPercent ? show.percent : (density) => text.option({ density: show.fixed(density, 2) }),
      },
    );
    if (!options) return undefined;
    const two = { first: show.density(a), second: show.density(b) };
    const summed = { operation: "add" as const, text: text.sum({ ...two, sum: show.density(sum) }) };
    return {
      given: { densities: [a, b], asked: asPercent ? "percent" : "density" },
      stem: asPercent ? text.percentStem(two) : text.densityStem(two),
      answer: { interaction: "single_choice", options },
      steps: asPercent
        ? [
            summed,
            {
              operation: "power",
              text: text.percent({ density: show.density(sum), percent: show.percent(left(sum)) }),
            },
          ]
        : [summed],
      sources: ["density"],
      basis: "definition",
    };
  },
};

const SHARES_PERCENT = [5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60];

/** The way back: from what each filter lets through to the density of both. */
function fromShares({
  draw,
  aim,
  say,
  show,
}: Pick<Maker, "draw" | "aim" | "say" | "show">): Draft | undefined {
  const [a = 0, b = 0] = draw.shuffle(draw.sample(SHARES_PERCENT, 2));
  const density = (percent: number): number => -Math.log10(percent / 100);
  const both = (a * b) / 100;
  const text = say.filter.densities_stack;
  const options = numberOptions(
    { draw, aim },
    {
      key: density(both),
      wrong: [
        ["transmittances_added", a + b < 100 ? density(a + b) : Number.NaN],
        ["absorptions_added", a + b > 100 ? density(a + b - 100) : Number.NaN],
        ["densities_averaged", density((a + b) / 2)],
        ["densities_averaged", (density(a) + density(b)) / 2],
        ["densities_multiplied", density(a) * density(b)],
        ["densest_filter_counts", density(Math.min(a, b))],
        ["densest_filter_doubled", 2 * density(Math.min(a, b))],
        ["density_is_stops", -Math.log2(both / 100)],
        ["density_is_factor", 100 / both / 10],
      ],
      text: (value) => text.option({ density: show.fixed(value, 2) }),
    },
  );
  if (!options) return undefined;
  const two = { first: show.percent(a), second: show.percent(b), both: show.percent(both) };
  return {
    given: { shares_percent: [a, b], asked: "density" },
    stem: text.sharesStem(two),
    answer: { interaction: "single_choice", options },
    steps: [
      { operation: "multiply", text: text.shares(two) },
      { operation: "power", text: text.toDensity({ both: two.both, density: show.density(density(both)) }) },
    ],
    sources: ["density"],
    basis: "definition",
  };
}
