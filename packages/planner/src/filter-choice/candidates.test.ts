import { daylightScene } from "@sunfathom/fixtures/scenes";
import { CLEAR, filterTransmittance, WAVELENGTHS_NM } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import type { KitItem } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { candidateFilter, candidatesFor, finerThan, GRID, NO_FILTER, named } from "./candidates.js";

const scene = daylightScene("IB", 45, 10);
const owning = (...kit: KitItem[]) => candidatesFor({ ...scene, kit });

describe("the candidates", () => {
  it("start with none and hold each kind from weak to dense, so that the first of equals is the lightest", () => {
    const candidates = candidatesFor(scene);
    expect(candidates[0]).toEqual({ kind: "none", density: 0 });
    for (const kind of ["red", "magenta"]) {
      const densities = candidates.filter((c) => c.kind === kind).map((c) => c.density ?? Number.NaN);
      expect(densities).toEqual([...densities].sort((a, b) => a - b));
      expect(densities.length).toBeGreaterThanOrEqual(8);
    }
  });

  it("go from half a stop to five, a stop being a density of log10 2 = 0.301, to the hundredth", () => {
    const red = candidatesFor(scene).flatMap(({ kind, density }) => (kind === "red" ? [density ?? 0] : []));
    expect(red[0] / Math.log10(2)).toBeCloseTo(0.5, 1);
    expect(red[red.length - 1] / Math.log10(2)).toBeCloseTo(5, 1);
    for (const density of red) expect(Number(density.toFixed(2))).toBe(density);
  });

  it("cost light: each one passes less than none at every wavelength", () => {
    for (const { kind, density } of GRID) {
      if (kind === "none" || density === undefined) continue;
      filterTransmittance(kind, density).forEach((t, i) => {
        expect(t).toBeLessThan(CLEAR[i]);
      });
    }
  });

  it("are none and the lens filters of a kit, by their ids: neither its lamps nor what belongs on them", () => {
    const candidates = owning(
      { id: "lamp", item: "lamp" },
      { id: "on lamp", item: "lamp_filter", filter_kind: "blue", filter_density: 0.6 },
      { id: "a", item: "lens_filter", filter_kind: "red", filter_density: 0.6 },
      { id: "b", item: "lens_filter", filter_kind: "magenta", filter_density: 0.3 },
    );
    expect(candidates).toEqual([
      { kind: "none", density: 0 },
      { kind: "red", density: 0.6, id: "a" },
      { kind: "magenta", density: 0.3, id: "b" },
    ]);
  });

  it("leave out a filter of which neither density nor curve is known, or not even the kind", () => {
    expect(owning({ id: "a", item: "lens_filter", filter_kind: "red" })).toEqual([NO_FILTER]);
    expect(owning({ id: "a", item: "lens_filter", filter_density: 0.6 })).toEqual([NO_FILTER]);
  });

  it("take a filter that is known by its curve alone, as the contract has it, and call it what its curve is like", () => {
    const filter_transmittance = [
      { wavelength_nm: 450, transmittance: 0.25 },
      { wavelength_nm: 550, transmittance: 0.3 },
      { wavelength_nm: 650, transmittance: 0.9 },
    ];
    const [, measured, ...more] = owning({ id: "mine", item: "lens_filter", filter_transmittance });
    expect(more).toEqual([]);
    expect([measured.kind, measured.id]).toEqual(["red", "mine"]);
    expect(candidateFilter(measured, NOMINAL)[(550 - 380) / 5]).toBeCloseTo(0.3, 12);
    expect(owning({ id: "mine", item: "lamp_filter", filter_transmittance })).toEqual([NO_FILTER]);
  });

  it("take a measured curve before a density", () => {
    const filter_transmittance = Array.from(WAVELENGTHS_NM, (wavelength_nm, i) => ({
      wavelength_nm,
      transmittance: 0.2 + i / 200,
    }));
    const [, measured] = owning({
      id: "a",
      item: "lens_filter",
      filter_kind: "red",
      filter_density: 0.6,
      filter_transmittance,
    });
    expect(measured).not.toHaveProperty("density");
    candidateFilter(measured, { ...NOMINAL, filterShape: { shift_nm: 20 } }).forEach((t, i) => {
      expect(t).toBeCloseTo(0.2 + i / 200, 12);
    });
  });
});

describe("densities around the best of the grid", () => {
  it("lie within a step of the grid to either side, to the hundredth, none twice", () => {
    const finer = finerThan({ kind: "red", density: 0.45 });
    expect(finer).toEqual([0.35, 0.4, 0.5, 0.55].map((density) => ({ kind: "red", density })));
  });

  it("are those of a filter: not of none, nor of one that is owned, nor without any density", () => {
    expect(finerThan(NO_FILTER)).toEqual([]);
    expect(finerThan({ kind: "red", density: 0.45, id: "a" })).toEqual([]);
    expect(finerThan({ kind: "red" })).toEqual([]);
    expect(finerThan({ kind: "red", density: 0.1 }).map(({ density }) => density)).toEqual([0.05, 0.15, 0.2]);
  });
});

describe("a candidate's light", () => {
  it("is all of it without a filter", () => {
    expect(candidateFilter(NO_FILTER, NOMINAL)).toEqual(CLEAR);
    expect(candidateFilter({ kind: "red" }, NOMINAL)).toEqual(CLEAR);
  });

  it("is that of its kind and density, in the shape in question", () => {
    const filterShape = { shift_nm: 10 };
    const light = candidateFilter({ kind: "magenta", density: 0.6 }, { ...NOMINAL, filterShape });
    expect(light).toEqual(filterTransmittance("magenta", 0.6, filterShape));
    expect(light).not.toEqual(filterTransmittance("magenta", 0.6));
  });
});

it("a candidate is named by what it is, and whose", () => {
  expect(named(NO_FILTER)).toEqual({ kind: "none" });
  expect(named({ kind: "red", density: 0.6 })).toEqual({
    kind: "red",
    density: 0.6,
    shelf: { from: 0.6, to: 0.6 },
  });
  expect(named({ kind: "red", density: 0.6, id: "mine" })).toEqual({ kind: "red", density: 0.6, id: "mine" });
  expect(named({ kind: "magenta", measured: CLEAR, id: "mine" })).toEqual({ kind: "magenta", id: "mine" });
});
