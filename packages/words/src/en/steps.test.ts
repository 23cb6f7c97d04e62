// Guards that steps tell the figures, filters and mounts that they come with. The sentences themselves are read in the approved pages.
import { describe, expect, it } from "vitest";
import { steps } from "./steps.js";

const settings = { iso: 800, f_number: 2.8 };
const red = { kind: "red", density: 0.6 } as const;
const figures = { with_e: 2.7, without_e: 4.9, loss_stops: 3.1 };

describe("a step", () => {
  it("names the filter, what it costs and gains, and where it is used", () => {
    const { text, why } = steps.mount_filter({ filter: red, ...figures });
    expect(text).toMatch(/\bred\b.*\b0\.6\b/);
    // 100 (4.9 - 2.7) / 4.9 = 45.
    expect(why).toMatch(/\b45 %.*\b3 stops/);
    const carried = (mount: "flip" | "clip_on") =>
      steps.carry_filter({ filter: red, mount, from_m: 4.4, to_m: 15.2, from_start: false, ...figures }).text;
    expect(carried("flip")).toMatch(/flip.*4\.5 to 15 m/);
    expect(carried("clip_on")).toMatch(/clip.*4\.5 to 15 m/);
    const begun = {
      filter: red,
      mount: "flip",
      from_m: 4.4,
      to_m: 15.2,
      from_start: true,
      ...figures,
    } as const;
    expect(steps.carry_filter(begun).text).not.toBe(carried("flip"));
  });

  it("names what comes off before what goes on, and what would be better than what stays", () => {
    const given = { kind: "magenta", density: 1.5 } as const;
    expect(steps.mount_filter({ filter: red, instead_of: given, ...figures }).text).toMatch(
      /magenta.*\b1\.5\b.*\bred\b.*\b0\.6\b/,
    );
    expect(steps.keep_filter({ filter: given, better: red, ...figures }).text).toMatch(
      /magenta.*\b1\.5\b.*\bred\b.*\b0\.6\b/i,
    );
  });

  it("changes the filter as its mount does, each way in its own words, and sets the camera", () => {
    const at = { depth_m: 6, ...settings };
    const said = (["flip", "clip_on"] as const).flatMap((mount) => [
      steps.filter_in({ ...at, mount }).text,
      steps.filter_out({ ...at, mount }).text,
    ]);
    expect(new Set(said)).toHaveLength(4);
    for (const text of said) expect(text).toContain("ISO 800 at f/2.8");
  });

  it("lists depths that a diver can hit, and says why they are no closer where that was asked", () => {
    const again = { depths_m: [3.5, 7.8, 12.2], tolerance: 11.6 };
    const plain = steps.balance_again(again);
    const asked = steps.balance_again({ ...again, asked: { tolerance: 8 } });
    expect(plain.text).toContain("3.5, 8 and 12 m");
    expect(asked.why.length).toBeGreaterThan(plain.why.length);
  });

  it("sets the frame as it stands on the dial", () => {
    expect(steps.set_frame({ exposure: { shutter_s: 1 / 50 }, bits: 10 }).text).toMatch(/1\/50 s.*\b10 bits/);
  });

  it("starts with the ND that is on, and with an exposure time of its own where it has one", () => {
    const begin = (more: object) => steps.start_exposure({ ...settings, ev: 8, ...more });
    expect(begin({ behind: { density: 0.9 } }).text).toMatch(/f\/2\.8 .*ND/);
    expect(begin({ shutter: { shutter_s: 1 / 200 } }).text).toMatch(/f\/2\.8 .*1\/200 s/);
    expect(begin({}).text).not.toMatch(/ND|\d s/);
    expect(begin({}).why).toContain("EV 8");
  });

  it("tells what a card leaves to the edit, where it leaves something", () => {
    const [none, some, more] = [0, 2.34, 9].map((cast) => steps.balance_on_card({ cast }));
    expect(some?.text).not.toBe(none?.text);
    expect(some?.why).not.toBe(more?.why);
  });

  it("offers each way that is enough, or says that there is none", () => {
    const dark = { ...settings, shortfall_stops: 2 };
    const ways = [
      { code: "shallower", parameters: { depth_m: 7.4 } },
      { code: "longer_shutter", parameters: { shutter_s: 0.04, gains_stops: 2 } },
    ] as const;
    expect(steps.too_dark({ ...dark, ways }).text).toMatch(/2 stops.*\b7 m\b.*1\/25 s/);
    expect(steps.too_dark({ ...dark, ways: [] }).text).toMatch(/2 stops.*\./);
    expect(steps.too_dark({ ...dark, ways: [] }).text).not.toMatch(/7 m|1\/25/);
  });

  it("names the other way where video lights could stay on", () => {
    const off = { split: 6, red_excess: 1, cost: 0.4 };
    const other = { way: { code: "come_closer", parameters: { distance_m: 0.32 } }, left: 4.2 } as const;
    expect(steps.lamps_off({ ...off, other }).text).toContain("0.3 m");
    expect(steps.lamps_off(off).text).not.toMatch(/\d m/);
  });

  it("rinses what was under water", () => {
    const gear = ["housing", "filter", "lamps"] as const;
    const said = [1, 2, 3].map((count) => steps.rinse({ gear: gear.slice(0, count) }).text);
    expect(new Set(said)).toHaveLength(3);
  });
});
