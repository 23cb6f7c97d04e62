/**
 * Rules of the trade (common practice, no published source), which must come out of the physics. Each test asserts the band in
 * which the model itself says so, and names where the model and the trade part.
 */

import { atNight, gradedScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { filterChoice } from "./filter-choice.js";

const at = (type: string, depth_m: number, sun = 50) => filterChoice(gradedScene(type, sun, depth_m));

describe("in blue water, ambient light only", () => {
  it.each(["I", "IA", "IB", "II"])(
    "%s: no filter to 2.5 m, red from 5 m down; the trade says from about 3 m",
    (type) => {
      for (const depth of [1, 2, 2.5]) expect(at(type, depth).filter_kind).toBe("none");
      for (const depth of [5, 10, 20]) expect(at(type, depth).filter_kind).toBe("red");
      // Between them lies the turn, where it hardly matters.
      const turn = at(type, 4);
      expect(["none", "red"]).toContain(turn.filter_kind);
      const gain = turn.colour_error_without_delta_e00.likely - turn.colour_error_delta_e00.likely;
      expect(gain).toBeLessThan(1);
    },
  );

  it("deeper in blue water a denser filter is advised, and with its density its loss of light grows", () => {
    const answers = [4, 5, 7, 10].map((depth) => at("IB", depth));
    for (let i = 1; i < answers.length; i++) {
      expect(answers[i].filter_density ?? 0).toBeGreaterThan(answers[i - 1].filter_density ?? 0);
      expect(answers[i].filter_loss_stops.likely).toBeGreaterThan(answers[i - 1].filter_loss_stops.likely);
    }
  });

  it("a filter adds no red light: it raises red's share of the red channel, not its amount", () => {
    const answer = at("IB", 10);
    const [depth] = answer.depths;
    expect(depth.advised_red_signal_above_600_nm_share).toBeGreaterThan(
      depth.without_red_signal_above_600_nm_share,
    );
    expect(answer.filter_loss_stops.low).toBeGreaterThan(0);
    expect(answer.reasons.map((r) => r.code)).toContain("filter_adds_no_red");
  });
});

describe("in greenish water", () => {
  it.each([
    ["1C", 3, 12],
    ["3C", 3, 9],
    ["5C", 3, 5],
  ] as const)("%s: magenta instead of red, from %d to %d m", (type, from, to) => {
    for (const depth of [from, (from + to) / 2, to]) expect(at(type, depth).filter_kind).toBe("magenta");
  });

  it.each(["1C", "3C", "5C"])("%s: red never wins, at any depth", (type) => {
    for (const depth of [1, 3, 6, 10, 15, 20]) expect(at(type, depth).filter_kind).not.toBe("red");
  });
});

describe("in the most turbid water, where blue and not red is the missing channel", () => {
  it.each([
    ["7C", 6],
    ["9C", 4],
  ] as const)(
    "%s: no filter helps from %d m down (in the metres above it the model gives magenta a little)",
    (type, from) => {
      for (const depth of [from, from + 2, 10, 15, 20]) expect(at(type, depth).filter_kind).toBe("none");
      for (const depth of [2, 3]) expect(at(type, depth).filter_kind).not.toBe("red");
    },
  );
});

describe("once the light has run out", () => {
  it.each([
    ["3C", 20],
    ["5C", 12],
  ] as const)("%s at %d m: nothing, because a filter would cost what little there is", (type, depth) => {
    const answer = at(type, depth, 20);
    expect(answer.filter_kind).toBe("none");
    expect(answer.reasons.map((r) => r.code)).toContain("light_has_run_out");
  });
});

describe("where lamps are the only light", () => {
  it.each(["IB", "1C", "3C", "7C"])("%s: no lens filter, balance to the lamps", (type) => {
    const answer = filterChoice({ ...atNight(gradedScene(type, 45, 15)), lamps: [TWO_LAMPS] });
    expect(answer.filter_kind).toBe("none");
    expect(answer.reasons.map((r) => r.code)).toContain("lamps_are_the_only_light");
  });

  it("the answer is the same at 5 and at 40 m: only the water between light, subject and camera counts", () => {
    const night = (depth: number) =>
      filterChoice({ ...atNight(gradedScene("IB", 45, depth)), lamps: [TWO_LAMPS] });
    expect(night(40).colour_error_delta_e00).toEqual(night(5).colour_error_delta_e00);
  });
});
