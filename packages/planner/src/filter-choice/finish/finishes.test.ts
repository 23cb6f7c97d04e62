// Each finish by its definition, and against pictures whose right values are published.

import { publishedIlluminant } from "@sunfathom/fixtures/illuminants";
import { CHART_PATCHES, deltaE00, labOf, multiply } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { WHITE_D65, xyzUnderD65 } from "../../camera/d65.js";
import type { Vector3 } from "../../camera/matrix.js";
import { luminanceOf, pictureMatrix, pictureOfXyz, xyzOfPicture } from "../../camera/picture.js";
import { sensorOf } from "../../camera/sensor.js";
import { rawOf, sensorProfile } from "../../camera/sensor-profile.js";
import { basicEdit } from "./basic-edit.js";
import { inCamera } from "./in-camera.js";
import type { Finished, Seen } from "./seen.js";

const profile = sensorProfile(sensorOf({}, { crosstalkSd: 0 }));
const matrix = pictureMatrix(profile);
const D65 = publishedIlluminant("D65");
const GREYS = [18, 19, 20, 21, 22, 23];

/** The chart under D65, balanced to it, as recorded after something was done to each raw channel. */
function chart(change: (raw: Vector3) => Vector3 = (raw) => raw, variance: Vector3 = [0, 0, 0]): Seen[] {
  const white = rawOf(profile, D65);
  return CHART_PATCHES.map(({ reflectance }) => {
    const raw = rawOf(profile, multiply(D65, reflectance));
    const wantedXyz = xyzUnderD65(reflectance);
    return {
      wantedXyz,
      wantedLab: labOf(wantedXyz, WHITE_D65),
      weight: 1,
      from: change([raw[0] / white[0], raw[1] / white[1], raw[2] / white[2]]),
      variance,
    };
  });
}
const error = (seen: readonly Seen[], finished: Finished): number =>
  seen.reduce((sum, s) => sum + deltaE00(s.wantedLab, labOf(finished(...s.from), WHITE_D65)), 0) /
  seen.length;
const greysOf = (seen: readonly Seen[]) => GREYS.map((i) => seen[i]);
const edited = (seen: readonly Seen[]) => basicEdit(seen, greysOf(seen), matrix);

describe("the picture", () => {
  it("has the primaries and the white of ITU-R BT.709: their chromaticities, and luma 0.2126, 0.7152 and 0.0722", () => {
    const chromaticity = ([X, Y, Z]: Vector3) => [X / (X + Y + Z), Y / (X + Y + Z)];
    const close = (x: number, y: number) => [expect.closeTo(x, 3), expect.closeTo(y, 3)];
    expect(chromaticity(xyzOfPicture(1, 0, 0))).toEqual(close(0.64, 0.33));
    expect(chromaticity(xyzOfPicture(0, 1, 0))).toEqual(close(0.3, 0.6));
    expect(chromaticity(xyzOfPicture(0, 0, 1))).toEqual(close(0.15, 0.06));
    expect(chromaticity(xyzOfPicture(1, 1, 1))).toEqual(close(0.3127, 0.329));
    expect([luminanceOf([1, 0, 0]), luminanceOf([0, 1, 0]), luminanceOf([0, 0, 1])]).toEqual([
      expect.closeTo(0.2126, 3),
      expect.closeTo(0.7152, 3),
      expect.closeTo(0.0722, 3),
    ]);
  });

  it("holds no more than it can, and leads back to what it came from", () => {
    expect(xyzOfPicture(3, 1, 1)).toEqual(xyzOfPicture(1, 1, 1));
    expect(xyzOfPicture(-2, 0, 0)).toEqual([0, 0, 0]);
    const back = pictureOfXyz(xyzOfPicture(0.2, 0.5, 0.7));
    expect(back).toEqual([0.2, 0.5, 0.7].map((v) => expect.closeTo(v, 10)));
  });
});

