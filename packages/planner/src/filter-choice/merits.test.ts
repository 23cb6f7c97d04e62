import { describe, expect, it } from "vitest";
import { atNight, daylightScene, TWO_LAMPS } from "../../../../test/support/scenes.js";
import { cameraState } from "../camera/camera-state.js";
import type { Settings } from "../camera/exposure-settings.js";
import { conditionsOf } from "../light/conditions.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import { mapEach, type NonEmpty } from "../lists/non-empty.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { type Candidate, candidateFilter, NO_FILTER } from "./candidates.js";
import { type Merit, meritOf } from "./merit.js";
import { creditUnder, type Judged, judge, rangeError, whereRedIsGone } from "./merits.js";

const scene = daylightScene("IB", 45, 5, 12);
const RED: Candidate = { kind: "red", density: 0.6 };

/** A merit with another error. */
const erring = (merit: Merit, errors: NonEmpty<number>): Judged => ({
  candidate: RED,
  merits: mapEach(errors, (delta_e00) => ({ ...merit, delta_e00 })),
});
const some = () => judge(conditionsOf(scene), NOMINAL, [5], [NO_FILTER])[0].merits[0];

describe("the merits of candidates", () => {
  it("are those of each at each depth, in the order asked for", () => {
    const conditions = conditionsOf(scene);
    const judged = judge(conditions, NOMINAL, [5, 12], [RED, NO_FILTER]);
    expect(judged.map(({ candidate }) => candidate)).toEqual([RED, NO_FILTER]);
    const world = underwater(conditions, NOMINAL);
    const camera = cameraState(scene, NOMINAL, "matched");
    for (const { candidate, merits } of judged) {
      expect(merits).toEqual(
        [5, 12].map((depth_m) =>
          meritOf(stageAt(world, depth_m), candidateFilter(candidate, NOMINAL), camera, "matched"),
        ),
      );
    }
  });

  it("move with what is not known: the water, the camera and the filter's curve", () => {
    const conditions = conditionsOf(scene);
    const errorIn = (change: object) =>
      judge(conditions, { ...NOMINAL, ...change }, [10], [RED])[0].merits[0].delta_e00;
    for (const change of [{ kdRemainderScale: 1.5 }, { crosstalkSd: 1 }, { filterShape: { shift_nm: 10 } }]) {
      expect(Math.abs(errorIn(change) - errorIn({}))).toBeGreaterThan(0.01);
    }
  });
});

describe("the error over a range", () => {
  const ALL = { inTheDark: true, inLampLight: true };

  const over = (
    of: NonEmpty<number>,
    without: NonEmpty<number>,
    changeable: boolean,
    redIsGone: boolean[] = [],
    credit = ALL,
    settings: Partial<Settings> = {},
  ) => {
    const merit = some();
    const bare: Judged = { ...erring(merit, without), candidate: NO_FILTER };
    const dimmed = { ...merit, settings: { ...merit.settings, ...settings } };
    return rangeError(erring(dimmed, of), { without: bare, redIsGone, credit, changeable });
  };

  it("is the mean over its depths where the mount does not change", () => {
    expect(over([1, 2, 6], [2, 2, 2], false)).toBe(3);
  });

  it("counts with or without at each depth, whichever leaves less, where it does", () => {
    // 1, 2 and 2 instead of 1, 2 and 6.
    expect(over([1, 2, 6], [2, 2, 2], true)).toBeCloseTo(5 / 3, 12);
    expect(over([2, 2, 2], [2, 2, 2], true)).toBe(2);
  });

  it("credits a filter with no gain where nothing of red is red, and with every loss", () => {
    expect(over([1, 2, 3], [4, 4, 4], false, [false, true, true])).toBe((1 + 4 + 4) / 3);
    expect(over([5, 5, 5], [4, 4, 4], false, [true, true, true])).toBe(5);
  });

  it("credits no gain to a picture more than a stop too dark, nor to one in lamp light, where it is looked at as it is", () => {
    const seen = { inTheDark: false, inLampLight: true };
    expect(over([1, 1, 1], [4, 4, 4], false, [], seen, { off_by_stops: -1.1 })).toBe(4);
    expect(over([1, 1, 1], [4, 4, 4], false, [], seen, { off_by_stops: -0.9 })).toBe(1);
    expect(over([1, 1, 1], [4, 4, 4], false, [], ALL, { off_by_stops: -5 })).toBe(1);
    expect(over([1, 1, 1], [4, 4, 4], false, [], { inTheDark: true, inLampLight: false })).toBe(4);
  });
});

describe("what a filter is credited for under a finish", () => {
  const night = conditionsOf({ ...atNight(scene), lamps: [TWO_LAMPS] });

  it("is every gain where a grade follows; in a picture that is looked at none in lamp light, or in the dark", () => {
    const day = conditionsOf(scene);
    expect(creditUnder("matched", night)).toEqual({ inTheDark: true, inLampLight: true });
    for (const finish of ["in_camera", "basic_edit"] as const) {
      expect(creditUnder(finish, day)).toEqual({ inTheDark: false, inLampLight: true });
      expect(creditUnder(finish, night)).toEqual({ inTheDark: false, inLampLight: false });
    }
  });
});

describe("where nothing of red is red", () => {
  const filtered = (density: number, error: number, share: number): Judged => ({
    candidate: { kind: "red", density },
    merits: [{ ...some(), delta_e00: error, red_above_600_nm_share: share }],
  });
  const bare: Judged = { ...filtered(0, 9, 0.001), candidate: NO_FILTER };

  it("is asked of the filter that leaves the least error, so that none wins by being just dense enough", () => {
    expect(whereRedIsGone([bare, filtered(0.9, 7, 0.004), filtered(1.5, 7.2, 0.02)])).toEqual([true]);
    expect(whereRedIsGone([bare, filtered(0.9, 7.2, 0.004), filtered(1.5, 7, 0.02)])).toEqual([false]);
  });

  it("is nowhere without a filter to ask", () => {
    expect(whereRedIsGone([bare])).toEqual([false]);
  });
});
