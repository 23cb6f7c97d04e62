// The plan must not contradict itself, and each of its lines must be what the single questions answer.

import {
  atNight,
  BRIGHT_REEF,
  DARK_AND_GREEN,
  daylightScene,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  REEF_WITH_LAMPS,
  TWO_LAMPS,
  withKd,
} from "@sunfathom/fixtures/scenes";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { saidAdvice } from "../../../../test/support/said.js";
import { exposureLoss } from "../exposure-loss/exposure-loss.js";
import { meteredOnSubject } from "../exposure-loss/sensitivity.js";
import { filterChoice } from "../filter-choice/filter-choice.js";
import { handDepth } from "../light/hand-depth.js";
import { mixedLight } from "../mixed-light/mixed-light.js";
import type { DiveAdviceAnswer, DivePhase, DiveStep } from "../result/dive-advice.js";
import type { KitItem, Scene } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { diveAdvice } from "./dive-advice.js";

const ORDER: DivePhase[] = ["before_dive", "at_start", "going_down", "lamps", "coming_up", "after_dive"];
const codes = ({ steps }: DiveAdviceAnswer): string[] => steps.map(({ code }) => code);
const stepOf = ({ steps }: DiveAdviceAnswer, code: string): DiveStep | undefined =>
  steps.find((step) => step.code === code);
const flip = (type: string, sun: number, from: number, to: number): Scene => ({
  ...daylightScene(type, sun, from, to),
  filter_change_underwater: "flip",
});

const anyDive = fc
  .record({
    type: fc.constantFrom("I", "IB", "III", "1C", "3C", "5C", "7C", "9C"),
    sun: fc.integer({ min: 12, max: 85 }),
    from: fc.double({ min: 1, max: 15, noNaN: true }),
    length: fc.constantFrom(0, 0.4, 5, 15),
    filter_change_underwater: fc.constantFrom("none" as const, "flip" as const, "clip_on" as const),
    light: fc.constantFrom("day", "both", "lamps"),
    max_iso: fc.constantFrom(400, 6400),
  })
  .map(({ type, sun, from, length, light, ...rest }): Scene => {
    const day = { ...daylightScene(type, sun, from, from + length), ...rest };
    if (light === "day") return day;
    return { ...(light === "lamps" ? atNight(day) : day), lamps: [TWO_LAMPS] };
  });

describe("the plan", () => {
  it("comes in the order of the dive, down and up again, within the range, each line with its reason in words", () => {
    fc.assert(
      fc.property(anyDive, (scene) => {
        const advice = diveAdvice(scene);
        const said = saidAdvice(scene);
        const phases = advice.steps.map(({ phase }) => ORDER.indexOf(phase));
        expect(phases).toEqual([...phases].sort((a, b) => a - b));
        const depthsIn = (wanted: DivePhase) =>
          advice.steps.flatMap(({ phase, depth_m }) =>
            phase === wanted && depth_m !== undefined ? [depth_m] : [],
          );
        const down = depthsIn("going_down");
        expect(down).toEqual([...down].sort((a, b) => a - b));
        const up = depthsIn("coming_up");
        expect(up).toEqual([...up].sort((a, b) => b - a));
        for (const depth of [...down, ...up, ...depthsIn("at_start")]) {
          expect(depth).toBeGreaterThan(scene.min_depth_m - 1);
          expect(depth).toBeLessThanOrEqual(scene.max_depth_m);
        }
        for (const { text, why, figures } of said.steps) {
          for (const sentence of [text, why]) {
            expect(sentence).toMatch(/^[A-Z].*[.]$/);
            expect(sentence).not.toMatch(/NaN|undefined|Infinity|-0\b(?!\.)| {2}|\.\./);
          }
          for (const { value } of figures) expect(Number.isFinite(value)).toBe(true);
        }
        expect(said.summary).not.toMatch(/NaN|undefined|Infinity/);
        expect(advice.cautions.map(({ code }) => code)).toContain("not_a_dive_planner");
      }),
      { seed: 14, numRuns: 7 },
    );
  });

  it("names no depth limit, gas or decompression as advice (this plans no dive)", () => {
    for (const scene of [DARK_AND_GREEN, NIGHT_WRECK, flip("IB", 55, 1, 15)]) {
      const { steps, summary } = saidAdvice(scene);
      const said = [summary, ...steps.flatMap(({ text, why }) => [text, why])].join(" ");
      expect(said).not.toMatch(/decompress|nitrox|no-stop|bottom time|safety stop/i);
    }
  });

  it("mounts what the choice of a filter says, and begins with the exposure that the budget asks for behind it", () => {
    const advice = diveAdvice(OUTER_REEF_MORNING);
    const choice = filterChoice(OUTER_REEF_MORNING);
    expect([advice.filter_kind, advice.filter_density]).toEqual([choice.filter_kind, choice.filter_density]);
    const filtered = exposureLoss({
      ...OUTER_REEF_MORNING,
      filter_kind: "red",
      filter_density: choice.filter_density ?? 0,
    });
    expect(stepOf(advice, "start_exposure")?.parameters).toMatchObject({
      ev: meteredOnSubject(filtered.depths[0]),
    });
    expect(advice.reasons.map(({ code }) => code)).toContain("filter_adds_no_red");
  });
});

