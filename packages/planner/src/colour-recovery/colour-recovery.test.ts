import {
  atNight,
  DARK_AND_GREEN,
  daylightScene,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
} from "@sunfathom/fixtures/scenes";
import { CLEAR } from "@sunfathom/optics";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cameraState } from "../camera/camera-state.js";
import { codesPerStop } from "../camera/recording.js";
import { sensorOf } from "../camera/sensor.js";
import { rawOf, sensorProfile } from "../camera/sensor-profile.js";
import { takeShot } from "../camera/shot.js";
import { conditionsOf } from "../light/conditions.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import type { Recording, RecordingKind } from "../result/colour-recovery.js";
import type { Scene } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { colourRecovery } from "./colour-recovery.js";
import { qualityOf } from "./record-grey.js";

const TYPES = ["I", "IB", "II", "III", "1C", "3C", "5C", "7C", "9C"];
const recordingOf = (scene: Scene, kind: RecordingKind): Recording => {
  const found = colourRecovery(scene).depths[0].recordings.find(({ recording }) => recording === kind);
  if (!found) throw new Error(`no recording ${kind}`);
  return found;
};
const red = (scene: Scene, filter_density = 0.9): Scene => ({ ...scene, filter_kind: "red", filter_density });

describe("what a grey is recorded as, by hand", () => {
  // By night no haze of daylight lies over the grey: what reaches the sensor is the lamps' light alone.
  const worked = () => {
    const [depth] = colourRecovery(NIGHT_WRECK).depths;
    const [record] = depth.recordings;
    const stage = stageAt(underwater(conditionsOf(NIGHT_WRECK), NOMINAL), 15);
    const lux = rawOf(sensorProfile(sensorOf({}, { crosstalkSd: 0 })), stage.subject);
    const electrons = [record.red_electrons, record.green_electrons, record.blue_electrons];
    return { record, stage, lux, electrons, iso: record.iso };
  };

  it("electrons: exposure H = 0.65 L t / N^2 against H_sat = 78 / S (ISO 12232; 0.65 from memory), of 20 000 at ISO 100", () => {
    const { electrons, lux, iso, record } = worked();
    const { f_number, shutter_s } = record;
    electrons.forEach((e, k) => {
      const luminance = (0.18 * lux[k]) / Math.PI;
      const exposure_lx_s = (0.65 * luminance * shutter_s) / f_number ** 2;
      expect(e / (((exposure_lx_s * iso) / 78) * ((20000 * 100) / iso))).toBeCloseTo(1, 9);
    });
  });

  it("a card of 90 % fills the scale in its strongest channel after balance, so a grey of 18 % stands at a fifth", () => {
    const { electrons, stage, lux, iso } = worked();
    const camera = cameraState(NIGHT_WRECK, NOMINAL);
    const { balance, direct } = takeShot(stage, CLEAR, camera);
    const values = electrons.map((e, k) => (e * balance.gains[k]) / ((20000 * 100) / iso));
    expect(Math.max(...values)).toBeCloseTo(0.18 / 0.9, 6);
    expect(direct[0]).toBeCloseTo(lux[0], 9);
  });

  it("signal over noise: electrons over the root of electrons, 3 read noise squared and code steps of BT.709, four pixels averaged", () => {
    const { electrons, stage, record, iso } = worked();
    const camera = cameraState(NIGHT_WRECK, NOMINAL);
    const { balance } = takeShot(stage, CLEAR, camera);
    const capacity = (20000 * 100) / iso;
    const snr = [record.red_signal_to_noise, record.green_signal_to_noise, record.blue_signal_to_noise];
    electrons.forEach((e, k) => {
      const gain = balance.gains[k];
      const value = (gain * e) / capacity;
      // Rounding to a code has a variance of a twelfth of the step; BT.709: V = 1.099 L^0.45 - 0.099.
      const step = 1 / (255 * 1.099 * 0.45 * value ** -0.55);
      const variance = ((gain / capacity) ** 2 * (e + 9) + step ** 2 / 12) / 4;
      expect(snr[k]).toBeCloseTo(value / Math.sqrt(variance), 6);
    });
  });

  it("gain on a channel leaves its signal over noise alone: at 16 bits it is that of the electrons (formula of shot and read noise)", () => {
    const fine = recordingOf({ ...NIGHT_WRECK, bits: 16 }, "no_filter");
    const e = fine.red_electrons;
    expect(fine.red_signal_to_noise / ((2 * e) / Math.sqrt(e + 9))).toBeCloseTo(1, 3);
  });
});

