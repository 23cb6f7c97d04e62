// What is said must be what was computed, and be said where it holds.

import { daylightScene, NIGHT_WRECK, REEF_WITH_LAMPS, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { mixedLightReasons } from "../../../words/src/en/reasons/mixed-light.js";
import { conditionsOf } from "../light/conditions.js";
import { underwater } from "../light/underwater.js";
import { models } from "../reference/models.js";
import type { MixedLightAnswer } from "../result/mixed-light.js";
import type { Scene } from "../scene/scene.js";
import { causesOf, LIT_HAZE_CAUSES } from "../uncertainty/causes.js";
import { Z90 } from "../uncertainty/normal.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import { hazeOverGrey } from "./lit-haze.js";
import { mixedLight } from "./mixed-light.js";

const codesOf = ({ reasons }: MixedLightAnswer) => reasons.map(({ code }) => code);
const parametersOf = ({ reasons }: MixedLightAnswer, code: string) =>
  (reasons.find((reason) => reason.code === code)?.parameters ?? {}) as Readonly<Record<string, number>>;
/** Daylight leads in its shallow part, lamps in its deep one. */
const THROUGH_ALL: Scene = { ...REEF_WITH_LAMPS, min_depth_m: 1, max_depth_m: 45 };

describe("the reasons of mixed light", () => {
  it("lamps only: what the water takes of each channel, and nothing of daylight", () => {
    const answer = mixedLight(NIGHT_WRECK);
    const [depth] = answer.depths;
    expect(codesOf(answer)[0]).toBe("lamps_only");
    expect(parametersOf(answer, "lamps_only")).toEqual({
      red: depth.lamp_red_water_loss_stops?.likely,
      green: depth.lamp_green_water_loss_stops?.likely,
      blue: depth.lamp_blue_water_loss_stops?.likely,
    });
    for (const code of ["daylight_only", "lights_fight", "daylight_leads", "lamps_lead", "upright_subject"]) {
      expect(codesOf(answer)).not.toContain(code);
    }
  });

  it("daylight only: nothing to mix", () => {
    const codes = codesOf(mixedLight(daylightScene("IB", 50, 12)));
    expect(codes).toContain("daylight_only");
    for (const code of ["lamps_only", "lights_fight", "upright_subject", "mixing_zone", "lit_haze"]) {
      expect(codes).not.toContain(code);
    }
  });

  it("each light leading, and the fight between, by the first depth of each", () => {
    const answer = mixedLight(THROUGH_ALL);
    const first = (verdict: string) => answer.depths.find((depth) => depth.verdict === verdict);
    const met = [...new Set(answer.depths.map(({ verdict }) => verdict))];
    expect(met).toContain("lights_fight");
    expect(met.length).toBeGreaterThan(1);
    const fight = first("lights_fight");
    expect(parametersOf(answer, "lights_fight")).toEqual({
      depth_m: fight?.depth_m,
      split: fight?.split_delta_e00?.likely,
      red_excess: fight?.red_excess_stops?.likely,
    });
    for (const verdict of ["daylight_leads", "lamps_lead"] as const) {
      const leads = first(verdict);
      expect(codesOf(answer).includes(verdict)).toBe(leads !== undefined);
      if (!leads) continue;
      expect(parametersOf(answer, verdict)).toEqual({
        depth_m: leads.depth_m,
        green: leads.green_lamp_over_daylight_stops?.likely,
      });
    }
    expect(codesOf(answer)).toContain("upright_subject");
    const zone = answer.zones.find(({ verdict }) => verdict === "lights_fight");
    expect(parametersOf(answer, "mixing_zone")).toEqual({
      from_m: zone?.min_depth_m,
      to_m: zone?.max_depth_m,
    });
  });

  it("no zone of mixing where the whole range is one, and none where nothing mixes", () => {
    expect(mixedLight(REEF_WITH_LAMPS).zones).toHaveLength(1);
    expect(codesOf(mixedLight(REEF_WITH_LAMPS))).toContain("lights_fight");
    expect(codesOf(mixedLight(REEF_WITH_LAMPS))).not.toContain("mixing_zone");
    const weak = { ...THROUGH_ALL, lamps: [{ ...TWO_LAMPS, flux_lm: 1, count: 1 }], max_depth_m: 3 };
    expect(codesOf(mixedLight(weak))).toContain("daylight_leads");
    expect(codesOf(mixedLight(weak))).not.toContain("mixing_zone");
  });

  it("haze that the lamps light, from 15 % of a lit grey on, at the deep end", () => {
    const said = [0.4, 0.8, 1.2, 1.6, 2.4].map((metres) => {
      const answer = mixedLight({
        ...REEF_WITH_LAMPS,
        water_type: "3C",
        subject_distance_m: metres,
        lamps: [{ ...TWO_LAMPS, distance_m: metres }],
      });
      const { lit_haze_percent } = answer.depths[answer.depths.length - 1];
      const percent = lit_haze_percent?.likely ?? Number.NaN;
      expect(codesOf(answer).includes("lit_haze")).toBe(percent > 15);
      if (percent > 15) {
        expect(parametersOf(answer, "lit_haze")).toEqual({
          percent,
          low: lit_haze_percent?.low,
          high: lit_haze_percent?.high,
        });
      }
      return percent > 15;
    });
    expect(said[0]).toBe(false);
    expect(said[4]).toBe(true);
  });
});

describe("each reason of mixed light", () => {
  it("is told as computed, in a sentence", () => {
    const scenes: Scene[] = [
      NIGHT_WRECK,
      daylightScene("IB", 50, 12),
      THROUGH_ALL,
      { ...THROUGH_ALL, lamps: [{ ...TWO_LAMPS, flux_lm: 1, count: 1 }] },
      { ...REEF_WITH_LAMPS, lamps: [{ ...TWO_LAMPS, distance_m: 0.1 }] },
      { ...REEF_WITH_LAMPS, wanted_lead_stops: 3, wanted_lead_distance_m: 0.8 },
      {
        ...REEF_WITH_LAMPS,
        water_type: "3C",
        subject_distance_m: 2.4,
        lamps: [{ ...TWO_LAMPS, distance_m: 2.4 }],
      },
    ];
    const told = new Set<string>();
    // Each has a bound of its own that was judged: a split that is seen, and haze that spoils a picture.
    const judged = new Set<string>(["lights_fight", "mixing_zone", "lit_haze"]);
    for (const { code, basis } of scenes.flatMap((scene) => mixedLight(scene).reasons)) {
      told.add(code);
      // What no lights for diving give is a judgement: see beside `to_lead`.
      if (code !== "to_lead")
        expect({ code, basis }).toEqual({ code, basis: judged.has(code) ? "judgement" : "computed" });
    }
    expect([...told]).toEqual(expect.arrayContaining(Object.keys(mixedLightReasons)));
  });
});

describe("the answer on mixed light", () => {
  it("balances to the lamps where they are alone or lead at most depths, else to daylight", () => {
    const met = new Set<string>();
    for (const flux_lm of [1, 400, 4000, 40000, 400000]) {
      const scene = { ...THROUGH_ALL, lamps: [{ ...TWO_LAMPS, flux_lm }] };
      const { balance_to, depths } = mixedLight(scene);
      const led = depths.filter(({ verdict }) => verdict === "lamps_lead").length;
      expect(balance_to).toBe(led > depths.length - led ? "lamps" : "daylight");
      met.add(balance_to);
    }
    expect(met.size).toBe(2);
    expect(mixedLight(NIGHT_WRECK).balance_to).toBe("lamps");
    expect(mixedLight(daylightScene("IB", 50, 12)).balance_to).toBe("daylight");
  });

  it("tells the doubt of the deepest depth: that of a range is the one at its deep end alone", () => {
    // A subject that faces up: which way it faces is doubted as in the middle of a range.
    const shares = (min_depth_m: number, max_depth_m: number) =>
      new Map(
        mixedLight({
          ...REEF_WITH_LAMPS,
          water_type: "1C",
          subject_facing: "up",
          min_depth_m,
          max_depth_m,
        }).uncertainty.map(({ code, share }) => [code, share]),
      );
    const [range, deep, shallow] = [shares(1, 15), shares(15, 15), shares(1, 1)];
    for (const [cause, share] of deep) expect(range.get(cause)).toBeCloseTo(share, 9);
    const ofWater = (of: Map<string, number>) => of.get("water_type_resolution") ?? 0;
    expect(ofWater(deep)).toBeGreaterThan(ofWater(shallow) + 0.1);
  });

  it("is a near tie where the split may lie on either side of 5 (seen at a glance: a judgement), and clear elsewhere", () => {
    const clarities = new Set<string | undefined>();
    for (let power = 0; power < 12; power += 1) {
      const [depth] = mixedLight({
        ...REEF_WITH_LAMPS,
        lamps: [{ ...TWO_LAMPS, count: 1, flux_lm: 20 * 2 ** power }],
      }).depths;
      const { low, high } = depth.split_delta_e00 ?? { low: Number.NaN, high: Number.NaN };
      expect(depth.verdict_clarity).toBe(low < 5 && high > 5 ? "near_tie" : "clear");
      clarities.add(depth.verdict_clarity);
    }
    expect([...clarities].sort()).toEqual(["clear", "near_tie"]);
  });

  it("has nothing that compares the lights where there is one alone, and no lamp's figures without lamps", () => {
    const [day] = mixedLight(daylightScene("IB", 50, 12)).depths;
    const [night] = mixedLight(NIGHT_WRECK).depths;
    for (const alone of [day, night]) {
      expect(alone).not.toHaveProperty("split_delta_e00");
      expect(alone).not.toHaveProperty("verdict_clarity");
      expect(alone).not.toHaveProperty("green_lamp_over_daylight_stops");
    }
    const dark = { low: 0, likely: 0, high: 0 };
    expect(day.lamp_illuminance_lx).toEqual(dark);
    expect(day.daylight_illuminance_lx.likely).toBeGreaterThan(0);
    expect(day).not.toHaveProperty("lit_haze_percent");
    expect(night.daylight_illuminance_lx).toEqual(dark);
    expect(night.lit_haze_percent?.likely).toBeGreaterThan(0);
  });

  it("counts among the doubts of lit haze how far the lamps stand from the line of sight (in quadrature with the others)", () => {
    const conditions = conditionsOf(NIGHT_WRECK);
    const stops = (change: Partial<Nuisance>) =>
      Math.log2(hazeOverGrey(underwater(conditions, { ...NOMINAL, ...change })));
    const likely = stops({});
    const ups = [...causesOf(conditions), ...LIT_HAZE_CAUSES].map(({ code, shift }) => {
      const up = Math.max(0, ...[-Z90, Z90].map((z) => stops(shift(z)) - likely));
      return { code, up };
    });
    expect(ups.find(({ code }) => code === "lamp_offset")?.up).toBeGreaterThan(0.3);
    const [{ lit_haze_percent }] = mixedLight(NIGHT_WRECK).depths;
    const high = 100 * 2 ** (likely + Math.hypot(...ups.map(({ up }) => up)));
    expect(lit_haze_percent?.high).toBeCloseTo(high, 6);
  });

  it("rests on lit haze where there are lamps, and its doubt is that of what matters: the lamps' at night, daylight's by day", () => {
    const [day, night, both] = [daylightScene("IB", 50, 12), NIGHT_WRECK, REEF_WITH_LAMPS].map(mixedLight);
    const known = models().map(({ id }) => id);
    for (const { sources } of [day, night, both]) {
      expect(sources).toContain("ciede2000");
      for (const source of sources) expect(known).toContain(source);
    }
    expect(day.sources).not.toContain("lit_haze");
    expect(night.sources).toContain("lit_haze");
    expect(both.sources).toContain("lit_haze");
    const causes = ({ uncertainty }: MixedLightAnswer) => uncertainty.map(({ code }) => code);
    expect(causes(day)).toContain("daylight_level");
    expect(causes(night)).not.toContain("daylight_level");
    expect(causes(night)).toContain("lamp_beam");
    expect(causes(both)).toEqual(expect.arrayContaining(["daylight_level", "lamp_beam"]));
  });
});