describe("a filter that is changed at depth", () => {
  it("comes in on the way down and goes out at the same depth on the way up; the start is exposed without it", () => {
    const scene = { ...flip("IB", 55, 1, 15), max_f_number: 32 };
    const advice = diveAdvice(scene);
    const change = handDepth(filterChoice(scene).change_depths_m?.[0] ?? 0, scene);
    expect(codes(advice)).toContain("carry_filter");
    const down = advice.steps.filter((s) => s.phase === "going_down" && s.code === "filter_in");
    const up = advice.steps.filter((s) => s.phase === "coming_up" && s.code === "filter_out");
    expect([...down, ...up].map(({ depth_m }) => depth_m)).toEqual([change, change]);
    const bare = meteredOnSubject(exposureLoss(scene).depths[0]);
    expect(stepOf(advice, "start_exposure")?.parameters).toMatchObject({ ev: bare });
    expect(advice.balance_depths_descending_m).toContain(change);
  });

  it("is on from the start where it serves there, and comes off where the light runs out", () => {
    const scene: Scene = { ...flip("3C", 40, 4, 16), finish: "matched" };
    const advice = diveAdvice(scene);
    const change = handDepth(filterChoice(scene).change_depths_m?.[0] ?? 0, scene);
    const changes = advice.steps.filter(({ code }) => code === "filter_in" || code === "filter_out");
    expect(changes.map(({ phase, code, depth_m }) => [phase, code, depth_m])).toEqual([
      ["going_down", "filter_out", change],
      ["coming_up", "filter_in", change],
    ]);
  });

  it("balances as often as it says, and no balance comes within two metres of another", () => {
    for (const scene of [flip("IB", 55, 1, 15), flip("3C", 40, 4, 16), OUTER_REEF_MORNING]) {
      const {
        balance_depths_descending_m: down,
        balance_depths_ascending_m: up,
        summary,
      } = diveAdvice(scene);
      expect(summary).toContainEqual({ code: "balance", parameters: { again: down.length - 1 } });
      for (const depths of [down, up]) {
        for (let i = 1; i < depths.length; i++) {
          expect(Math.abs(depths[i] - depths[i - 1])).toBeGreaterThanOrEqual(2);
        }
      }
    }
  });
});

