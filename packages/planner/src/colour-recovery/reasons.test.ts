// What is said must be what was computed, and be said where it holds.

import { DARK_AND_GREEN, daylightScene, NIGHT_WRECK } from "@sunfathom/fixtures/scenes";
import { filterTransmittance, listOf, WAVELENGTHS_NM } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { colourRecoveryReasons } from "../../../words/src/en/reasons/colour-recovery.js";
import { models } from "../reference/models.js";
import type { ColourRecoveryAnswer } from "../result/colour-recovery.js";
import type { Scene } from "../scene/scene.js";
import { colourRecovery } from "./colour-recovery.js";
import { recoveryReasons } from "./reasons.js";

const codesOf = ({ reasons }: ColourRecoveryAnswer) => reasons.map(({ code }) => code);
const parametersOf = ({ reasons }: ColourRecoveryAnswer, code: string, nth = 0) =>
  (reasons.filter((reason) => reason.code === code)[nth]?.parameters ?? {}) as Readonly<
    Record<string, number>
  >;
const red = (scene: Scene, filter_density = 0.9): Scene => ({ ...scene, filter_kind: "red", filter_density });
const last = <T>(list: readonly T[]): T => list[list.length - 1];

describe("each reason of what can be recovered", () => {
  it("is told as computed, but for the code values that bands take, which are a judgement", () => {
    const scenes = [
      daylightScene("IB", 50, 5, 40),
      red(daylightScene("IB", 60, 10)),
      red(DARK_AND_GREEN, 0.6),
      NIGHT_WRECK,
    ];
    const told = new Set<string>();
    for (const { code, basis } of scenes.flatMap((scene) => colourRecovery(scene).reasons)) {
      told.add(code);
      const wanted = code === "red_codes" ? "judgement" : "computed";
      expect({ code, basis }).toEqual({ code, basis: wanted });
    }
    expect([...told]).toEqual(
      expect.arrayContaining([...Object.keys(colourRecoveryReasons), "red_not_only_transmitted"]),
    );
  });

  it("on where red ends says of which recording: without a filter first, then with it", () => {
    const answer = colourRecovery(red(daylightScene("IB", 60, 10)));
    expect(codesOf(answer).filter((code) => code === "red_is_gone")).toHaveLength(2);
    expect([0, 1].map((nth) => parametersOf(answer, "red_is_gone", nth)["with_filter"])).toEqual([
      false,
      true,
    ]);
  });
});

describe("the answer on what can be recovered", () => {
  it("rests on the light's sources and its own, all of them listed, none twice", () => {
    const { sources } = colourRecovery(daylightScene("IB", 50, 5));
    const known = models().map(({ id }) => id);
    for (const source of sources) expect(known).toContain(source);
    expect(sources).toEqual(
      expect.arrayContaining(["jerlov_1976", "camera_recording", "port_radiance", "bartlett_1998"]),
    );
    expect(new Set(sources).size).toBe(sources.length);
  });

  it("tells the doubt of red at the deepest depth without a filter: that of a range is the one at its deep end alone", () => {
    // A subject that faces up: which way it faces is doubted as in the middle of a range.
    const shares = (from_m: number, to_m: number) =>
      new Map(
        colourRecovery(
          red({ ...daylightScene("3C", 50, from_m, to_m), subject_facing: "up" }),
        ).uncertainty.map(({ code, share }) => [code, share]),
      );
    const [range, deep, shallow] = [shares(2, 12), shares(12, 12), shares(2, 2)];
    for (const [cause, share] of deep) expect(range.get(cause)).toBeCloseTo(share, 9);
    const apart = [...deep].map(([cause, share]) => Math.abs(share - (shallow.get(cause) ?? 0)));
    expect(Math.max(...apart)).toBeGreaterThan(0.05);
    for (const cause of ["filter_edge", "filter_width"]) expect([...deep.keys()]).not.toContain(cause);
  });

  it("doubts how much red a nominal filter leaves, by its shape, and by what a pixel holds", () => {
    const scene = daylightScene("IB", 60, 10);
    const spreadOf = (change: Partial<Scene>) => {
      const [, best] = colourRecovery({ ...scene, filter_kind: "red", ...change }).depths[0].recordings;
      const { low, high } = best.red_light_signal_to_noise;
      return Math.log2(high / low);
    };
    const curve = listOf(filterTransmittance("red", 0.9)).map((transmittance, i) => ({
      wavelength_nm: WAVELENGTHS_NM[i],
      transmittance,
    }));
    expect(spreadOf({ filter_density: 0.9 })).toBeGreaterThan(spreadOf({ filter_transmittance: curve }));
    const [bare] = colourRecovery(scene).depths[0].recordings;
    const shares = colourRecovery(scene).uncertainty.map(({ code }) => code);
    expect(shares).toContain("full_well");
    expect(bare.red_light_signal_to_noise.low).toBeLessThan(bare.red_light_signal_to_noise.high);
  });

  it("stays finite where a filter lets no red pass at all", () => {
    const none = [400, 580, 581, 780].map((wavelength_nm) => ({
      wavelength_nm,
      transmittance: wavelength_nm <= 580 ? 0.9 : 0,
    }));
    const [, best] = colourRecovery({ ...daylightScene("IB", 50, 5), filter_transmittance: none }).depths[0]
      .recordings;
    const { low, likely, high } = best.red_light_signal_to_noise;
    for (const value of [low, likely, high]) {
      expect(value).toBeGreaterThan(0);
      expect(value).toBeLessThan(1e-3);
    }
    expect(best.red_quality).toBe("gone");
  });
});

