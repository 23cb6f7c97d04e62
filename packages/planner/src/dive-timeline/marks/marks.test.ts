import {
  FILTER_KINDS,
  filterTransmittance,
  fitDensity,
  illuminant,
  meanSensor,
  stopsUnder,
} from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { withoutFilter } from "../../dive-advice/mounted.js";
import { Hours } from "../light-here.js";
import { coverageOver } from "./coverage.test-support.js";
import { fittedWater, sampleOf } from "./fitted-water.js";
import { marksOf } from "./marks.js";
import { agrees } from "./spread.js";
import { truthOf } from "./truths.test-support.js";

describe("the density of a filter", () => {
  const lights = [illuminant("D55"), illuminant("D65")];
  it.each(FILTER_KINDS.map((kind) => [kind]))("%s comes back from the stops that it takes", (kind) => {
    for (const density of [0.1, 0.74, 1.6]) {
      const stops = stopsUnder(lights, meanSensor(), filterTransmittance(kind, density));
      const pictures = lights.map((light, n) => ({
        light,
        stops: [stops[3 * n] ?? 0, stops[3 * n + 1] ?? 0, stops[3 * n + 2] ?? 0] as const,
      }));
      const fit = fitDensity(pictures, kind, meanSensor());
      expect(fit.density).toBeCloseTo(density, 3);
      expect(fit.residual_stops).toBeLessThan(1e-3);
      // More stops by all that a hundredth more of density takes are a hundredth more of density.
      const more = stopsUnder(lights, meanSensor(), filterTransmittance(kind, density + 0.01));
      const moved = fit.gains.reduce((sum, gain, i) => sum + gain * ((more[i] ?? 0) - (stops[i] ?? 0)), 0);
      expect(moved).toBeCloseTo(0.01, 3);
    }
  });
});

describe("marks", () => {
  const { scene, frames } = truthOf(4);

  it("are of each card, of the water and of the filter, and say what differs", () => {
    const marks = marksOf({ ...scene, filter_density: (scene.filter_density ?? 0) + 0.5 }, frames);
    expect(marks.filter((mark) => mark.marks === "exposure").map(({ frame }) => frame)).toEqual(
      frames.map((_, i) => i),
    );
    const filter = marks.find((mark) => mark.marks === "filter_density");
    expect(filter).toMatchObject({ verdict: "less", reason: { code: "mark_filter_differs" } });
    expect(filter?.measured.likely).toBeLessThan(filter?.predicted.likely ?? 0);
  });

  it("see more light where the cards are brighter, and the same water", () => {
    const brighter = frames.map((frame) => ({ ...frame, iso: frame.iso / 8 }));
    const [before, after] = [marksOf(scene, frames), marksOf(scene, brighter)];
    before.forEach((mark, i) => {
      const other = after[i];
      if (mark.marks === "exposure") {
        expect((other?.measured.likely ?? 0) - mark.measured.likely).toBeCloseTo(3, 6);
        expect(other?.verdict).toBe("more");
      } else expect(other?.measured.likely).toBeCloseTo(mark.measured.likely, 6);
    });
  });

  it("are refused of cards that no water fits: light that grows with depth", () => {
    const grown = frames.map((frame) => ({ ...frame, iso: frame.iso / 2 ** frame.depth_m }));
    expect(() => marksOf(scene, grown)).toThrow(/card_samples/);
  });

  it("take what another camera shows for that, and not for scatter of the readings", () => {
    const truths = Array.from({ length: 6 }, (_, seed) => truthOf(20_000 + seed));
    const squares = truths.map((truth) => {
      const bare = new Hours(withoutFilter(truth.scene));
      const samples = truth.frames
        .filter((frame) => !frame.through_filter)
        .map((frame) => sampleOf(frame, bare));
      return fittedWater(bare.start, samples).fit.noise_ln ** 2;
    });
    // Readings were drawn with 0.025; cameras, which differ, would make some 0.05 of it.
    const noise = Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
    expect(noise).toBeGreaterThan(0.018);
    expect(noise).toBeLessThan(0.034);
  });

  it("hold what is right about as often as they say (the long form is coverage.prove.ts)", () => {
    // Fixed seeds: the same dives each time. Of six dives, whose cards err together, the share is right to a tenth or two.
    const all = Object.values(coverageOver(Array.from({ length: 6 }, (_, seed) => seed)));
    const count = all.reduce((sum, one) => sum + one.count, 0);
    const share = all.reduce((sum, one) => sum + one.measured * one.count, 0) / count;
    expect(share).toBeGreaterThan(0.6);
    expect(share).toBeLessThan(0.95);
  });
});

it("two figures agree where what is between them may be nothing", () => {
  const about = (likely: number, by: number) => ({ low: likely - by, likely, high: likely + by });
  expect(agrees(about(1, 0.3), about(1.4, 0.3))).toBe(true);
  expect(agrees(about(1, 0.3), about(1.5, 0.3))).toBe(false);
  expect(agrees(about(1, 0), about(0.8, 0.3))).toBe(true);
  expect(agrees(about(1, 0), about(0.6, 0.3))).toBe(false);
});