describe("code values to a stop", () => {
  // ITU-R BT.709: V = 4.5 L below 0.018, else 1.099 L^0.45 - 0.099.
  const bt709 = (L: number) => (L < 0.018 ? 4.5 * L : 1.099 * L ** 0.45 - 0.099);

  it.each([
    [0.18, 8],
    [0.18, 10],
    [0.05, 12],
    [0.7, 8],
    [0.005, 10],
  ])("around %d in %d bits are those of BT.709, to the curve of half a stop either way", (linear, bits) => {
    const byHand = (2 ** bits - 1) * (bt709(linear * Math.SQRT2) - bt709(linear / Math.SQRT2));
    // The slope times ln 2 against the difference: (2^(p/2) - 2^(-p/2)) / (p ln 2) = 1 + (p ln 2)^2 / 24, 0.4 % for p = 0.45, 2 % for p = 1.
    expect(codesPerStop(linear, bits, "rec709") / byHand).toBeGreaterThan(0.975);
    expect(codesPerStop(linear, bits, "rec709") / byHand).toBeLessThanOrEqual(1);
  });

  it("go with the bits, 255 to 1023 to 4095, and fall with depth", () => {
    const { depths } = colourRecovery(OUTER_REEF_MORNING);
    depths.forEach(({ recordings: [bare] }, i) => {
      expect(bare.red_codes_per_stop_10_bit / bare.red_codes_per_stop_8_bit).toBeCloseTo(1023 / 255, 9);
      expect(bare.red_codes_per_stop_12_bit / bare.red_codes_per_stop_8_bit).toBeCloseTo(4095 / 255, 9);
      const above = depths[i - 1]?.recordings[0];
      if (above) expect(bare.red_codes_per_stop_8_bit).toBeLessThan(above.red_codes_per_stop_8_bit);
    });
  });
});

describe("what is enough", () => {
  it("ISO 12232 calls 40 excellent and 10 acceptable; red against luminance counts 0.279 in noise power (from memory)", () => {
    const weight = Math.sqrt(0.279);
    expect(qualityOf(40 * weight + 1e-9)).toBe("excellent");
    expect(qualityOf(40 * weight - 1e-9)).toBe("acceptable");
    expect(qualityOf(10 * weight - 1e-9)).toBe("poor");
    expect(qualityOf(1)).toBe("poor");
    expect(qualityOf(1 - 1e-9)).toBe("gone");
  });
});

