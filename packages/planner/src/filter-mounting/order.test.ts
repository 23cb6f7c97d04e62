// Which holder is tried first is common practice, no published source; the rest guards how the order is kept.
import { describe, expect, it } from "vitest";
import type { FilterHolder } from "../scene/filter-mounting-scene.js";
import { judge } from "./judge.js";
import { lensOf } from "./lens.js";
import { ACTION_CAMERA, COMPACT, WIDE_ZOOM } from "./mounting-scenes.test-support.js";
import { byFitness, holdersByHabit } from "./order.js";

describe("holders", () => {
  it("are tried by threads before hinges and clips, an action camera's frame last, or first where it is one", () => {
    const behindPort = ["screw_on_lens", "screw_on_port", "flip", "clip_on", "rear_sheet", "action_camera"];
    expect(holdersByHabit(WIDE_ZOOM)).toEqual(behindPort);
    expect(holdersByHabit(COMPACT)).toEqual(behindPort);
    expect(holdersByHabit(ACTION_CAMERA)).toEqual([
      "action_camera",
      "screw_on_port",
      "flip",
      "clip_on",
      "screw_on_lens",
      "rear_sheet",
    ]);
  });

  it.each(["flip", "clip_on"] as const)(
    "begin with %s where that is to change at depth, each once",
    (change) => {
      const holders = holdersByHabit({ ...COMPACT, filter_change_underwater: change });
      expect(holders[0]).toBe(change);
      expect([...holders].sort()).toEqual([...holdersByHabit(COMPACT)].sort());
    },
  );
});

describe("what was judged", () => {
  const measured = { ...COMPACT, port_outer_diameter_mm: 84 };
  const judged = holdersByHabit(measured).map((holder) => judge(measured, lensOf(measured), holder));
  const ordered = (asked?: FilterHolder) =>
    byFitness(judged, asked).map(({ holder, verdict }) => `${holder} ${verdict}`);

  it("comes by verdict, then by habit", () => {
    expect(ordered()).toEqual([
      "screw_on_port fits",
      "flip fits",
      "clip_on fits",
      "screw_on_lens does_not_fit",
      "rear_sheet does_not_fit",
      "action_camera does_not_fit",
    ]);
  });

  it("is a sheet behind the lens only after what a picture of a wall settles", () => {
    const all = holdersByHabit(WIDE_ZOOM).map((holder) => judge(WIDE_ZOOM, lensOf(WIDE_ZOOM), holder));
    expect(
      byFitness(all, undefined)
        .slice(0, 2)
        .map(({ holder, verdict }) => `${holder} ${verdict}`),
    ).toEqual(["screw_on_lens fits_with_care", "rear_sheet fits"]);
  });

  it("begins with the one asked for, unless that does not fit", () => {
    expect(ordered("clip_on").slice(0, 3)).toEqual(["clip_on fits", "screw_on_port fits", "flip fits"]);
    expect(ordered("rear_sheet")).toEqual(ordered());
  });
});
