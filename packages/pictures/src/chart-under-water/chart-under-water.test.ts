// The colours of the chart, from published spectra and by another library of colour than the model's own formulas.
import { readFileSync } from "node:fs";
import {
  DARK_AND_GREEN,
  HARBOUR_WALL_AFTERNOON,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
} from "@sunfathom/fixtures/scenes";
import { chartUnderWater as figuresOf, type LinearRgb } from "@sunfathom/planner";
import { converter, differenceCiede2000, formatHex, type Lch65, type Xyz65 } from "culori";
import { describe, expect, it } from "vitest";
import { hexOf } from "../colour/srgb.js";

/** Rows of a published table, its header left out. */
const rowsOf = (name: string): string[][] =>
  readFileSync(new URL(`../../../optics/tables/${name}`, import.meta.url), "utf8")
    .trim()
    .split("\n")
    .slice(1)
    .map((line) => line.split(","));

// CIE 15: 2 degree observer at 1 nm, illuminant D65 at 5 nm. Reflectances of the chart of ISO 17321-1: Ohta 1997, at 5 nm.
const observer = new Map(
  rowsOf("cie_1931_2deg_cmf_1nm.csv").map(([nm, ...xyz]) => [Number(nm), xyz.map(Number)]),
);
const d65 = new Map(
  rowsOf("cie_illuminants_5nm.csv")
    .filter(([name]) => name === "D65")
    .map(([, nm, power]) => [Number(nm), Number(power)]),
);
const reflectances = new Map<string, [nm: number, reflectance: number][]>();
for (const [patch = "", nm, reflectance] of rowsOf("chart24_reflectance_ohta1997.csv")) {
  const known = reflectances.get(patch) ?? [];
  reflectances.set(patch, known);
  known.push([Number(nm), Number(reflectance)]);
}

/** Sums at 5 nm, by hand. */
function xyzOf(curve: readonly (readonly [nm: number, reflectance: number])[]): Xyz65 {
  const [sums, white] = [
    [0, 0, 0],
    [0, 0, 0],
  ];
  for (const [nm, reflectance] of curve) {
    for (const k of [0, 1, 2]) {
      const weight = (d65.get(nm) ?? 0) * (observer.get(nm)?.[k] ?? 0);
      white[k] = (white[k] ?? 0) + weight;
      sums[k] = (sums[k] ?? 0) + weight * reflectance;
    }
  }
  const [x = 0, y = 0, z = 0] = sums.map((sum) => sum / (white[1] ?? 1));
  return { mode: "xyz65", x, y, z };
}

const lch = converter("lch65");
const lab = converter("lab65");
const difference = differenceCiede2000();
const published = [...reflectances.values()].map((curve) => lch(xyzOf(curve)));
const isGrey = ({ c }: Lch65): boolean => c < 2;
const inOrder = [
  ...published.filter((colour) => !isGrey(colour)).sort((a, b) => (a.h ?? 0) - (b.h ?? 0)),
  ...published.filter(isGrey).sort((a, b) => b.l - a.l),
];
const linear = ([r, g, b]: LinearRgb) => ({ mode: "lrgb" as const, r, g, b });

describe("the truth", () => {
  const { truth, grey_count } = figuresOf(OUTER_REEF_MORNING);

  it("has 24 colours by hue, six greys last", () => {
    expect(published).toHaveLength(24);
    expect(truth).toHaveLength(24);
    expect(grey_count).toBe(6);
  });

  it("is what culori makes of the published spectra, each patch within a ΔE00 of 0.3", () => {
    for (const [place, colour] of inOrder.entries())
      expect(difference(linear(truth[place] ?? [0, 0, 0]), colour), String(place)).toBeLessThan(0.3);
  });

  it("is drawn as culori writes it for a screen", () => {
    for (const colour of truth) expect(hexOf(colour)).toBe(formatHex(linear(colour)));
  });
});

describe.each(Object.entries({ OUTER_REEF_MORNING, HARBOUR_WALL_AFTERNOON, DARK_AND_GREEN, NIGHT_WRECK }))(
  "the chart of %s",
  (_, scene) => {
    const figures = figuresOf(scene);

    it("is off by what culori finds between truth and picture", () => {
      for (const row of [figures.without, figures.filtered]) {
        for (const { patches, drawn_delta_e00 } of Object.values(row)) {
          const errors = figures.truth.map((true_, place) =>
            difference(lab(linear(true_)), lab(linear(patches[place] ?? [0, 0, 0]))),
          );
          expect(errors.reduce((sum, error) => sum + error, 0) / 24).toBeCloseTo(drawn_delta_e00, 0);
        }
      }
    });

    it("gets no worse by a white balance, nor by what is done afterwards", () => {
      const { daylight, balanced, finished } = figures.without;
      expect(balanced.delta_e00).toBeLessThanOrEqual(daylight.delta_e00 + 0.5);
      expect(finished.delta_e00).toBeLessThanOrEqual(balanced.delta_e00 + 0.5);
    });
  },
);

it("shows a filter that is advised, and says so of one that is not", () => {
  expect(figuresOf(OUTER_REEF_MORNING)).toMatchObject({ is_advised: true, filter: { kind: "red" } });
  expect(figuresOf(HARBOUR_WALL_AFTERNOON)).toMatchObject({ is_advised: true, filter: { kind: "magenta" } });
  expect(figuresOf(NIGHT_WRECK)).toMatchObject({ is_advised: false });
});
