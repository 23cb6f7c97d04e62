// What brings each step with the lamps.

import { NIGHT_WRECK, REEF_WITH_LAMPS, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import type { LampPlan } from "../../codes/summary.js";
import type { MixedLightAtDepth, MixedLightZone } from "../../result/mixed-light.js";
import { decided, parametersIn, toldBy } from "../decided.test-support.js";
import type { Decisions } from "../decisions.js";
import { lampSteps } from "./lamps.js";
import { lampsOff } from "./lamps-off.js";

const fight = decided(REEF_WITH_LAMPS);
const night = decided(NIGHT_WRECK);
const codes = (d: Decisions) => lampSteps(d).map(({ code }) => code);
const zone = (verdict: MixedLightZone["verdict"], min_depth_m: number, max_depth_m: number) => ({
  verdict,
  min_depth_m,
  max_depth_m,
});
const changed = (
  d: Decisions,
  lampPlan: LampPlan,
  middle: Partial<MixedLightAtDepth>,
  zones: MixedLightZone[] = [],
): Decisions => ({
  ...d,
  lampPlan,
  middle: { ...d.middle, lit_haze_percent: { low: 0, likely: 0, high: 0 }, ...middle },
  mixed: { ...d.mixed, zones },
});

/** The same without a colour filter on the lens. */
const bare = (d: Decisions): Decisions => ({ ...d, filter: { ...d.filter, filter_kind: "none" } });

describe("lamps that stay off", () => {
  it("are told with the split, how red it is and what is lost, and the best other way", () => {
    const { middle } = fight;
    const steps = lampsOff(changed(fight, "lamps_off", {}));
    // Told on land: what the other way asks for is mounted there.
    expect(toldBy(steps)).toEqual([["before_dive", "lamps_off", undefined]]);
    // Ways out stand by what they leave: the first but that.
    const other = middle.ways_out.filter(({ way }) => way !== "lamps_off")[0];
    expect(parametersIn(steps, "lamps_off")).toEqual({
      split: middle.split_delta_e00?.likely,
      red_excess: middle.red_excess_stops?.likely,
      cost: middle.ways_out.find(({ way }) => way === "lamps_off")?.cost_stops,
      other: {
        way: { code: other.code, parameters: other.parameters },
        left: other.split_left_delta_e00,
      },
    });
    expect(middle.ways_out.find(({ way }) => way === "lamps_off")?.cost_stops).toBeGreaterThan(0);
  });

  it("are not told to lead with a colour filter on the lens", () => {
    const closer = fight.middle.ways_out.filter(({ way }) => way === "come_closer");
    const near = closer.map((way) => ({ ...way, split_left_delta_e00: 4 }));
    const filtered = changed(fight, "lamps_off", { ways_out: near });
    expect(near.length).toBe(1);
    expect(parametersIn(lampsOff(filtered), "lamps_off")).not.toHaveProperty("other");
    expect(parametersIn(lampsOff(bare(filtered)), "lamps_off")).toHaveProperty("other");
  });

  it("have no other way where there is none, and go on from where they lead", () => {
    const ways_out = fight.middle.ways_out.filter(({ way }) => way === "lamps_off");
    const off = lampsOff(changed(fight, "lamps_off", { ways_out }));
    expect(parametersIn(off, "lamps_off")).not.toHaveProperty("other");
    expect(codes(changed(fight, "lamps_off", { ways_out }))).toEqual([]);
    const zones = [zone("lights_fight", 5, 20), zone("lamps_lead", 20, 30)];
    const ranging = { ...fight, scene: { ...fight.scene, min_depth_m: 5, max_depth_m: 30 } };
    const steps = lampSteps(bare(changed(ranging, "lamps_off", { ways_out }, zones)));
    expect(toldBy(steps)).toEqual([["lamps", "lamps_from", 20]]);
    expect(parametersIn(steps, "lamps_from")).toEqual({ depth_m: 20 });
  });

  it("are told what they would make of the subject alone, where that is worth a look", () => {
    const onSubject = { error: 4, around: 17 };
    const steps = lampsOff({ ...changed(fight, "lamps_off", {}), onSubject });
    expect(parametersIn(steps, "lamps_for_subject")).toEqual(onSubject);
    const strong = decided({
      ...REEF_WITH_LAMPS,
      lamps: [{ ...TWO_LAMPS, flux_lm: 15000, distance_m: 0.5 }],
    });
    expect(strong.lampPlan).toBe("lamps_off");
    // What the lights reach is then right, and what they do not reach is not: the more the lights outshine daylight.
    expect(strong.onSubject?.error).toBeLessThan((strong.onSubject?.around ?? 0) / 2);
    expect(decided(NIGHT_WRECK).onSubject).toBeUndefined();
  });

  it("light no haze and mix with nothing", () => {
    const hazy = { lit_haze_percent: { low: 40, likely: 50, high: 60 } };
    const zones = [zone("lights_fight", 5, 20), zone("daylight_leads", 1, 5)];
    expect(codes(changed(fight, "lamps_off", hazy, zones))).not.toContain("mixing_zone");
  });
});

describe("lamps that are on", () => {
  it("lead, or hardly show, by how far they outshine daylight in green", () => {
    const green_lamp_over_daylight_stops = { low: 1, likely: 2, high: 3 };
    for (const [lampPlan, code] of [
      ["lamps_lead", "lamps_lead"],
      ["daylight_leads", "lamps_hardly_show"],
    ] as const) {
      const steps = lampSteps(changed(fight, lampPlan, { green_lamp_over_daylight_stops }));
      expect(toldBy(steps)[0]).toEqual(["lamps", code, undefined]);
      // How far they carry is asked of lamps that make the light alone.
      expect(steps.map((one) => one.code)).toEqual(
        lampPlan === "lamps_lead" ? [code, "lamps_reach"] : [code],
      );
      expect(parametersIn(steps, code)).toEqual({ green: 2 });
    }
  });

  it("are told alone with what the water takes of each channel", () => {
    const { middle } = night;
    const steps = lampSteps(changed(night, "lamps_only", {}));
    expect(toldBy(steps)).toEqual([
      ["lamps", "lamps_only", undefined],
      ["lamps", "lamps_reach", undefined],
    ]);
    expect(parametersIn(steps, "lamps_only")).toEqual({
      red: middle.lamp_red_water_loss_stops?.likely,
      green: middle.lamp_green_water_loss_stops?.likely,
      blue: middle.lamp_blue_water_loss_stops?.likely,
    });
    expect(middle.lamp_red_water_loss_stops?.likely).toBeGreaterThan(0);
  });

  it("fight in a zone where that is a part of the range, and not where it is the whole", () => {
    const part = [zone("daylight_leads", 1, 5), zone("lights_fight", 5, 20)];
    const wide = { ...night, scene: { ...night.scene, min_depth_m: 1, max_depth_m: 20 } };
    const fight = { from_m: 5, to_m: 20 };
    const led = lampSteps(changed(wide, "lamps_lead", {}, part));
    expect(parametersIn(led, "mixing_zone")).toEqual(fight);
    // Where daylight leads, the line that says so says where.
    const hardly = lampSteps(changed(wide, "daylight_leads", {}, part));
    expect(parametersIn(hardly, "lamps_hardly_show")).toMatchObject({ fight });
    expect(hardly.map(({ code }) => code)).not.toContain("mixing_zone");
    const whole = [zone("lights_fight", 1, 20)];
    expect(codes(changed(wide, "lamps_lead", {}, whole))).not.toContain("mixing_zone");
    expect(
      parametersIn(lampSteps(changed(wide, "daylight_leads", {}, whole)), "lamps_hardly_show"),
    ).not.toHaveProperty("fight");
  });

  it("are held wide where more than 15 % of a lit grey is haze (a judgement)", () => {
    const hazy = (likely: number) =>
      lampSteps(changed(night, "lamps_only", { lit_haze_percent: { low: 0, likely, high: 99 } }));
    expect(parametersIn(hazy(15.1), "lamps_only")).toMatchObject({ haze: { percent: 15.1 } });
    expect(parametersIn(hazy(14.9), "lamps_only")).not.toHaveProperty("haze");
  });
});
