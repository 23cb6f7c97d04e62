import { describe, expect, it } from "vitest";
import { steps } from "./steps.js";

const settings = { iso: 800, f_number: 2.8 };
const red = { kind: "red", density: 0.6 } as const;
const figures = { with_e: 2.7, without_e: 4.9, loss_stops: 3.1 };

describe("a step", () => {
  it("names the filter, and the mount that it is carried on", () => {
    expect(steps.mount_filter({ filter: red, ...figures }).text).toContain(
      "Mount a red filter of density 0.60",
    );
    const carried = (mount: "flip" | "clip_on") =>
      steps.carry_filter({ filter: red, mount, from_m: 5, to_m: 15, ...figures }).text;
    expect(carried("flip")).toContain("on its flip mount, clean, for 5.0 to 15.0 m");
    expect(carried("clip_on")).toContain("on its clip mount");
  });

  it("changes the filter as the mount does", () => {
    const at = { depth_m: 6.2, stops: 1.4 };
    expect(steps.filter_in({ ...at, mount: "flip" }).text).toContain("At 6.2 m swing the filter in");
    expect(steps.filter_in({ ...at, mount: "clip_on" }).text).toContain("clip the filter on");
    expect(steps.filter_out({ ...at, mount: "flip" }).text).toContain("swing the filter out");
    expect(steps.filter_out({ ...at, mount: "clip_on" }).text).toContain("take the filter off");
  });

  it("names depths in a list, the last with an and", () => {
    expect(steps.balance_again({ depths_m: [8, 12.5], tolerance: 8 }).text).toContain("at 8.0 and 12.5 m.");
  });

  it("sets the frame as it stands on the dial", () => {
    expect(steps.set_frame({ exposure: { shutter_s: 1 / 50 }, bits: 10 }).text).toContain("1/50 s, exposure");
  });

  it("is behind the neutral density where it is too bright", () => {
    const begin = (is_too_bright: boolean) =>
      steps.start_exposure({ ...settings, ev: 8, is_too_bright }).text;
    expect(begin(true)).toContain("behind the neutral density");
    expect(begin(false)).not.toContain("neutral density");
  });

  it("tells of a card what it leaves, where it leaves something", () => {
    expect(steps.balance_on_card({ cast: 0 }).text).not.toContain("quite neutral");
    expect(steps.balance_on_card({ cast: 2.34 }).why).toContain("a cast of 2.3 (CIEDE2000)");
  });

  it("offers the ways that are enough, one or the other, or says that none is", () => {
    const dark = { ...settings, shortfall_stops: 2 };
    const ways = [
      { code: "shallower", parameters: { depth_m: 7.4 } },
      { code: "longer_shutter", parameters: { shutter_s: 0.04, gains_stops: 2 } },
    ] as const;
    expect(steps.too_dark({ ...dark, ways }).text).toMatch(
      /2\.0 stops are missing here\. At 7\.4 m there is light enough.+ Or: Expose for 1\/25 s/,
    );
    expect(steps.too_dark({ ...dark, ways: [] }).text).toMatch(/Nothing within reach pays for it\.$/);
  });

  it("names the other way where lamps are to stay on", () => {
    const way = { code: "come_closer", parameters: { distance_m: 0.32 } } as const;
    expect(steps.lamps_other_way({ way, left: 4.2 }).text).toBe(
      "If the lamps are to stay on: Bring the lamps to 0.32 m from the subject and balance to them: they then outshine daylight.",
    );
  });

  it("leaves nobody in the dark, and the lamps on the rig", () => {
    expect(steps.lamps_off_before_air({}).text).toContain("light of your own");
    expect(steps.lamps_off({ split: 6, red_excess: 1, cost: 0.4 }).text).toContain("on the rig");
  });

  it("rinses what was under water, each as its maker says", () => {
    expect(steps.rinse({ gear: ["housing"] }).text).toBe(
      "Rinse and dry the housing as its maker says before anything is opened.",
    );
    expect(steps.rinse({ gear: ["housing", "filter", "lamps"] }).text).toContain(
      "the housing, the filter and the lamps as their makers say",
    );
  });
});
