import { daylightScene } from "@sunfathom/fixtures/scenes";
import { column, numberIn, readTable } from "@sunfathom/fixtures/tables";
import {
  deltaE00,
  type FloorKind,
  floorReflectance,
  illuminant,
  labOf,
  multiply,
  X_BAR,
  Y_BAR,
  Z_BAR,
} from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { attenuation } from "../attenuation/attenuation.js";
import { filterChoice } from "../filter-choice/filter-choice.js";
import type { SensorSample } from "../scene/scene.js";
import { WHITE_D65, xyzUnderD65 } from "./d65.js";
import { apply } from "./matrix.js";
import { sensorOf } from "./sensor.js";
import { rawOf, sensorProfile } from "./sensor-profile.js";

const rows = readTable("sensor_rgb_mean");
const at = (nm: number) => (nm - 380) / 5;
const mean = (crosstalkSd: number) => sensorOf({}, { crosstalkSd });

describe("the mean sensor", () => {
  it("is the table's mean of cameras, its channels as high as they stand to each other, to five decimals", () => {
    const { red, green, blue } = mean(0);
    for (const row of rows) {
      const i = at(numberIn(row, "wavelength_nm"));
      if (!Number.isInteger(i)) continue;
      expect(red[i]).toBeCloseTo(0.75 * numberIn(row, "mean_R"), 5);
      expect(green[i]).toBeCloseTo(numberIn(row, "mean_G"), 5);
      expect(blue[i]).toBeCloseTo(0.85 * numberIn(row, "mean_B"), 5);
    }
    expect(column(rows, "mean_R").length).toBeGreaterThan(20);
  });

  it("sees more or less green and blue in red by cross-talk, red light as it is, and no other channel changes", () => {
    const [less, middle, more] = [mean(-1), mean(0), mean(1)];
    expect(more.red[at(530)]).toBeGreaterThan(middle.red[at(530)]);
    expect(less.red[at(530)]).toBeLessThan(middle.red[at(530)]);
    expect(more.red[at(620)]).toBe(middle.red[at(620)]);
    expect(more.green).toEqual(middle.green);
    expect(more.blue).toEqual(middle.blue);
  });

  it("is the same one when it is asked for again", () => {
    expect(mean(0.25)).toBe(mean(0.25));
  });
});

/** The published mean of cameras as a caller would send it. */
const published: SensorSample[] = rows.map((row) => ({
  wavelength_nm: numberIn(row, "wavelength_nm"),
  red: 0.75 * numberIn(row, "mean_R"),
  green: numberIn(row, "mean_G"),
  blue: 0.85 * numberIn(row, "mean_B"),
}));

describe("a sensor by its own curves", () => {
  it("takes the place of the mean, whatever the doubt about cross-talk, and stays the same one", () => {
    const own = sensorOf({ sensor_samples: published }, { crosstalkSd: 0 });
    expect(sensorOf({ sensor_samples: published }, { crosstalkSd: 2 })).toBe(own);
    expect(own.green[at(530)]).toBeCloseTo(mean(0).green[at(530)] ?? 0, 4);
  });

  it("gives what the mean gives where it is the mean, and no longer doubts it", () => {
    const scene = daylightScene("IB", 50, 10);
    const [assumed, sent] = [attenuation(scene), attenuation({ ...scene, sensor_samples: published })];
    const [a, b] = [assumed.depths[0], sent.depths[0]];
    expect(b.red_loss_stops.likely).toBeCloseTo(a.red_loss_stops.likely, 2);
    expect(b.green_loss_stops.likely).toBeCloseTo(a.green_loss_stops.likely, 2);
    expect(b.red_loss_stops.high - b.red_loss_stops.low).toBeLessThan(
      a.red_loss_stops.high - a.red_loss_stops.low,
    );
    const causes = (answer: typeof assumed) => answer.uncertainty.map(({ code }) => code);
    expect(causes(assumed)).toContain("sensor");
    expect(causes(sent)).not.toContain("sensor");
  });

  it("loses more red where its red channel sees no green (law: what is lost is the light that a channel sees)", () => {
    const scene = daylightScene("IB", 50, 10);
    const pure = published.map((s) => ({ ...s, red: s.wavelength_nm < 580 ? 0 : s.red }));
    const loss = (sensor_samples: SensorSample[]) =>
      attenuation({ ...scene, sensor_samples }).depths[0].red_loss_stops.likely;
    expect(loss(pure)).toBeGreaterThan(loss(published) + 0.5);
  });

  it("reaches every decision: a filter choice for it is not that of the mean", () => {
    const scene = daylightScene("IB", 50, 8);
    const pure = published.map((s) => ({ ...s, red: s.wavelength_nm < 580 ? 0 : s.red }));
    const error = (sensor_samples: SensorSample[]) =>
      filterChoice({ ...scene, sensor_samples }).colour_error_without_delta_e00.likely;
    expect(Math.abs(error(pure) - error(published))).toBeGreaterThan(0.5);
  });

  /** Luther 1927 and Ives 1915: a camera whose curves are those of the eye (CIE 018:2019), or mixtures of them, reproduces every colour. */
  it("reproduces every colour where it sees as the eye does, also those that its matrix was not fitted to", () => {
    const eye = Array.from(Y_BAR, (y, i) => ({
      wavelength_nm: 380 + 5 * i,
      red: ((X_BAR[i] ?? 0) + 0.3 * y) / 2,
      green: (y + 0.2 * (Z_BAR[i] ?? 0)) / 2,
      blue: (Z_BAR[i] ?? 0) / 2,
    }));
    const profile = sensorProfile(sensorOf({ sensor_samples: eye }, { crosstalkSd: 0 }));
    const floors: FloorKind[] = ["sand", "coral", "seagrass", "macroalgae"];
    const errors = floors.map((kind) => {
      const reflectance = floorReflectance(kind);
      const seen = apply(profile.daylightMatrix, rawOf(profile, multiply(illuminant("D65"), reflectance)));
      return deltaE00(labOf(xyzUnderD65(reflectance), WHITE_D65), labOf(seen, WHITE_D65));
    });
    expect(Math.max(...errors)).toBeLessThan(0.001);
    const usual = sensorProfile(mean(0));
    const others = floors.map((kind) => {
      const reflectance = floorReflectance(kind);
      const seen = apply(usual.daylightMatrix, rawOf(usual, multiply(illuminant("D65"), reflectance)));
      return deltaE00(labOf(xyzUnderD65(reflectance), WHITE_D65), labOf(seen, WHITE_D65));
    });
    expect(Math.max(...others)).toBeGreaterThan(0.5);
  });
});
