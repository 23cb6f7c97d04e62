import { describe, expect, it } from "vitest";
import { WAVELENGTHS_NM } from "./grid.js";
import { interpolate, onGrid } from "./resample.js";

describe("linear interpolation", () => {
  const x = [400, 410, 450];
  const y = [1, 3, -1];

  it("returns the table at its nodes and a straight line between them", () => {
    expect(x.map((nm) => interpolate(x, y, nm))).toEqual(y);
    expect(interpolate(x, y, 405)).toBe(2);
    expect(interpolate(x, y, 430)).toBe(1);
  });

  it("holds the end values beyond the table", () => {
    expect(interpolate(x, y, -1e9)).toBe(1);
    expect(interpolate(x, y, 399.999)).toBe(1);
    expect(interpolate(x, y, 450.001)).toBe(-1);
    expect(interpolate([500], [7], 380)).toBe(7);
  });
});

describe("a table on the grid", () => {
  it("keeps a straight line straight", () => {
    const line = onGrid([380, 780], [0, 400]);
    expect(Array.from(line)).toEqual(Array.from(WAVELENGTHS_NM, (nm) => nm - 380));
  });

  it("is what `outside` says beyond its ends, and the end value where nothing is said", () => {
    const at = (nm: number) => (nm - 380) / 5;
    const zero = onGrid([400, 700], [2, 2], 0);
    expect([zero[at(395)], zero[at(400)], zero[at(700)], zero[at(705)]]).toEqual([0, 2, 2, 0]);
    const held = onGrid([400, 700], [2, 4]);
    expect([held[0], held[80]]).toEqual([2, 4]);
  });
});
