import { publishedIlluminant } from "@sunfathom/fixtures/illuminants";
import { deltaE00, illuminant, labOf, scale } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { castBetween, castOfRaw, redExcessStops } from "./cast.js";
import { WHITE_D65 } from "./d65.js";
import { apply, type Vector3 } from "./matrix.js";
import { sensorOf } from "./sensor.js";
import { rawOf, sensorProfile } from "./sensor-profile.js";

const profile = sensorProfile(sensorOf({}, { crosstalkSd: 0 }));
const [warm, cool, noon] = [publishedIlluminant("A"), illuminant("D65"), illuminant("D55")];
const of = (balancedTo: Vector3, seen: Vector3) => castOfRaw(profile, balancedTo, seen);

describe("the cast that a grey takes", () => {
  it("is none for what was balanced to, however bright and of whatever colour", () => {
    for (const raw of [
      [1, 1, 1],
      [2, 3, 5],
      [0.1, 4, 0.7],
    ] as const) {
      expect(of(raw, raw)).toBeCloseTo(0, 6);
      expect(of(raw, [raw[0] * 40, raw[1] * 40, raw[2] * 40])).toBeCloseTo(0, 6);
    }
  });

  it("is of what each channel sees over what it was balanced to, and of nothing else", () => {
    for (const k of [0, 1, 2]) {
      const more: Vector3 = [k === 0 ? 1.5 : 1, k === 1 ? 1.5 : 1, k === 2 ? 1.5 : 1];
      const cast = of([1, 1, 1], more);
      expect(cast).toBeGreaterThan(2);
      expect(of([2, 3, 5], [2 * more[0], 3 * more[1], 5 * more[2]])).toBeCloseTo(cast, 9);
      // Brighter by a half is no colour.
      expect(of([1, 1, 1], [7 * more[0], 7 * more[1], 7 * more[2]])).toBeCloseTo(cast, 6);
    }
  });

  it("grows with how far the lights lie apart, and is as large between close ones from either side, to first order", () => {
    expect(castBetween(profile, cool, noon)).toBeGreaterThan(1);
    expect(castBetween(profile, cool, warm)).toBeGreaterThan(castBetween(profile, cool, noon) + 10);
    const [near, back]: Vector3[] = [
      [1.01, 1, 1],
      [1, 1.01, 1.01],
    ];
    expect(of([1, 1, 1], near) / of([1, 1, 1], back)).toBeCloseTo(1, 1);
  });

  it("is the CIEDE2000 of two greys of 18 %, one as D65 makes it and one as the light is seen, through the camera's own matrix", () => {
    const { d65White, daylightMatrix } = profile;
    const grey = (xyz: Vector3) =>
      labOf([(0.18 * xyz[0]) / xyz[1], 0.18, (0.18 * xyz[2]) / xyz[1]], WHITE_D65);
    for (const more of [
      [1.5, 1, 1],
      [1, 1, 1.5],
      [0.8, 1, 1.2],
    ] as const) {
      const seen = apply(daylightMatrix, [
        more[0] * d65White[0],
        more[1] * d65White[1],
        more[2] * d65White[2],
      ]);
      expect(of([1, 1, 1], more)).toBeCloseTo(deltaE00(grey(apply(daylightMatrix, d65White)), grey(seen)), 9);
    }
  });

  it("of two lights is that of what the sensor makes of them, the one balanced to first", () => {
    expect(castBetween(profile, cool, warm)).toBe(of(rawOf(profile, cool), rawOf(profile, warm)));
    expect(castBetween(profile, warm, cool)).not.toBeCloseTo(castBetween(profile, cool, warm), 3);
  });
});

describe("red in excess", () => {
  it("is none for what was balanced to, and changes its sign with the places of the lights", () => {
    expect(redExcessStops(profile, warm, scale(warm, 40))).toBeCloseTo(0, 10);
    expect(redExcessStops(profile, cool, warm)).toBeGreaterThan(0.5);
    expect(redExcessStops(profile, warm, cool)).toBeCloseTo(-redExcessStops(profile, cool, warm), 12);
  });

  it("adds up over a light between (law of ratios), and is the red over the green that the channels read", () => {
    expect(redExcessStops(profile, cool, noon) + redExcessStops(profile, noon, warm)).toBeCloseTo(
      redExcessStops(profile, cool, warm),
      12,
    );
    const [a, b] = [rawOf(profile, cool), rawOf(profile, warm)];
    expect(2 ** redExcessStops(profile, cool, warm)).toBeCloseTo((b[0] * a[1]) / (b[1] * a[0]), 9);
  });
});
