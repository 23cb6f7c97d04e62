import { describe, expect, it } from "vitest";
import { WAVELENGTHS_NM } from "../spectrum/grid.js";
import { densityShape, FILTER_BANDS, FILTER_KINDS } from "./filter-kinds.js";

const at = (nm: number) => (nm - 380) / 5;

// No standard publishes such curves: these tests hold the shapes to what their descriptions and the stated assumption say.
describe("assumed shapes of filters", () => {
  it.each(FILTER_KINDS)(
    "%s: density per unit of nominal density lies within 0 and 1, with its peak at 1",
    (kind) => {
      const shape = densityShape(kind);
      expect(Math.min(...shape)).toBeGreaterThanOrEqual(0);
      expect(Math.max(...shape)).toBeLessThanOrEqual(1);
      expect(Math.max(...shape)).toBeCloseTo(1, 4);
    },
  );

  it("red holds back below 580 nm and passes above; half of its density lies at 580 nm", () => {
    const shape = densityShape("red");
    expect(shape[at(580)]).toBe(0.5);
    expect(shape[at(480)]).toBeGreaterThan(0.99);
    expect(shape[at(680)]).toBeLessThan(0.01);
    for (let i = 1; i < shape.length; i++) expect(shape[i]).toBeLessThan(shape[i - 1]);
  });

  it("magenta holds back green around 540 nm, with e^-1/2 of its density 35 nm to either side (Gaussian)", () => {
    const shape = densityShape("magenta");
    expect(shape[at(540)]).toBe(1);
    expect(shape[at(505)]).toBeCloseTo(Math.exp(-0.5), 12);
    expect(shape[at(575)]).toBeCloseTo(Math.exp(-0.5), 12);
  });

  it("blue, for lamps, holds back red and passes blue; neutral holds back all alike", () => {
    const shape = densityShape("blue");
    expect(shape[at(585)]).toBe(0.5);
    expect(shape[at(700)]).toBeGreaterThan(0.99);
    expect(shape[at(450)]).toBeLessThan(0.01);
    expect(new Set(densityShape("neutral"))).toEqual(new Set([1]));
  });

  // A logistic edge has 1 / (1 + e) of its density one step outside and e / (1 + e) one step inside its middle.
  it.each([
    ["red", 580, -10, 1],
    ["blue", 585, 12, 1],
    ["green", 585, 12, 1],
    // What it passes grows to both sides.
    ["green", 480, -12, -1],
  ] as const)("%s has an edge at %d nm, %d nm wide, that moves", (kind, edge_nm, step_nm, direction) => {
    const { density } = FILTER_BANDS[kind];
    for (const shift_nm of [0, 10, -10]) {
      for (const width of [1, 1.5]) {
        const at_nm = edge_nm + direction * shift_nm;
        expect(density(at_nm, shift_nm, width)).toBeCloseTo(1 / 2, 3);
        expect(density(at_nm + step_nm * width, shift_nm, width)).toBeCloseTo(Math.E / (1 + Math.E), 3);
        expect(density(at_nm - step_nm * width, shift_nm, width)).toBeCloseTo(1 / (1 + Math.E), 3);
      }
    }
  });

  it("green, for lamps, passes what lies between its edges", () => {
    const shape = densityShape("green");
    expect(shape[at(535)]).toBeLessThan(0.02);
    expect(shape[at(420)]).toBeGreaterThan(0.99);
    expect(shape[at(660)]).toBeGreaterThan(0.99);
  });

  it("move with the shift and widen with the width", () => {
    const moved = densityShape("magenta", { shift_nm: 20 });
    expect(WAVELENGTHS_NM[moved.indexOf(Math.max(...moved))]).toBe(560);
    const broad = densityShape("magenta", { widthScale: 2 });
    expect(broad[at(610)]).toBeCloseTo(Math.exp(-0.5), 12);
    const wide = densityShape("red", { widthScale: 2 });
    expect(wide[at(600)]).toBeCloseTo(densityShape("red")[at(590)], 12);
  });
});