describe("lamps in the plan", () => {
  const kit = (filters: Pick<KitItem, "id" | "filter_kind" | "filter_density">[]): Scene => ({
    ...REEF_WITH_LAMPS,
    kit: [
      { id: "lamps", item: "lamp" },
      { id: "red", item: "lens_filter", filter_kind: "red", filter_density: 1.2 },
      ...filters.map((f) => ({ ...f, item: "lamp_filter" as const })),
    ],
  });

  it("are off where they would fight, and the other way out is named", () => {
    const advice = diveAdvice(REEF_WITH_LAMPS);
    expect(advice.lamp_plan).toBe("lamps_off");
    expect(advice.mixed_light_verdict).toBe("lights_fight");
    expect(advice.balance_to).toBe("daylight");
    expect(stepOf(advice, "lamps_off")?.parameters).toMatchObject({
      other: { way: { code: "lamp_filter" } },
    });
    expect(codes(advice)).not.toContain("lamps_off_before_air");
  });

  it("carry the filter that is owned, at its own density, and of two the better", () => {
    const soft = { id: "soft", filter_kind: "blue" as const, filter_density: 0.9 };
    const wrong = { id: "wrong", filter_kind: "green" as const, filter_density: 0.6 };
    const advice = diveAdvice(kit([wrong, soft]));
    expect(advice.lamp_plan).toBe("lamps_with_filter");
    expect(advice.take.map(({ id }) => id)).toContain("soft");
    expect(advice.take.map(({ id }) => id)).not.toContain("wrong");
    const step = stepOf(advice, "filter_lamps");
    expect(step?.parameters).toMatchObject({ filter: { kind: "blue", density: 0.9, id: "soft" } });
  });

  it("stay off where the one that is owned does not mend the split, and what is missing is named", () => {
    const advice = diveAdvice(kit([{ id: "weak", filter_kind: "blue", filter_density: 0.15 }]));
    expect(advice.lamp_plan).toBe("lamps_off");
    const missing = advice.take.find(({ code }) => code === "lamp_filters_lacking");
    expect(missing).toMatchObject({ parameters: { kind: "blue" } });
    expect(missing).not.toHaveProperty("id");
  });

  it("stay on among daylight where that leaves less to mend, with one balance on a card in both", () => {
    // Where red is all but gone, what a filter would hold back is no longer there.
    const deep = { ...daylightScene("IB", 55, 30), subject_distance_m: 1.2 };
    const advice = diveAdvice({ ...deep, lamps: [{ ...TWO_LAMPS, flux_lm: 6000, distance_m: 1 }] });
    expect([advice.mixed_light_verdict, advice.lamp_plan]).toEqual(["lights_fight", "lamps_with_daylight"]);
    expect(advice.balance_to).toBe("daylight_and_lamps");
    const step = advice.steps.find(({ code }) => code === "lamps_with_daylight");
    if (step?.code !== "lamps_with_daylight") throw new Error("no such step");
    expect(step.parameters.with_e).toBeLessThan(step.parameters.without_e);
    expect(stepOf(advice, "lamps_on")?.parameters).toMatchObject({ distance_m: 1 });
    const order = codes(advice);
    expect(order.indexOf("lamps_on")).toBeLessThan(order.indexOf("start_exposure"));
    expect(codes(advice)).toContain("lamps_off_before_air");
    expect(codes(advice)).not.toContain("mixing_zone");
  });

  it("make the light by night: no filter, a card in their light, and off before they leave the water", () => {
    const advice = diveAdvice(NIGHT_WRECK);
    expect(advice.lamp_plan).toBe("lamps_only");
    expect(advice.balance_to).toBe("lamps");
    expect(codes(advice)).toEqual(
      expect.arrayContaining([
        "no_filter_for_lamps",
        "balance_on_card_in_lamp_light",
        "lamps_off_before_air",
      ]),
    );
  });
});

