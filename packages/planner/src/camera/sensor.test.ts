import { expect, it } from "vitest";
import { column, numberIn, readTable } from "../../../../test/support/tables.js";
import { sensorWith } from "./sensor.js";

const rows = readTable("sensor_rgb_mean");
const at = (nm: number) => (nm - 380) / 5;

it("the mean sensor is the table's mean of cameras, its channels as high as they stand to each other, to five decimals", () => {
  const { red, green, blue } = sensorWith(0);
  for (const row of rows) {
    const i = at(numberIn(row, "wavelength_nm"));
    if (!Number.isInteger(i)) continue;
    expect(red[i]).toBeCloseTo(0.75 * numberIn(row, "mean_R"), 5);
    expect(green[i]).toBeCloseTo(numberIn(row, "mean_G"), 5);
    expect(blue[i]).toBeCloseTo(0.85 * numberIn(row, "mean_B"), 5);
  }
  expect(column(rows, "mean_R").length).toBeGreaterThan(20);
});

it("cross-talk lets red see more or less green and blue, leaves red light as it is, and touches no other channel", () => {
  const [less, mean, more] = [-1, 0, 1].map(sensorWith);
  expect(more.red[at(530)]).toBeGreaterThan(mean.red[at(530)]);
  expect(less.red[at(530)]).toBeLessThan(mean.red[at(530)]);
  expect(more.red[at(620)]).toBe(mean.red[at(620)]);
  expect(more.green).toEqual(mean.green);
  expect(more.blue).toEqual(mean.blue);
});

it("a sensor asked for again is the same one", () => {
  expect(sensorWith(0.25)).toBe(sensorWith(0.25));
});