describe("what a filter does and does not do", () => {
  it("at the same settings it never adds red electrons, nor electrons of red light, whatever its kind (law)", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...TYPES),
        fc.constantFrom("red" as const, "magenta" as const, "neutral" as const),
        fc.double({ min: 0.1, max: 2, noNaN: true }),
        fc.double({ min: 1, max: 20, noNaN: true }),
        (type, filter_kind, filter_density, depth) => {
          const scene = { ...daylightScene(type, 50, depth), filter_kind, filter_density };
          const { recordings } = colourRecovery(scene).depths[0];
          const [bare, , same] = recordings;
          expect(same.recording).toBe("filter_same_settings");
          expect([same.iso, same.f_number, same.shutter_s]).toEqual([
            bare.iso,
            bare.f_number,
            bare.shutter_s,
          ]);
          expect(same.red_electrons).toBeLessThan(bare.red_electrons);
          expect(same.red_electrons * same.red_above_600_nm_share).toBeLessThan(
            bare.red_electrons * bare.red_above_600_nm_share,
          );
        },
      ),
      { seed: 6, numRuns: 10 },
    );
  });

  it.each(TYPES)("%s: a red one raises the share of the red signal that is red light", (type) => {
    const [bare, best] = colourRecovery(red(daylightScene(type, 50, 6))).depths[0].recordings;
    expect(best.red_above_600_nm_share).toBeGreaterThan(bare.red_above_600_nm_share);
  });

  it("where light is to spare, red is exposed higher behind it and lasts deeper (blue water, high sun)", () => {
    const answer = colourRecovery(red(daylightScene("IB", 60, 10)));
    const [bare, best] = answer.depths[0].recordings;
    expect(best.red_light_signal_to_noise.likely).toBeGreaterThan(
      1.2 * bare.red_light_signal_to_noise.likely,
    );
    expect(answer.reasons.map((r) => r.code)).toContain("filter_helps_red");
    expect(answer.red_acceptable_to_with_filter_depth_m?.likely).toBeGreaterThan(
      answer.red_acceptable_to_without_filter_depth_m?.likely ?? Number.NaN,
    );
  });

  it("where light is short it lets nothing be exposed higher, against the folklore: what is left is what it keeps out", () => {
    const { depths, reasons } = colourRecovery(red(DARK_AND_GREEN, 0.6));
    const [bare, best, same] = depths[0].recordings;
    expect(reasons.map((r) => r.code)).toContain("filter_does_not_help_red");
    expect([best.iso, best.f_number]).toEqual([bare.iso, bare.f_number]);
    expect({ ...best, recording: "" }).toEqual({ ...same, recording: "" });
    expect(best.red_electrons).toBeLessThan(bare.red_electrons);
    expect([bare.red_quality, best.red_quality]).toEqual(["gone", "gone"]);
  });

  it("a neutral one, which keeps red out as well, costs red where light is short, and the reason says so", () => {
    const neutral = { filter_kind: "neutral" as const, filter_density: 0.6 };
    const { reasons, depths } = colourRecovery({ ...DARK_AND_GREEN, ...neutral });
    const [bare, best] = depths[0].recordings;
    expect(best.red_light_signal_to_noise.likely).toBeLessThan(bare.red_light_signal_to_noise.likely);
    expect(reasons.map((r) => r.code)).toContain("filter_does_not_help_red");
  });
});

describe("where the scene is too bright for the settings", () => {
  const fixed = (f_number: number): Scene => ({ ...daylightScene("I", 70, 2), iso: 800, f_number });

  it("keeps the aperture that the scene fixes and names the neutral density that the light asks for instead", () => {
    const record = recordingOf(fixed(8), "no_filter");
    expect([record.iso, record.f_number, record.shutter_s]).toEqual([800, 8, fixed(8).shutter_s]);
    expect(record.neutral_density).toBeGreaterThan(0.3);
  });

  it("which records what an aperture closed by as many stops records (ISO 2720: exposure goes with 1 / N^2)", () => {
    const behind = recordingOf(fixed(8), "no_filter");
    const stops = (behind.neutral_density ?? 0) / Math.log10(2);
    const closed = recordingOf(fixed(8 * 2 ** (stops / 2)), "no_filter");
    expect(closed).not.toHaveProperty("neutral_density");
    for (const key of [
      "red_electrons",
      "green_electrons",
      "blue_electrons",
      "red_signal_to_noise",
    ] as const) {
      expect(closed[key] / behind[key]).toBeCloseTo(1, 9);
    }
  });

  it("closes the aperture as far as the lens goes before it asks for any", () => {
    const { f_number: _, ...free } = fixed(8);
    const record = recordingOf({ ...free, max_f_number: 16 }, "no_filter");
    expect(record.f_number).toBeGreaterThan(8);
    expect(record.f_number).toBeLessThanOrEqual(16);
  });

  it("keeps that density in the recording at the same settings, and needs less of it behind a filter", () => {
    const { recordings } = colourRecovery(red(fixed(8), 0.6)).depths[0];
    const [bare, best, same] = recordings;
    expect(same.neutral_density).toBe(bare.neutral_density);
    expect(best.neutral_density ?? 0).toBeLessThan(bare.neutral_density ?? 0);
  });
});