describe("the reasons of what can be recovered", () => {
  it("tell what the deepest recording holds of red, in words and codes", () => {
    const answer = colourRecovery(daylightScene("IB", 50, 5, 15));
    const { depth_m, recordings } = last(answer.depths);
    const [bare] = recordings;
    expect(depth_m).toBe(15);
    expect(answer.reasons[0].code).toBe("red_record");
    expect(parametersOf(answer, "red_record")).toEqual({
      depth_m,
      share: bare.red_above_600_nm_share,
      quality: bare.red_quality,
      snr: bare.red_light_signal_to_noise.likely,
    });
    expect(parametersOf(answer, "red_codes")).toEqual({
      depth_m,
      codes_8: bare.red_codes_per_stop_8_bit,
      codes_10: bare.red_codes_per_stop_10_bit,
    });
  });

  it("tell without a filter nothing of one, and where red ends once", () => {
    const answer = colourRecovery(daylightScene("IB", 50, 5));
    expect(answer.depths[0].recordings.map(({ recording }) => recording)).toEqual(["no_filter"]);
    for (const code of ["filter_helps_red", "filter_does_not_help_red", "same_settings_no_gain"]) {
      expect(codesOf(answer)).not.toContain(code);
    }
    expect(codesOf(answer).filter((code) => code === "red_is_gone")).toHaveLength(1);
    expect(parametersOf(answer, "red_is_gone")).toEqual({
      with_filter: false,
      acceptable_m: answer.red_acceptable_to_without_filter_depth_m?.likely,
      gone_m: answer.red_gone_from_without_filter_depth_m?.likely,
    });
    expect(answer).not.toHaveProperty("red_gone_from_with_filter_depth_m");
    expect(answer).not.toHaveProperty("red_acceptable_to_with_filter_depth_m");
  });

  it.each([
    [red(daylightScene("IB", 60, 10)), "filter_helps_red", "filter_does_not_help_red"],
    [red(DARK_AND_GREEN, 0.6), "filter_does_not_help_red", "filter_helps_red"],
  ] as const)(
    "tell whether the filter helps red, and what it gains at the same settings",
    (scene, said, unsaid) => {
      const answer = colourRecovery(scene);
      const [bare, best, same] = answer.depths[0].recordings;
      const without_snr = bare.red_light_signal_to_noise.likely;
      expect(parametersOf(answer, said)).toEqual({
        depth_m: scene.max_depth_m,
        without_snr,
        with_snr: best.red_light_signal_to_noise.likely,
      });
      expect(codesOf(answer)).not.toContain(unsaid);
      expect(parametersOf(answer, "same_settings_no_gain")).toEqual({
        with_snr: same.red_light_signal_to_noise.likely,
        without_snr,
      });
      expect(parametersOf(answer, "red_is_gone", 1)).toEqual({
        with_filter: true,
        acceptable_m: answer.red_acceptable_to_with_filter_depth_m?.likely,
        gone_m: answer.red_gone_from_with_filter_depth_m?.likely,
      });
    },
  );

  it.each([
    [1.06, "acceptable", "filter_helps_red"],
    [1.04, "acceptable", "filter_does_not_help_red"],
    [1.06, "gone", "filter_does_not_help_red"],
    [1.04, "gone", "filter_does_not_help_red"],
  ] as const)(
    "call it help where red is exposed higher by more than a twentieth (a judgement) and not gone: %d times, %s",
    (times, red_quality, said) => {
      const answer = colourRecovery(red(daylightScene("IB", 60, 10)));
      const [{ depth_m, recordings }] = answer.depths;
      const [bare, best, ...more] = recordings;
      const changed = { ...best, red_electrons: times * bare.red_electrons, red_quality };
      const reasons = recoveryReasons({
        ...answer,
        depths: [{ depth_m, recordings: [bare, changed, ...more] }],
      });
      expect(
        reasons
          .map(({ code }) => code)
          .filter((code) => code.endsWith("help_red") || code.endsWith("helps_red")),
      ).toEqual([said]);
    },
  );

  it("tell below the depth to which red is trusted that it is not only transmitted", () => {
    const at = (depth_m: number) => colourRecovery(daylightScene("IB", 45, depth_m));
    const trusted = at(5).red_trusted_to_depth_m ?? Number.NaN;
    expect(parametersOf(at(trusted + 1), "red_not_only_transmitted")).toEqual({ depth_m: trusted });
    expect(codesOf(at(trusted - 1))).not.toContain("red_not_only_transmitted");
  });

  it("tell at night neither where red ends nor how far it is trusted", () => {
    const answer = colourRecovery(NIGHT_WRECK);
    expect(codesOf(answer)).not.toContain("red_is_gone");
    expect(answer).not.toHaveProperty("red_trusted_to_depth_m");
  });
});
