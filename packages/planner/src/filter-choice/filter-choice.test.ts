import { atNight, gradedScene, TWO_LAMPS, withKd } from "@sunfathom/fixtures/scenes";
import { numberIn, readTable } from "@sunfathom/fixtures/tables";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import type { KdSample, Scene } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import { GRID } from "./candidates.js";
import { cheapest, worthwhileFor } from "./decide.js";
import { filterChoice } from "./filter-choice.js";
import { judge } from "./merits.js";

const rows = readTable("jerlov_1976_kd");
const kdOf = (type: string): KdSample[] =>
  rows
    .filter((row) => row["water_type"] === type)
    .map((row) => ({ wavelength_nm: numberIn(row, "wavelength_nm"), kd_per_m: numberIn(row, "Kd_per_m") }));
/** What a filter must gain where a grade follows. */
const WORTHWHILE = worthwhileFor("matched");
const twentieths = Array.from({ length: 34 }, (_, i) => Math.round((i + 1) * 5) / 100);
const TYPES = ["I", "IA", "IB", "II", "III", "1C", "3C", "5C", "7C", "9C"];

describe("the choice of a filter", () => {
  it("does not know names: the same attenuation as measured samples gives the same figures, type by type", () => {
    for (const [i, type] of TYPES.entries()) {
      const scene = gradedScene(type, 30 + 5 * i, 3 + i);
      const named = filterChoice(scene);
      const measured = filterChoice(withKd(scene, kdOf(type)));
      expect(measured.filter_kind).toBe(named.filter_kind);
      expect(measured.filter_density).toBe(named.filter_density);
      expect(measured.depths).toEqual(named.depths);
      expect(measured.colour_error_delta_e00.likely).toBe(named.colour_error_delta_e00.likely);
    }
  });

  it.each([
    { sun: 45, from: 8, to: 8 },
    { sun: 60, from: 6, to: 6 },
  ])(
    "turns from red to magenta exactly once as Kd is blended from IB to 3C (sun $sun, $from to $to m)",
    (range) => {
      const [blue, green] = [kdOf("IB"), kdOf("3C")];
      const kinds = Array.from({ length: 11 }, (_, step) => {
        const share = step / 10;
        const blend = blue.map(({ wavelength_nm, kd_per_m }, i) => ({
          wavelength_nm,
          kd_per_m: kd_per_m ** (1 - share) * green[i].kd_per_m ** share,
        }));
        return filterChoice(withKd(gradedScene("", range.sun, range.from, range.to), blend)).filter_kind;
      });
      expect(kinds[0]).toBe("red");
      expect(kinds[10]).toBe("magenta");
      expect(kinds.filter((kind, i) => i > 0 && kind !== kinds[i - 1])).toEqual(["magenta"]);
    },
  );

  const FINE = [
    GRID[0],
    ...(["red", "magenta"] as const).flatMap((kind) => twentieths.map((density) => ({ kind, density }))),
  ];

  /** Best candidate at one depth, in steps of 0.05, for another state of what is not known. */
  function bestUnder(scene: Scene, change: Partial<Nuisance>) {
    const judged = judge(conditionsOf(scene), { ...NOMINAL, ...change }, [scene.min_depth_m], FINE);
    return cheapest(
      judged.map(({ candidate, merits }) => ({ candidate, delta_e00: merits[0].delta_e00 })),
      WORTHWHILE,
    );
  }

  it.each([gradedScene("IB", 45, 15), gradedScene("1C", 45, 6)])(
    "moves with the sensor: one whose red channel sees more green and blue asks for a denser filter ($water_type)",
    (scene) => {
      const [less, more] = [-1.28, 1.28].map((crosstalkSd) => bestUnder(scene, { crosstalkSd }));
      expect(more.candidate.kind).toBe(less.candidate.kind);
      expect(more.candidate.density ?? 0).toBeGreaterThan(less.candidate.density ?? 0);
      expect(more.delta_e00).toBeGreaterThan(less.delta_e00 + 0.1);
    },
  );

  it.each([gradedScene("IB", 45, 15), gradedScene("3C", 50, 6)])(
    "moves with the filter's curve: an edge elsewhere or a wider band asks for another density ($water_type)",
    (scene) => {
      const nominal = bestUnder(scene, {});
      for (const filterShape of [{ shift_nm: -25 }, { widthScale: 2 }]) {
        const other = bestUnder(scene, { filterShape });
        expect(other.candidate).not.toEqual(nominal.candidate);
        expect(Math.abs(other.delta_e00 - nominal.delta_e00)).toBeGreaterThan(0.05);
      }
    },
  );

  it("moves with the camera: where the light is short, a camera that may go no higher in ISO mounts less or nothing", () => {
    const scene = gradedScene("3C", 50, 9);
    const free = filterChoice(scene);
    const tied = filterChoice({ ...scene, max_iso: 200, shutter_s: 1 / 400 });
    expect(free.filter_kind).toBe("magenta");
    expect(tied.filter_density ?? 0).toBeLessThan(free.filter_density ?? 0);
  });

  it("does not mount a filter because it is dark: too much light is answered with neutral density beside it", () => {
    const bright: Scene = { ...gradedScene("IB", 70, 1.5), iso: 400, f_number: 5.6 };
    const { filter_kind, neutral_density, reasons } = filterChoice(bright);
    expect(filter_kind).toBe("none");
    expect(neutral_density).toBeGreaterThan(0.5);
    expect(reasons.map((r) => r.code)).toContain("light_is_too_much");
  });

  it("gives finite figures, probabilities and ordered percentiles over a spread of scenes", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...TYPES),
        fc.integer({ min: 10, max: 90 }),
        fc.double({ min: 0.5, max: 30, noNaN: true }),
        fc.boolean(),
        (type, sun, depth, lamps) => {
          const answer = filterChoice({
            ...gradedScene(type, sun, depth),
            lamps: lamps ? [TWO_LAMPS] : [],
          });
          for (const e of [
            answer.colour_error_delta_e00,
            answer.colour_error_without_delta_e00,
            answer.filter_loss_stops,
          ]) {
            expect(e.low).toBeLessThanOrEqual(e.likely);
            expect(e.likely).toBeLessThanOrEqual(e.high);
            expect([e.low, e.likely, e.high].every(Number.isFinite)).toBe(true);
          }
          expect(answer.runner_up.probability_better).toBeGreaterThanOrEqual(0);
          expect(answer.runner_up.probability_better).toBeLessThanOrEqual(0.5 + 1e-6);
          const gain = answer.colour_error_without_delta_e00.likely - answer.colour_error_delta_e00.likely;
          expect(gain).toBeGreaterThanOrEqual(answer.filter_kind === "none" ? 0 : WORTHWHILE);
          expect(answer.uncertainty.reduce((sum, u) => sum + u.share, 0)).toBeLessThanOrEqual(1 + 1e-9);
        },
      ),
      { seed: 20, numRuns: 16 },
    );
  });

  it("is refused where there is no light, and where the sun is too low for the daylight model", () => {
    const dark = () => filterChoice(atNight(gradedScene("IB", 45, 10)));
    expect(dark).toThrow(SceneProblem);
    expect(dark).toThrow(expect.objectContaining({ code: "no_light" }));
    expect(() => filterChoice(gradedScene("IB", 9.9, 10))).toThrow(SceneProblem);
  });
});
