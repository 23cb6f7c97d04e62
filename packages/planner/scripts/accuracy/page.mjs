import { svgOf } from "../../../optics/scripts/accuracy/chart.mjs";
import { COLOURS } from "../../../optics/scripts/accuracy/chart-series.mjs";
import { markdownTable } from "../../../optics/scripts/accuracy/numbers.mjs";
import { coverage, DRAWS, heldOf, QUANTITIES, summary } from "./coverage.mjs";
import { finishesSection } from "./finishes.mjs";
import { practiceSection } from "./practice.mjs";
import { tradeSection } from "./trade.mjs";

const perCent = (share) => `${(100 * share).toFixed(0)} %`;

const plot = (scenes) =>
  svgOf({
    title: "Bounds of the answers against a simulation",
    describe:
      "One panel for each of seven scenes. For six quantities a bar from low to high about the likely answer, and markers for the 10th, 50th and 90th percentile of a simulation.",
    columns: 3,
    panelWidth: 250,
    panelHeight: 180,
    xLabel: "Loss to the water, loss in all, exposure value; video light over daylight in red, green, blue",
    yLabel: "Stops about the likely answer",
    x: {
      domain: [-0.6, QUANTITIES.length - 0.4],
      ticks: QUANTITIES.map((_, k) => k),
      format: (k) => QUANTITIES[k].short,
    },
    y: { domain: [-3, 3], ticks: [-3, -2, -1, 0, 1, 2, 3] },
    legend: [
      { kind: "spans", colour: COLOURS.blue, label: "low to high of the answer" },
      {
        kind: "points",
        colour: COLOURS.vermilion,
        shape: "triangle",
        label: "simulated 10th and 90th percentile",
      },
      { kind: "points", colour: COLOURS.black, label: "simulated median" },
    ],
    panels: scenes.map(({ name, quantities }) => ({
      title: name,
      series: [
        {
          kind: "spans",
          colour: COLOURS.blue,
          width: 12,
          points: quantities.map(({ low, high }, k) => [k, low, high]),
        },
        {
          kind: "points",
          colour: COLOURS.vermilion,
          shape: "triangle",
          points: quantities.flatMap(({ simulated }, k) => [
            [k, simulated[0]],
            [k, simulated[2]],
          ]),
        },
        {
          kind: "points",
          colour: COLOURS.black,
          points: quantities.map(({ simulated }, k) => [k, simulated[1]]),
        },
      ],
    })),
  });

/** The page and its plot: file name in accuracy/ to content. */
export function accuracyFiles() {
  const scenes = coverage();
  const held = scenes.flatMap(({ quantities }) => quantities.map(heldOf));
  const text = `<!-- Written by scripts/write-accuracy.mjs; do not edit. -->

# How well the bounds of an answer hold

Low, likely and high are meant as the 10th, 50th and 90th percentile. The planner shifts one cause of doubt at a time and adds the shifts in
quadrature; a seeded simulation (${DRAWS} draws a scene) varies all of them at once. Between low and high should lie 80 % of the draws. Every number and
the plot are computed by \`node packages/planner/scripts/write-accuracy.mjs\` (after a build); a test fails when the page no longer is what the
script gives. How the model compares with published points is on [the page of the optics](../../optics/accuracy/README.md).

![Seven panels, one for each scene. Bars from low to high for six quantities; the simulated 10th and 90th percentiles sit close to the ends of the bars, the simulated medians close to the likely answer.](coverage.svg)

Over all ${held.length} bounds: least ${perCent(Math.min(...held))} and most ${perCent(Math.max(...held))} of the draws held.

${markdownTable(
  [
    "Quantity",
    "Held, least and most over the scenes",
    "Below low (median)",
    "Above high (median)",
    "Width of the bounds (median, stops)",
  ],
  QUANTITIES.map(({ name }, k) => {
    const s = summary(scenes, k);
    return [
      name,
      `${perCent(Math.min(...s.held))} to ${perCent(Math.max(...s.held))}`,
      perCent(s.below),
      perCent(s.above),
      s.width.toFixed(2),
    ];
  }),
)}

Held between low and high, by scene:

${markdownTable(
  ["Scene", ...QUANTITIES.map(({ short }) => short)],
  scenes.map(({ name, quantities }) => [name, ...quantities.map((q) => perCent(heldOf(q)))]),
)}

- **What it shows:** that the percentiles are worked out right from the causes.
- **What it cannot show:** that the causes are of the right size. Those rest on published scatter where there is any, and on judgement where the code says so; the page of the optics shows where published points lie outside.
- **Weak:** first order in each cause. A lopsided cause (a beam's peak) lifts the true median above the likely answer.

${practiceSection()}${tradeSection()}
${finishesSection()}`;
  return { "README.md": text, "coverage.svg": plot(scenes) };
}