describe("what is told beside the plan", () => {
  const reasonCodes = ({ reasons }: DiveAdviceAnswer) => reasons.map(({ code }) => code);
  const cautionCodes = ({ cautions }: DiveAdviceAnswer) => cautions.map(({ code }) => code);

  it("is what decides the filter, and every source of the questions asked, each once", () => {
    const advice = diveAdvice(REEF_WITH_LAMPS);
    const told = advice.reasons.map((reason) => JSON.stringify(reason));
    const asked = [filterChoice({ ...REEF_WITH_LAMPS, lamps: [] }), mixedLight(REEF_WITH_LAMPS)];
    for (const { sources } of asked) expect(advice.sources).toEqual(expect.arrayContaining(sources));
    const ofTheFilter = asked[0].cautions.map(({ code }) => code);
    expect(cautionCodes(advice)).toEqual(expect.arrayContaining(ofTheFilter));
    expect(reasonCodes(advice)).toContain("filter_adds_no_red");
    // What a step gives as its reason is not said again.
    expect(stepOf(advice, "mount_filter")).toBeDefined();
    expect(reasonCodes(advice)).not.toContain("filter_earns");
    for (const list of [cautionCodes(advice), advice.sources, told]) {
      expect(new Set(list).size).toBe(list.length);
    }
  });

  it("leaves out what says nothing in a plan: one balance of a leg among several", () => {
    expect(reasonCodes(diveAdvice(daylightScene("IB", 45, 5, 5.5)))).toContain("one_balance_serves");
    expect(reasonCodes(diveAdvice(flip("IB", 55, 1, 15)))).not.toContain("one_balance_serves");
  });

  it.each([OUTER_REEF_MORNING, daylightScene("IB", 45, 10), NIGHT_WRECK])(
    "is to hover for every balance, and that the ascent comes before every depth on the way up",
    (scene) => {
      expect(cautionCodes(diveAdvice(scene))).toEqual(
        expect.arrayContaining(["hover_to_balance", "ascent_first"]),
      );
    },
  );

  it("is the doubt of the filter's choice, or of how bright the lamps are where they are the only light", () => {
    expect(diveAdvice(OUTER_REEF_MORNING).uncertainty).toEqual(filterChoice(OUTER_REEF_MORNING).uncertainty);
    const night = diveAdvice(NIGHT_WRECK).uncertainty;
    expect(night).toEqual(exposureLoss(NIGHT_WRECK).uncertainty);
    expect(night.map(({ code }) => code)).toContain("lamp_beam");
  });

  it("is the filter's verdict and its id, where it has one", () => {
    const { filter_verdict, ...advice } = diveAdvice(OUTER_REEF_MORNING);
    expect(filter_verdict).toBe(filterChoice(OUTER_REEF_MORNING).verdict);
    expect(advice).not.toHaveProperty("filter_id");
    const kit: KitItem[] = [{ id: "r45", item: "lens_filter", filter_kind: "red", filter_density: 0.45 }];
    expect(diveAdvice({ ...OUTER_REEF_MORNING, kit }).filter_id).toBe("r45");
    expect(diveAdvice(NIGHT_WRECK)).not.toHaveProperty("filter_density");
  });
});

describe("what cannot be", () => {
  it("a camera that cannot expose at all is told what is missing and what would help, not given settings that work", () => {
    const blind: Scene = { ...daylightScene("5C", 15, 20), iso: 100, f_number: 11, shutter_s: 1 / 1000 };
    const { summary, steps } = diveAdvice(blind);
    expect(summary.map(({ code }) => code)).toContain("too_dark");
    expect(steps.map(({ code }) => code).join(" ")).toMatch(/too_dark/);
  });

  it("a scene too bright for what is fixed is exposed behind neutral density", () => {
    const { steps } = diveAdvice({ ...BRIGHT_REEF, min_depth_m: 1, max_depth_m: 1 });
    const begin = steps.find(({ code }) => code === "start_exposure");
    expect(begin?.parameters).toHaveProperty("behind");
  });

  it("lamps in deep water where no daylight comes lead, and all figures are finite", () => {
    const advice = diveAdvice({ ...daylightScene("7C", 20, 60), lamps: [TWO_LAMPS] });
    expect(["lamps_lead", "lamps_only"]).toContain(advice.lamp_plan);
    expect(advice.balance_to).toBe("lamps");
  });

  it("no light at all, a sun too low and a depth without any light are refused with the field to change", () => {
    const refusal = (scene: Scene): string[] => {
      try {
        diveAdvice(scene);
      } catch (error) {
        if (error instanceof SceneProblem) return [error.field];
        throw error;
      }
      return ["no refusal"];
    };
    expect(refusal(atNight(daylightScene("IB", 45, 10)))).toEqual(["lamps"]);
    expect(refusal(daylightScene("IB", 3, 10))).toEqual(["sun_elevation_deg"]);
    // Diffuse attenuation of 2 per metre: exp(-198) is nothing.
    const ink = [400, 700].map((wavelength_nm) => ({ wavelength_nm, kd_per_m: 2 }));
    expect(refusal(withKd(daylightScene("", 45, 99), ink))).toEqual(["max_depth_m"]);
    const mud = ink.map((sample) => ({ ...sample, kd_per_m: 9 }));
    const far = { ...NIGHT_WRECK, lamps: [{ ...TWO_LAMPS, distance_m: 20 }] };
    expect(refusal(withKd(far, mud))).toEqual(["lamps"]);
  });
});
