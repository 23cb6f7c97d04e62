// What is said must be what was computed, and be said where it holds.

import { atNight, daylightScene, NIGHT_WRECK, REEF_WITH_LAMPS, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { deltaE00, labOf, multiply } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { whiteBalanceReasons } from "../../../words/src/en/reasons/white-balance.js";
import { balanceReach, balanceToCard } from "../camera/balance-reach.js";
import { castBetween } from "../camera/cast.js";
import { WHITE_D65 } from "../camera/d65.js";
import { apply, type Vector3 } from "../camera/matrix.js";
import { sensorOf } from "../camera/sensor.js";
import { rawOf, sensorProfile } from "../camera/sensor-profile.js";
import type { BalanceSteps } from "../codes/balance-procedure.js";
import { codesOf as sayingOf } from "../codes/coded.js";
import { conditionsOf } from "../light/conditions.js";
import { cardDaylightAt } from "../light/daylight-at-depth.js";
import { towardsCamera, underwater } from "../light/underwater.js";
import { mixedLight } from "../mixed-light/mixed-light.js";
import { models } from "../reference/models.js";
import type { WhiteBalanceAnswer } from "../result/white-balance.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { whiteBalance } from "./white-balance.js";

const say = sayingOf<BalanceSteps>();

const codesOf = ({ reasons }: WhiteBalanceAnswer) => reasons.map(({ code }) => code);
const parametersOf = ({ reasons }: WhiteBalanceAnswer, code: string) =>
  (reasons.find((reason) => reason.code === code)?.parameters ?? {}) as Readonly<Record<string, number>>;
const RANGE = daylightScene("II", 45, 2, 20);
/** A camera that can balance more than light under water asks for. */
const WIDE: Scene = { ...RANGE, white_balance_max_duv: 0.1, white_balance_max_cct_K: 40000 };

describe("the reasons of a white balance", () => {
  it("tell how often to balance again over a range, or that one serves", () => {
    const often = whiteBalance({ ...WIDE, balance_tolerance_delta_e00: 4 });
    const down = often.balance_depths_descending_m;
    expect(down.length).toBeGreaterThan(1);
    expect(parametersOf(often, "balance_again")).toEqual({
      times: down.length - 1,
      first_m: down[1],
      tolerance: often.balance_tolerance_delta_e00,
    });
    expect(often.balance_tolerance_delta_e00).toBeGreaterThanOrEqual(4);
    expect(codesOf(often)).not.toContain("one_balance_serves");
    const once = whiteBalance({ ...WIDE, min_depth_m: 5, max_depth_m: 5.5 });
    expect(once.balance_depths_descending_m).toHaveLength(1);
    // What a light grade still takes out: 8, a judgement.
    expect(parametersOf(once, "one_balance_serves")).toEqual({ tolerance: 8 });
    expect(codesOf(once)).not.toContain("balance_again");
  });

  it("tell nothing of balancing again at a single depth", () => {
    const codes = codesOf(whiteBalance(daylightScene("IB", 45, 5)));
    for (const code of ["balance_again", "one_balance_serves"]) expect(codes).not.toContain(code);
  });

  it("tell what is short at the deepest depth out of reach, or that all is in reach", () => {
    const short = whiteBalance(RANGE);
    const out = short.depths.filter(({ in_reach }) => !in_reach);
    const deepest = out[out.length - 1];
    expect(parametersOf(short, "balance_falls_short")).toEqual({
      depth_m: deepest.depth_m,
      short_stops: deepest.short_of_reach_stops,
      cast: deepest.cast_left_delta_e00,
    });
    expect(codesOf(short)).not.toContain("balance_in_reach");
    const reached = whiteBalance(daylightScene("IB", 60, 1));
    expect(reached.depths[0].cast_left_delta_e00).toBe(0);
    expect(codesOf(reached)).toContain("balance_in_reach");
    expect(codesOf(reached)).not.toContain("balance_falls_short");
  });

  it("tell what a kelvin setting leaves, over the way from the nearest lamp to the subject and on to the camera", () => {
    const lamps = [TWO_LAMPS, { ...TWO_LAMPS, distance_m: 0.5 }];
    const answer = whiteBalance({ ...NIGHT_WRECK, lamps, subject_distance_m: 0.9 });
    expect(parametersOf(answer, "kelvin_leaves_the_water")).toEqual({
      cct_K: answer.lamp_kelvin_setting_K,
      left: answer.lamp_kelvin_leaves_delta_e00?.likely,
      path_m: 1.4,
    });
    expect(codesOf(whiteBalance(RANGE))).not.toContain("kelvin_leaves_the_water");
  });
});

describe("each reason of a white balance", () => {
  it("is told as computed, or as a judgement where a tolerance decides", () => {
    const scenes: Scene[] = [
      RANGE,
      { ...WIDE, balance_tolerance_delta_e00: 4 },
      { ...WIDE, min_depth_m: 5, max_depth_m: 5.5 },
      daylightScene("IB", 60, 1),
      NIGHT_WRECK,
      { ...RANGE, white_balance_mode: "auto" },
      { ...RANGE, white_balance_mode: "kelvin", white_balance_kelvin_K: 5600 },
    ];
    const told = new Set<string>();
    for (const scene of scenes) {
      // The model's own tolerance is a judgement; one that the caller gives is not.
      const own = scene.balance_tolerance_delta_e00 === undefined ? "judgement" : "computed";
      for (const { code, basis } of whiteBalance(scene).reasons) {
        told.add(code);
        const byTolerance = code === "balance_again" || code === "one_balance_serves";
        expect({ code, basis }).toEqual({ code, basis: byTolerance ? own : "computed" });
      }
    }
    expect([...told]).toEqual(expect.arrayContaining(Object.keys(whiteBalanceReasons)));
  });
});

describe("a balance that is not set on a card", () => {
  const auto = whiteBalance({ ...RANGE, white_balance_mode: "auto" });
  const kelvin = whiteBalance({ ...RANGE, white_balance_mode: "kelvin", white_balance_kelvin_K: 5600 });
  const card = whiteBalance(RANGE);

  it("says what it leaves on grey, and what one on a card would, depth by depth", () => {
    expect([auto.method, kelvin.method, card.method]).toEqual(["auto", "kelvin", "card"]);
    for (const [d, { cast_left_delta_e00 }] of card.depths.entries()) {
      for (const { depths } of [auto, kelvin])
        expect(depths[d].card_cast_left_delta_e00).toBe(cast_left_delta_e00);
      expect(kelvin.depths[d].cast_left_delta_e00).toBeGreaterThan(cast_left_delta_e00);
    }
    expect(card.depths[0]).not.toHaveProperty("card_cast_left_delta_e00");
  });

  it("is not set again on the way, and its steps say what to set and whether a card would do better", () => {
    for (const { balance_depths_descending_m: down, balance_depths_ascending_m: up } of [auto, kelvin]) {
      expect(down).toEqual([RANGE.min_depth_m]);
      expect(up).toEqual([RANGE.max_depth_m]);
    }
    expect(auto.procedure.map(({ code }) => code).slice(0, 2)).toEqual(["filter_first", "leave_to_camera"]);
    expect(kelvin.procedure).toContainEqual(say("set_kelvin", { cct_K: 5600 }));
    const worth = kelvin.depths.find(
      ({ cast_left_delta_e00: cast, card_cast_left_delta_e00: onCard = 0 }) => cast - onCard > 5,
    );
    expect(kelvin.procedure.find(({ code }) => code === "card_would_do_better")).toEqual(
      worth && say("card_would_do_better", { depth_m: worth.depth_m }),
    );
  });
});

describe("the procedure", () => {
  it("with lamps alone: lamps on, the card in their light, their kelvin, and the distance kept", () => {
    const answer = whiteBalance(NIGHT_WRECK);
    expect(answer.procedure).toEqual([
      say("lamps_on"),
      say("card_in_lamp_light"),
      say("fill_frame"),
      say("kelvin", { cct_K: answer.lamp_kelvin_setting_K ?? 0 }),
      say("keep_distance"),
    ]);
  });

  it("with lamps whose colour has no kelvin: that none fits", () => {
    const green = { ...TWO_LAMPS, filter_kind: "green", filter_density: 3 } as const;
    const answer = whiteBalance({ ...NIGHT_WRECK, lamps: [green] });
    expect(answer).not.toHaveProperty("lamp_kelvin_setting_K");
    expect(answer).not.toHaveProperty("lamp_kelvin_leaves_delta_e00");
    expect(answer.procedure).toContainEqual(say("no_kelvin_fits"));
  });

  it("in daylight, at one depth in reach: the filter first, the card upright, and no word of other depths", () => {
    expect(whiteBalance(daylightScene("IB", 60, 1)).procedure).toEqual([
      say("filter_first"),
      say("card_upright"),
      say("fill_frame"),
      say("light_changes"),
    ]);
  });

  it("in daylight over a range: when to balance going down and coming up, and from where on it is out of reach", () => {
    const { procedure, depths, ...answer } = whiteBalance(RANGE);
    expect(procedure).toEqual([
      say("filter_first"),
      say("card_upright"),
      say("fill_frame"),
      say("going_down", { depths_m: answer.balance_depths_descending_m }),
      say("coming_up", { depths_m: answer.balance_depths_ascending_m }),
      say("out_of_reach", { depth_m: depths.find(({ in_reach }) => !in_reach)?.depth_m ?? 0 }),
      say("light_changes"),
    ]);
  });

  it("in daylight that leads over lamps: the lamps turned away first", () => {
    const { method, procedure } = whiteBalance(REEF_WITH_LAMPS);
    expect(method).toBe("card");
    expect(procedure[0]).toEqual(say("lamps_away"));
  });
});

/** Light that a white card in daylight sends through the water to the camera, without a filter. */
function cardLight(scene: Scene, depth_m: number) {
  const world = underwater(conditionsOf(scene), NOMINAL);
  return multiply(cardDaylightAt(world, depth_m), towardsCamera(world));
}

describe("the answer on a white balance", () => {
  it("balances again where the cast since the last balance is about to pass the tolerance, down and up", () => {
    const tolerance = 4;
    const scene = { ...WIDE, balance_tolerance_delta_e00: tolerance };
    const answer = whiteBalance(scene);
    // All of it is in reach, so that a new balance leaves nothing.
    expect(answer.depths.every(({ in_reach }) => in_reach)).toBe(true);
    for (const depths of [answer.balance_depths_descending_m, answer.balance_depths_ascending_m]) {
      expect(depths.length).toBeGreaterThan(2);
      for (let i = 1; i < depths.length; i++) {
        const castAt = (depth_m: number) =>
          castBetween(
            sensorProfile(sensorOf({}, { crosstalkSd: 0 })),
            cardLight(scene, depths[i - 1]),
            cardLight(scene, depth_m),
          );
        const apart = depths[i] - depths[i - 1];
        // A metre on it would have gone beyond, and where balances are no closer than a hand needs it has not yet.
        expect(castAt(depths[i] + Math.sign(apart))).toBeGreaterThan(tolerance);
        if (Math.abs(apart) > 2) expect(castAt(depths[i])).toBeLessThanOrEqual(tolerance);
      }
    }
  });

  it("leaves out of reach the cast that grey has after the gains that the camera can give, at equal lightness", () => {
    const { depths } = whiteBalance(RANGE);
    const profile = sensorProfile(sensorOf({}, { crosstalkSd: 0 }));
    const { d65White, daylightMatrix } = profile;
    const grey = (xyz: Vector3) =>
      labOf([(0.18 * xyz[0]) / xyz[1], 0.18, (0.18 * xyz[2]) / xyz[1]], WHITE_D65);
    for (const { depth_m, cast_left_delta_e00 } of depths.filter(({ in_reach }) => !in_reach)) {
      const raw = rawOf(profile, cardLight(RANGE, depth_m));
      const { gains } = balanceToCard(balanceReach(RANGE, profile), raw);
      const seen = apply(daylightMatrix, [
        raw[0] * gains[0] * d65White[0],
        raw[1] * gains[1] * d65White[1],
        raw[2] * gains[2] * d65White[2],
      ]);
      const left = deltaE00(grey(apply(daylightMatrix, d65White)), grey(seen));
      expect(left).toBeGreaterThan(1);
      expect(cast_left_delta_e00).toBeCloseTo(left, 9);
    }
  });

  it("balances to what leads in the middle of the range, whatever leads at its ends", () => {
    const lit: Scene = {
      ...REEF_WITH_LAMPS,
      water_type: "1C",
      lamps: [{ ...TWO_LAMPS, flux_lm: 8000, distance_m: 0.5 }],
    };
    const { zones } = mixedLight({ ...lit, min_depth_m: 1, max_depth_m: 40 });
    const deepest = zones[zones.length - 1];
    const from_m = deepest.min_depth_m;
    expect(deepest.verdict).toBe("lamps_lead");
    expect(from_m).toBeGreaterThan(3);
    const over = (min_depth_m: number, max_depth_m: number) =>
      whiteBalance({ ...lit, min_depth_m, max_depth_m }).method;
    expect(over(from_m - 4, from_m + 1)).toBe("card");
    expect(over(from_m - 1, from_m + 4)).toBe("card_at_lamp_distance");
  });

  it("rests on the light's sources and its own, all of them listed, and doubts a filter's shape where one is on", () => {
    const { sources, uncertainty } = whiteBalance({ ...RANGE, filter_kind: "red", filter_density: 0.9 });
    const known = models().map(({ id }) => id);
    for (const source of sources) expect(known).toContain(source);
    expect(sources).toEqual(expect.arrayContaining(["jerlov_1976", "ciede2000", "filter_shapes"]));
    const causes = uncertainty.map(({ code }) => code);
    expect(causes.some((cause) => cause.startsWith("filter_"))).toBe(true);
    const bare = whiteBalance(RANGE).uncertainty.map(({ code }) => code);
    expect(bare.some((cause) => cause.startsWith("filter_"))).toBe(false);
  });

  it("balances to lamps where they lead at the middle of the range", () => {
    const at = (distance_m: number) =>
      whiteBalance({ ...REEF_WITH_LAMPS, lamps: [{ ...TWO_LAMPS, distance_m }] });
    expect(at(0.1).method).toBe("card_at_lamp_distance");
    expect(at(3).method).toBe("card");
  });

  it("counts no filter's or sensor's doubt that bears not on it: what a pixel holds moves no gain", () => {
    const causes = (scene: Scene) => whiteBalance(scene).uncertainty.map(({ code }) => code);
    expect(causes({ ...RANGE, filter_kind: "red", filter_density: 0.6 })).not.toContain("full_well");
    expect(causes(RANGE)).toContain("sensor");
  });

  it("withholds kelvin where the light has none (CIE: beyond |duv| 0.05)", () => {
    const { depths, reasons } = whiteBalance(daylightScene("IB", 50, 20));
    expect(Math.abs(depths[0].duv)).toBeGreaterThan(0.05);
    expect(depths[0]).not.toHaveProperty("cct_K");
    expect(reasons.map(({ code }) => code)).toContain("cct_without_meaning");
    expect(whiteBalance(daylightScene("IB", 50, 1)).depths[0].cct_K).toBeGreaterThan(4000);
  });

  it("goes through the filter: behind a red one red needs less gain, by day and by lamps", () => {
    const gain = (scene: Scene) => whiteBalance(scene).depths[0].red_gain.likely;
    const scene = daylightScene("IB", 50, 8);
    const red = { ...scene, filter_kind: "red", filter_density: 0.6 } as const;
    expect(gain(red)).toBeLessThan(gain(scene));
    expect(gain({ ...atNight(red), lamps: [TWO_LAMPS] })).toBeLessThan(
      gain({ ...atNight(scene), lamps: [TWO_LAMPS] }),
    );
  });
});
