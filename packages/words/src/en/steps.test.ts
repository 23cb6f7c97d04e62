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
    expect(carried("flip")).toContain("on its flip mount, clean, for 5 to 15 m");
    expect(carried("clip_on")).toContain("on its clip mount");
  });

  it("takes off by its name what is mounted, and names what would be better than what stays", () => {
    const given = { kind: "magenta", density: 1.5 } as const;
    expect(steps.mount_filter({ filter: red, instead_of: given, ...figures }).text).toMatch(
      /^Take a magenta filter of density 1\.50 off\. Mount a red/,
    );
    expect(steps.keep_filter({ filter: given, better: red, ...figures }).text).toContain(
      "A red filter of density 0.60 is better",
    );
  });

  it("changes the filter as the mount does, and sets the camera", () => {
    const at = { depth_m: 6, ...settings };
    expect(steps.filter_in({ ...at, mount: "flip" }).text).toBe(
      "Swing the filter in, set ISO 800 at f/2.8 and balance again.",
    );
    expect(steps.filter_in({ ...at, mount: "clip_on" }).text).toContain("Clip the filter on");
    expect(steps.filter_out({ ...at, mount: "flip" }).text).toContain("Swing the filter out");
    expect(steps.filter_out({ ...at, mount: "clip_on" }).text).toContain("Take the filter off");
  });

  it("names depths in a list, the last with an and, and says what nearness costs", () => {
    const again = { depths_m: [3.5, 8, 12], tolerance: 11.6 };
    expect(steps.balance_again(again).text).toContain("at 3.5, 8 and 12 m.");
    expect(steps.balance_again({ ...again, asked: { tolerance: 8 } }).why).toContain(
      "a clear cast (12) has built up, more than the 8 allowed",
    );
  });

  it("sets the frame as it stands on the dial", () => {
    expect(steps.set_frame({ exposure: { shutter_s: 1 / 50 }, bits: 10 }).text).toContain("1/50 s, exposure");
  });

  it("is behind the neutral density where that is on, and at an exposure time of its own where it has one", () => {
    const begin = (more: object) => steps.start_exposure({ ...settings, ev: 8, ...more }).text;
    expect(begin({ behind: { density: 0.9 } })).toContain("f/2.8 behind the ND;");
    expect(begin({ shutter: { shutter_s: 1 / 200 } })).toContain("f/2.8 and 1/200 s;");
    expect(begin({})).toContain("f/2.8;");
  });

  it("tells of a card what it leaves, where it leaves something", () => {
    expect(steps.balance_on_card({ cast: 0 }).text).not.toContain("in the edit");
    expect(steps.balance_on_card({ cast: 2.34 })).toEqual({
      text: expect.stringContaining("Balance the rest in the edit."),
      why: expect.stringContaining("a slight cast (2)"),
    });
  });

  it("offers the ways that are enough, one or the other, or says that none is", () => {
    const dark = { ...settings, shortfall_stops: 2 };
    const ways = [
      { code: "shallower", parameters: { depth_m: 7.4 } },
      { code: "longer_shutter", parameters: { shutter_s: 0.04, gains_stops: 2 } },
    ] as const;
    expect(steps.too_dark({ ...dark, ways }).text).toMatch(
      /this is 2 stops too dark\. At 7\.4 m there is light enough.+ Or: Expose for 1\/25 s/,
    );
    expect(steps.too_dark({ ...dark, ways: [] }).text).toMatch(/Nothing within reach pays for it\.$/);
  });

  it("names the other way where lamps are to stay on", () => {
    const other = { way: { code: "come_closer", parameters: { distance_m: 0.32 } }, left: 4.2 } as const;
    expect(steps.lamps_off({ split: 6, red_excess: 1, cost: 0.4, other }).text).toContain(
      "If they are to stay on: ",
    );
  });

  it("leaves nobody in the dark, and the lamps on the rig", () => {
    expect(steps.lamps_off_before_air({}).text).toContain("keep a light to see");
    expect(steps.lamps_off({ split: 6, red_excess: 1, cost: 0.4 }).text).toContain("on the rig");
  });

  it("rinses what was under water, each as its maker says", () => {
    expect(steps.rinse({ gear: ["housing"] }).text).toContain(
      "Rinse and dry the housing as its maker says before anything is opened.",
    );
    expect(steps.rinse({ gear: ["housing", "filter", "lamps"] }).text).toContain(
      "the housing, the filter and the video lights as their makers say",
    );
  });
});
