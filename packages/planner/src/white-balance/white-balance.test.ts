import {
  atNight,
  daylightScene,
  HARBOUR_WALL_AFTERNOON,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  REEF_WITH_LAMPS,
  TWO_LAMPS,
} from "@sunfathom/fixtures/scenes";
import { numberIn, type Row, readTable } from "@sunfathom/fixtures/tables";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import { cardDaylightAt } from "../light/daylight-at-depth.js";
import { underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { whiteBalance } from "./white-balance.js";

const lookup = (rows: readonly Row[], key: string) =>
  new Map(rows.map((row) => [numberIn(row, "wavelength_nm"), numberIn(row, key)]));
const sensor = readTable("sensor_rgb_mean");
/** Columns of the table and the height of each channel: the table's peaks are 1, what they stand for is from memory. */
const CHANNELS = { red: ["mean_R", 0.75], green: ["mean_G", 1], blue: ["mean_B", 0.85] } as const;
/** The sensor sees nothing outside 400 to 720 nm. */
const NM = Array.from({ length: 65 }, (_, i) => 400 + 5 * i);

/** Gains of the channels for a light given by wavelength, the smallest being 1: from the published sensor table alone. */
function gainsFor(light: (nm: number) => number): Record<keyof typeof CHANNELS, number> {
  const sums = Object.values(CHANNELS).map(([key, height]) => {
    const sensitivity = lookup(sensor, key);
    return NM.reduce((sum, nm) => sum + height * light(nm) * (sensitivity.get(nm) ?? 0), 0);
  });
  const [red, green, blue] = sums.map((s) => Math.max(...sums) / s);
  return { red, green, blue };
}

describe("the gains that make a card neutral", () => {
  it("are, for lamps alone, those of the lamps' light through the water, worked out from the published tables (IB, 1.8 m)", () => {
    // Pope & Fry 1997; Zhang, Hu & He 2009; scattering as fitted to Williamson & Hollins 2022; half of it lost on short paths.
    const [depth] = whiteBalance(NIGHT_WRECK).depths;
    const world = underwater(conditionsOf(NIGHT_WRECK), NOMINAL);
    const aw = lookup(readTable("water_absorption_pope_fry_1997"), "a_w_per_m");
    const b4 = lookup(
      readTable("cie_led_illuminants_5nm").filter((row) => row["illuminant"] === "LED-B4"),
      "relative_power",
    );
    const b5 = lookup(
      readTable("cie_led_illuminants_5nm").filter((row) => row["illuminant"] === "LED-B5"),
      "relative_power",
    );
    const V = lookup(readTable("cie_luminous_efficiency_1nm"), "V_photopic_1924");
    const lumen = (led: Map<number, number>) =>
      [...led].reduce((sum, [nm, power]) => sum + power * (V.get(nm) ?? 0), 0);
    // 5600 K lies between LED-B4 (5109 K) and LED-B5 (6598 K) in mired.
    const share = (1e6 / 5109 - 1e6 / 5600) / (1e6 / 5109 - 1e6 / 6598);
    const lamp = (nm: number) =>
      ((1 - share) * (b4.get(nm) ?? 0)) / lumen(b4) + (share * (b5.get(nm) ?? 0)) / lumen(b5);
    // The path's attenuation is tested by hand in mixed-light; here it must at least hold pure water.
    const path = (nm: number) => world.path_per_m[(nm - 380) / 5];
    for (const nm of NM) expect(path(nm)).toBeGreaterThanOrEqual((aw.get(nm) ?? Number.NaN) - 1e-12);
    const byHand = gainsFor((nm) => lamp(nm) * Math.exp(-path(nm) * 1.8));
    expect(depth.red_gain.likely).toBeCloseTo(byHand.red, 2);
    expect(depth.green_gain.likely).toBeCloseTo(byHand.green, 2);
    expect(depth.blue_gain.likely).toBeCloseTo(byHand.blue, 2);
    expect(Math.min(byHand.red, byHand.green, byHand.blue)).toBe(1);
  });

  it("are, in daylight at 8 m in 3C, those of the light on the subject through the water to the camera, summed over the sensor table", () => {
    const scene = daylightScene("3C", 50, 8);
    const [depth] = whiteBalance(scene).depths;
    const world = underwater(conditionsOf(scene), NOMINAL);
    const onSubject = cardDaylightAt(world, 8);
    const byHand = gainsFor((nm) => {
      const i = (nm - 380) / 5;
      return onSubject[i] * Math.exp(-world.path_per_m[i] * scene.subject_distance_m);
    });
    for (const channel of ["red", "green", "blue"] as const) {
      expect(depth[`${channel}_gain`].likely / byHand[channel]).toBeCloseTo(1, 3);
    }
    // Green is the strongest channel in green water, and red needs most.
    expect(depth.green_gain.likely).toBe(1);
    expect(depth.red_gain.likely).toBeGreaterThan(depth.blue_gain.likely);
  });

  it("grow with depth in red, in blue water and in green", () => {
    for (const scene of [OUTER_REEF_MORNING, HARBOUR_WALL_AFTERNOON]) {
      const { depths } = whiteBalance(scene);
      for (let i = 1; i < depths.length; i++) {
        expect(depths[i].red_gain.likely).toBeGreaterThan(depths[i - 1].red_gain.likely);
      }
    }
  });

  it("do not depend on how bright the lamps are where they are the only light, nor on depth", () => {
    const gains = (scene: Scene) => {
      const [{ red_gain, green_gain, blue_gain }] = whiteBalance(scene).depths;
      return [red_gain.likely, green_gain.likely, blue_gain.likely];
    };
    const bright = { ...NIGHT_WRECK, lamps: [{ ...TWO_LAMPS, flux_lm: 40000 }] };
    const deep = { ...NIGHT_WRECK, min_depth_m: 40, max_depth_m: 40 };
    for (const other of [bright, deep]) {
      gains(other).forEach((gain, k) => {
        expect(gain).toBeCloseTo(gains(NIGHT_WRECK)[k], 9);
      });
    }
  });

  it("do not depend on the level of daylight: its doubt moves none of them", () => {
    const { uncertainty } = whiteBalance(daylightScene("IB", 45, 10));
    expect(uncertainty.length).toBeGreaterThan(0);
    expect(uncertainty.map((u) => u.code)).not.toContain("daylight_level");
    // The share that falls on the subject is taken as grey in its doubt.
    expect(uncertainty.map((u) => u.code)).not.toContain("upright_share");
  });
});

describe("the camera's reach", () => {
  it("where it ends, the answer says by how many stops and what cast stays, and the reason names the depth", () => {
    const { depths, reasons, procedure } = whiteBalance(daylightScene("II", 45, 2, 20));
    const out = depths.filter((d) => !d.in_reach);
    expect(out.length).toBeGreaterThan(0);
    for (const { short_of_reach_stops, cast_left_delta_e00 } of out) {
      expect(short_of_reach_stops).toBeGreaterThan(0);
      expect(cast_left_delta_e00).toBeGreaterThan(0);
    }
    for (const d of depths.filter(({ in_reach }) => in_reach))
      expect(d.cast_left_delta_e00).toBeLessThan(1.5);
    const reason = reasons.find((r) => r.code === "balance_falls_short");
    expect(reason?.parameters).toMatchObject({ depth_m: out[out.length - 1].depth_m });
    expect(procedure).toContainEqual({ code: "out_of_reach", parameters: { depth_m: out[0].depth_m } });
  });

  it("grows with the camera's limits, and what is left then shrinks", () => {
    const scene = daylightScene("IB", 45, 15);
    const [narrow] = whiteBalance(scene).depths;
    const [wide] = whiteBalance({ ...scene, white_balance_max_duv: 0.04 }).depths;
    expect(narrow.in_reach).toBe(false);
    expect(wide.cast_left_delta_e00).toBeLessThan(narrow.cast_left_delta_e00);
    // What the light asks for does not change.
    expect(wide.red_gain).toEqual(narrow.red_gain);
  });
});

describe("where to balance again", () => {
  const range = fc
    .tuple(fc.double({ min: 1, max: 15, noNaN: true }), fc.double({ min: 1, max: 15, noNaN: true }))
    .map(([from, length]) => ({ from, to: from + length }));

  it("lies inside the range, in order, going down and coming up, and costs no more balances at a larger tolerance", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("I", "IB", "II", "III", "1C", "3C", "5C", "7C"),
        range,
        fc.integer({ min: 2, max: 12 }),
        (type, { from, to }, tolerance) => {
          const at = (balance_tolerance_delta_e00: number) =>
            whiteBalance({ ...daylightScene(type, 50, from, to), balance_tolerance_delta_e00 });
          const tight = at(tolerance);
          const { balance_depths_descending_m: down, balance_depths_ascending_m: up } = tight;
          expect(Math.abs(down[0] - from)).toBeLessThan(1);
          expect(Math.abs(up[0] - to)).toBeLessThan(1);
          for (const depths of [down, [...up].reverse()]) {
            expect(depths).toEqual([...depths].sort((a, b) => a - b));
            expect(Math.min(...depths)).toBeGreaterThan(from - 1);
            expect(Math.max(...depths)).toBeLessThanOrEqual(to + 1e-9);
          }
          const loose = at(tolerance * 2);
          expect(loose.balance_depths_descending_m.length).toBeLessThanOrEqual(down.length);
          expect(loose.balance_depths_ascending_m.length).toBeLessThanOrEqual(up.length);
        },
      ),
      { seed: 4, numRuns: 12 },
    );
  });

  it("one depth needs one balance", () => {
    const answer = whiteBalance(daylightScene("IB", 45, 10));
    expect(answer.balance_depths_descending_m).toEqual([10]);
    expect(answer.balance_depths_ascending_m).toEqual([10]);
  });

  it("is nowhere below the depth at which a new balance would do little better, for want of reach", () => {
    const { balance_depths_descending_m, depths } = whiteBalance(daylightScene("IB", 45, 5, 30));
    const lastInReach = Math.max(...depths.filter((d) => d.in_reach).map((d) => d.depth_m), 5);
    expect(Math.max(...balance_depths_descending_m)).toBeLessThan(lastInReach + 10);
  });
});

