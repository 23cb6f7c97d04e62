import { atNight, daylightScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { cameraState } from "../camera/camera-state.js";
import { conditionsOf } from "../light/conditions.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import { mapEach, type NonEmpty } from "../lists/non-empty.js";
import type { Finish, Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { type Candidate, candidateFilter, GRID, NO_FILTER } from "./candidates.js";
import { type Merit, meritOf } from "./merit.js";
import { type Judged, judge, mayFilterGain, rangeError } from "./merits.js";
import { whereRedIsGone } from "./red-is-gone.js";

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
    const camera = cameraState(scene, NOMINAL, "in_camera");
    for (const { candidate, merits } of judged) {
      expect(merits).toEqual(
        [5, 12].map((depth_m) =>
          meritOf(stageAt(world, depth_m), candidateFilter(candidate, NOMINAL), camera, "in_camera"),
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
  const over = (
    of: NonEmpty<number>,
    without: NonEmpty<number>,
    changeable: boolean,
    redIsGone: boolean[] = [],
    mayGain = true,
  ) => {
    const merit = some();
    const bare: Judged = { ...erring(merit, without), candidate: NO_FILTER };
    return rangeError(erring(merit, of), { without: bare, redIsGone, mayGain, changeable });
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

  it("credits a filter with no gain where the light is not known, and with every loss", () => {
    expect(over([1, 2, 3], [4, 4, 4], false, [], false)).toBe(4);
    expect(over([5, 5, 5], [4, 4, 4], false, [], false)).toBe(5);
  });
});

describe("light whose colours are known", () => {
  const lit = (lamps: Scene["lamps"]) => mayFilterGain(conditionsOf({ ...atNight(scene), lamps }));
  const { cct_K: _, ...unnamed } = TWO_LAMPS;
  const named = { ...unnamed, led: "LED-B4" };

  it("is daylight, with lamps or without, and that of lamps whose LEDs are all named", () => {
    expect(mayFilterGain(conditionsOf(scene))).toBe(true);
    expect(mayFilterGain(conditionsOf({ ...scene, lamps: [TWO_LAMPS] }))).toBe(true);
    expect([lit([named]), lit([TWO_LAMPS]), lit([named, TWO_LAMPS])]).toEqual([true, false, false]);
  });

  it("differs between white LEDs that CIE 15:2018 tells apart by as much as a filter gains there at all", () => {
    const gainUnder = (led: string): number => {
      const conditions = conditionsOf({
        ...atNight(daylightScene("IB", 45, 15)),
        lamps: [{ ...unnamed, led }],
      });
      const [without, with_] = judge(
        conditions,
        NOMINAL,
        [15],
        [NO_FILTER, { kind: "magenta", density: 0.3 }],
      );
      return without.merits[0].delta_e00 - with_.merits[0].delta_e00;
    };
    const gains = ["LED-B1", "LED-B3", "LED-B4", "LED-B5", "LED-V1", "LED-V2"].map(gainUnder);
    expect(Math.max(...gains) - Math.min(...gains)).toBeGreaterThan(Math.max(...gains));
  });
});

describe("where nothing of red is red", () => {
  const conditions = conditionsOf({ ...scene, finish: "matched" });
  const filtered = (density: number, error: number, share: number): Judged => ({
    candidate: { kind: "red", density },
    merits: [{ ...some(), delta_e00: error, red_above_600_nm_share: share }],
  });
  const bare: Judged = { ...filtered(0, 9, 0.001), candidate: NO_FILTER };
  const gone = (judged: NonEmpty<Judged>) => whereRedIsGone(conditions, [5], judged);

  it("is asked of the filter that leaves the least error, so that none wins by being just dense enough", () => {
    expect(gone([bare, filtered(0.9, 7, 0.004), filtered(1.5, 7.2, 0.02)])).toEqual([true]);
    expect(gone([bare, filtered(0.9, 7.2, 0.004), filtered(1.5, 7, 0.02)])).toEqual([false]);
  });

  it("is nowhere without a filter to ask", () => {
    expect(gone([bare])).toEqual([false]);
  });

  it("hangs on water, camera and filters, and on no finish", () => {
    const depths: NonEmpty<number> = [5, 15, 20, 25, 30, 40];
    const under = (finish: Finish) => {
      const seen = conditionsOf({ ...daylightScene("IB", 60, 5, 40), finish });
      return whereRedIsGone(seen, depths, judge(seen, NOMINAL, depths, GRID) as NonEmpty<Judged>);
    };
    expect(under("matched")).toEqual([false, false, false, false, true, true]);
    expect(under("in_camera")).toEqual(under("matched"));
    expect(under("basic_edit")).toEqual(under("matched"));
  });
});
