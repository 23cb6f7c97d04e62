import {
  BRIGHT_REEF,
  DARK_AND_GREEN,
  daylightScene,
  HARBOUR_WALL_AFTERNOON,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  REEF_IN_THE_SHALLOWS,
} from "@sunfathom/fixtures/scenes";
import { mersenne } from "pure-rand/generator/mersenne";
import { describe, expect, it } from "vitest";
import type { Scene } from "../scene/scene.js";
import { RED_SQUARES, type RedWay, redInPost, TRUE_SQUARES } from "./red-in-post.js";

function figuresOf(scene: Scene) {
  const generator = mersenne(7);
  return redInPost(scene, () => (generator.next() >>> 0) / 2 ** 32);
}
/** Mean of some squares. */
const mean = (squares: RedWay["squares"]) =>
  [0, 1, 2].map((k) => squares.reduce((sum, colour) => sum + (colour[k] ?? 0), 0) / squares.length);
const redOf = ({ squares }: RedWay, columns: number) =>
  squares.filter(
    (_, i) => i < RED_SQUARES.columns * RED_SQUARES.red_rows && i % RED_SQUARES.columns < columns,
  );

describe("red pushed afterwards", () => {
  const reef = figuresOf(OUTER_REEF_MORNING);
  const [bare, darker, brighter, filtered] = reef.ways;

  it("is the same red in each picture that holds it: in the mean, that of the patch", () => {
    const truth = mean(reef.truth.slice(0, TRUE_SQUARES.columns / 11));
    for (const way of [bare, darker, filtered]) {
      for (const [k, value] of mean(redOf(way, 4)).entries())
        expect(Math.abs(value - (truth[k] ?? 0)), `${k}`).toBeLessThan(0.05);
    }
  });

  // Photons come at random (Poisson): with so many times more of them, signal over noise rises by the root, where reading adds its own
  // noise by more, up to the ratio itself.
  it("gains by light as the statistics of photons have it", () => {
    const moreLight = 2 ** (brighter.off_by_stops - Math.log2(brighter.settings.iso / bare.settings.iso));
    const gain = brighter.red_signal_to_noise / bare.red_signal_to_noise;
    expect(gain).toBeGreaterThan(0.9 * Math.sqrt(moreLight));
    expect(gain).toBeLessThan(moreLight);
  });

  it("gains nothing by a filter at the same settings, and all that it does by the exposure that the filter allows", () => {
    expect(darker.settings).toEqual(bare.settings);
    expect(darker.off_by_stops).toBeLessThan(-2);
    expect(darker.red_signal_to_noise).toBeLessThanOrEqual(bare.red_signal_to_noise);
    expect(filtered.off_by_stops).toBeCloseTo(0, 9);
    expect(filtered.red_signal_to_noise).toBeGreaterThan(3 * bare.red_signal_to_noise);
    expect(filtered.red_steps).toBeGreaterThan(2 * bare.red_steps);
  });

  it("cannot be had by exposing longer without a filter: white runs over, and is no longer white", () => {
    expect(brighter.is_clipped).toBe(true);
    expect([bare, darker, filtered].some(({ is_clipped }) => is_clipped)).toBe(false);
    const white = (way: RedWay) => mean(way.squares.slice(RED_SQUARES.columns * RED_SQUARES.red_rows));
    const spread = (colour: number[]) => Math.max(...colour) - Math.min(...colour);
    expect(spread(white(brighter))).toBeGreaterThan(0.2);
    expect(spread(white(filtered))).toBeLessThan(0.02);
  });
});

it.each([
  ["cleaner_through_filter", OUTER_REEF_MORNING],
  ["cleaner_through_filter", HARBOUR_WALL_AFTERNOON],
  ["clean_without", REEF_IN_THE_SHALLOWS],
  ["clean_without", NIGHT_WRECK],
  ["alike", DARK_AND_GREEN],
  ["gone", { ...daylightScene("7C", 30, 18), max_iso: 800 }],
  // Haze is all that is recorded, and far below the least code value.
  ["gone", { ...daylightScene("9C", 60, 40), overhead: "wreck", daylight_open_share: 0.0001 }],
] as const)("comes down to %s", (verdict, scene) => {
  expect(figuresOf(scene).verdict).toBe(verdict);
});

it("draws what it draws by the numbers that it is given, and nothing else", () => {
  expect(figuresOf(BRIGHT_REEF)).toEqual(figuresOf(BRIGHT_REEF));
});

it("counts the neutral density that too much light takes", () => {
  const [bare, , , filtered] = figuresOf(BRIGHT_REEF).ways;
  expect(bare.neutral_density).toBeGreaterThan(filtered.neutral_density ?? 0);
  expect([bare.off_by_stops, filtered.off_by_stops]).toEqual([0, 0].map((v) => expect.closeTo(v, 9)));
});