describe("the kelvin setting for lamps", () => {
  it("leaves a cast that shrinks to nothing with the way through water", () => {
    const left = (metres: number) =>
      whiteBalance({
        ...NIGHT_WRECK,
        subject_distance_m: metres,
        lamps: [{ ...TWO_LAMPS, distance_m: metres }],
      }).lamp_kelvin_leaves_delta_e00?.likely ?? Number.NaN;
    const casts = [1.6, 0.8, 0.4, 0.1, 0.01, 0.001].map(left);
    for (let i = 1; i < casts.length; i++) expect(casts[i]).toBeLessThan(casts[i - 1]);
    expect(casts[0]).toBeGreaterThan(5);
    expect(casts[5]).toBeLessThan(0.05);
  });

  it("counts the way to the subject and the way back alike: 0.5 and 1.3 m leave what 1.3 and 0.5 m do", () => {
    const left = (there: number, back: number) =>
      whiteBalance({
        ...NIGHT_WRECK,
        subject_distance_m: back,
        lamps: [{ ...TWO_LAMPS, distance_m: there }],
      }).lamp_kelvin_leaves_delta_e00?.likely;
    expect(left(0.5, 1.3)).toBeCloseTo(left(1.3, 0.5) ?? Number.NaN, 9);
    expect(left(0.5, 1.3)).toBeGreaterThan((left(0.5, 0.5) ?? Number.NaN) + 1);
  });

  it("is the lamps' own temperature, and is absent where daylight leads", () => {
    const { lamp_kelvin_setting_K, method } = whiteBalance(NIGHT_WRECK);
    expect(method).toBe("card_at_lamp_distance");
    expect(Math.abs((lamp_kelvin_setting_K ?? 0) - 5600)).toBeLessThan(50);
    for (const scene of [REEF_WITH_LAMPS, OUTER_REEF_MORNING]) {
      const answer = whiteBalance(scene);
      expect(answer.method).toBe("card");
      expect(answer).not.toHaveProperty("lamp_kelvin_setting_K");
    }
  });

  it("no filter on the lens is needed where lamps are the only light, and depth does not matter (common practice, no published source)", () => {
    const { balance_depths_descending_m } = whiteBalance({
      ...atNight(daylightScene("3C", 45, 5, 30)),
      lamps: [TWO_LAMPS],
    });
    expect(balance_depths_descending_m).toEqual([5]);
  });
});

describe("without light", () => {
  it("is refused with what to change", () => {
    const dark = () => whiteBalance(atNight(daylightScene("IB", 45, 10)));
    expect(dark).toThrow(SceneProblem);
    expect(dark).toThrow(expect.objectContaining({ code: "no_light" }));
  });
});
