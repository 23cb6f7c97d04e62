import { column, readTable } from "@sunfathom/fixtures/tables";
import { describe, expect, it } from "vitest";
import { daylightOfCct } from "../colour/daylight-of-cct.js";
import { WAVELENGTHS_NM } from "../spectrum/grid.js";
import { integrateProduct } from "../spectrum/integrate.js";
import { meanSensor } from "./mean-sensor.js";

const at = (nm: number) => (nm - 380) / 5;

describe("the mean sensor", () => {
  const sensor = meanSensor();

  it("has the shapes of the table (mean of 11 cameras published by the Academy of Motion Picture Arts and Sciences)", () => {
    const rows = readTable("sensor_rgb_mean");
    const green = column(rows, "mean_G");
    // Kept to five decimals.
    column(rows, "wavelength_nm").forEach((nm, i) => {
      expect(Math.abs(sensor.green[at(nm)] - green[i])).toBeLessThanOrEqual(0.501e-5);
    });
    const blue = column(rows, "mean_B");
    expect(sensor.blue[at(500)] / sensor.blue[at(460)]).toBeCloseTo(blue[20] / blue[12], 4);
    expect(sensor.red[at(600)] / sensor.red[at(550)]).toBeCloseTo(
      column(rows, "mean_R")[40] / column(rows, "mean_R")[30],
      3,
    );
  });

  it("sees nothing beyond the table, 400 to 720 nm, rather than a held end value", () => {
    for (const channel of [sensor.red, sensor.green, sensor.blue]) {
      expect(channel[at(395)]).toBe(0);
      expect(channel[at(725)]).toBe(0);
      expect(channel[at(780)]).toBe(0);
    }
  });

  it("peaks near 600, 530 and 460 nm, as colour mosaics do (common practice, no published source)", () => {
    const peak = (s: Float64Array) => WAVELENGTHS_NM[s.indexOf(Math.max(...s))];
    expect(Math.abs(peak(sensor.red) - 600)).toBeLessThanOrEqual(15);
    expect(Math.abs(peak(sensor.green) - 530)).toBeLessThanOrEqual(15);
    expect(Math.abs(peak(sensor.blue) - 460)).toBeLessThanOrEqual(15);
  });

  it("asks for raw daylight gains near 1.8 for red and 1.5 for blue, as its header says (from memory)", () => {
    const light = daylightOfCct(5500);
    const green = integrateProduct(light, sensor.green);
    expect(green / integrateProduct(light, sensor.red)).toBeCloseTo(1.8, 0);
    expect(green / integrateProduct(light, sensor.blue)).toBeCloseTo(1.5, 0);
  });

  it("shifts only the red channel's cross-talk below 570 nm, by the spread between cameras, and never below zero", () => {
    const more = meanSensor(1);
    const less = meanSensor(-3);
    expect(more.red[at(500)]).toBeGreaterThan(sensor.red[at(500)]);
    const sd = column(readTable("sensor_rgb_mean"), "sd_R");
    // 0.75 is the red channel's height beside green.
    expect(more.red[at(500)] - sensor.red[at(500)]).toBeCloseTo(0.75 * sd[(500 - 400) / 5], 5);
    expect(more.blue).toEqual(sensor.blue);
    expect(more.red[at(570)]).toBe(sensor.red[at(570)]);
    expect(more.green).toEqual(sensor.green);
    expect(Math.min(...less.red)).toBe(0);
  });
});