it("at each depth of a range records what that depth alone does, with and without the filter, and in as much doubt", () => {
  // A subject that faces up: which way it faces is doubted as in the middle of a range.
  const at = (from_m: number, to_m: number) =>
    colourRecovery(red({ ...daylightScene("IB", 50, from_m, to_m), subject_facing: "up" }, 0.6)).depths;
  for (const { depth_m, recordings } of at(4, 16)) {
    const [alone] = at(depth_m, depth_m);
    recordings.forEach(({ recording, red_electrons, red_light_signal_to_noise: { low, high } }, i) => {
      const other = alone.recordings[i];
      expect(recording).toBe(other.recording);
      expect(red_electrons / other.red_electrons).toBeCloseTo(1, 9);
      expect(low / other.red_light_signal_to_noise.low).toBeCloseTo(1, 9);
      expect(high / other.red_light_signal_to_noise.high).toBeCloseTo(1, 9);
    });
  }
});

describe("where red ends", () => {
  it.each(TYPES)(
    "%s: acceptable red ends before all red does, with percentiles in order, with a filter and without",
    (type) => {
      const answer = colourRecovery(red(daylightScene(type, 50, 5)));
      const pairs = [
        [answer.red_acceptable_to_without_filter_depth_m, answer.red_gone_from_without_filter_depth_m],
        [answer.red_acceptable_to_with_filter_depth_m, answer.red_gone_from_with_filter_depth_m],
      ];
      for (const [acceptable, gone] of pairs) {
        if (!acceptable || !gone) throw new Error("a depth is missing");
        expect(acceptable.likely).toBeLessThan(gone.likely);
        for (const e of [acceptable, gone]) {
          expect(e.low).toBeLessThanOrEqual(e.likely);
          expect(e.likely).toBeLessThanOrEqual(e.high);
        }
      }
    },
  );

  it("is where the grey there says so itself", () => {
    const at = (depth: number) => recordingOf(daylightScene("IB", 50, depth), "no_filter").red_quality;
    const answer = colourRecovery(daylightScene("IB", 50, 5));
    const acceptable = answer.red_acceptable_to_without_filter_depth_m?.likely ?? Number.NaN;
    const gone = answer.red_gone_from_without_filter_depth_m?.likely ?? Number.NaN;
    expect([at(acceptable * 0.98), at(acceptable * 1.02)]).toEqual(["acceptable", "poor"]);
    expect([at(gone * 0.98), at(gone * 1.02)]).toEqual(["poor", "gone"]);
  });

  it("what the sensor never recorded cannot be brought back: below, quality is gone and the reason says so (common practice)", () => {
    for (const type of ["IB", "3C"]) {
      const answer = colourRecovery(daylightScene(type, 50, 40));
      expect(answer.depths[0].recordings[0].red_quality).toBe("gone");
      expect(answer.reasons.map(({ code }) => code)).toContain("red_is_gone");
    }
  });

  it("in the clearest water elastic red is trusted to roughly 20 m (from memory of the literature on inelastic scattering)", () => {
    const trusted = TYPES.map(
      (type) => colourRecovery(daylightScene(type, 50, 5)).red_trusted_to_depth_m ?? 0,
    );
    expect(trusted[0]).toBeGreaterThan(15);
    expect(trusted[0]).toBeLessThan(30);
  });

  it("has no depth where there is no daylight, and is refused where there is no light", () => {
    expect(colourRecovery(NIGHT_WRECK)).not.toHaveProperty("red_gone_from_without_filter_depth_m");
    expect(() => colourRecovery(atNight(daylightScene("IB", 45, 10)))).toThrow(SceneProblem);
  });
});