describe("in camera", () => {
  it("keeps grey what is grey after balance, at any level", () => {
    for (const level of [0.02, 0.18, 0.9]) {
      const [r, g, b] = pictureOfXyz(inCamera(matrix)(level, level, level));
      expect([r, g, b]).toEqual([level, level, level].map((v) => expect.closeTo(v, 10)));
    }
  });

  it("shows the chart under D65 with a mean CIEDE2000 below 3 (typical of camera matrices, from memory)", () => {
    expect(error(chart(), inCamera(matrix))).toBeLessThan(3);
  });

  it("leaves haze, darkness and a cast where they are", () => {
    const plain = error(chart(), inCamera(matrix));
    const hazy = chart(([r, g, b]) => [r + 0.1, g + 0.1, b + 0.1]);
    const dark = chart(([r, g, b]) => [r / 4, g / 4, b / 4]);
    const cast = chart(([r, g, b]) => [r / 2, g, b]);
    for (const seen of [hazy, dark, cast]) expect(error(seen, inCamera(matrix))).toBeGreaterThan(plain + 5);
  });
});

describe("a basic edit", () => {
  const plain = error(chart(), inCamera(matrix));

  it.each([
    [
      "a veil, by black level and exposure",
      ([r, g, b]: Vector3): Vector3 => [0.6 * r + 0.05, 0.6 * g + 0.05, 0.6 * b + 0.05],
    ],
    ["two stops of darkness, by exposure", ([r, g, b]: Vector3): Vector3 => [r / 4, g / 4, b / 4]],
  ])("takes out %s", (_, change) => {
    const seen = chart(change);
    expect(error(seen, inCamera(matrix))).toBeGreaterThan(plain + 5);
    expect(error(seen, edited(seen))).toBeLessThan(plain + 0.5);
  });

  it("takes most of a cast out of greys, though not all out of colours: its balance comes after the camera's matrix", () => {
    const seen = chart(([r, g, b]) => [0.7 * r, g, b]);
    expect(error(greysOf(seen), edited(seen))).toBeLessThan(0.3 * error(greysOf(seen), inCamera(matrix)));
    expect(error(seen, edited(seen))).toBeGreaterThan(plain);
  });

  it("strengthens colours that are pale, and those only: greys stay grey", () => {
    const pale = chart(([r, g, b]) => {
      const mean = (r + g + b) / 3;
      return [(r + mean) / 2, (g + mean) / 2, (b + mean) / 2];
    });
    expect(error(pale, edited(pale))).toBeLessThan(0.5 * error(pale, inCamera(matrix)));
    const [x, y, z] = pictureOfXyz(edited(pale)(...pale[21].from));
    expect(Math.max(x, y, z) - Math.min(x, y, z)).toBeLessThan(0.01);
  });

  it("does not strengthen what is mostly noise", () => {
    const noisy = chart(([r, g, b]) => [(r + g) / 2, g, (b + g) / 2], [0.02, 0.02, 0.02]);
    const clean = noisy.map((seen) => ({ ...seen, variance: [0, 0, 0] as const }));
    const spread = (seen: readonly Seen[]) => {
      const [r, g, b] = pictureOfXyz(edited(seen)(...seen[14].from));
      return Math.max(r, g, b) - Math.min(r, g, b);
    };
    expect(spread(noisy)).toBeLessThan(spread(clean));
  });

  it("cannot bring back a channel that was clipped away", () => {
    const gone = chart(([, g, b]) => [0, g, b]);
    const finished = edited(gone);
    expect(error(gone, finished)).toBeGreaterThan(plain + 5);
    expect(gone.flatMap(({ from }) => [...finished(...from)]).every(Number.isFinite)).toBe(true);
  });

  it("is finite where nothing was recorded", () => {
    const black = chart(() => [0, 0, 0]);
    expect(edited(black)(0, 0, 0).every(Number.isFinite)).toBe(true);
  });
});
