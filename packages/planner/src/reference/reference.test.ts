import {
  BRIGHT_REEF,
  DARK_AND_GREEN,
  daylightScene,
  NIGHT_WRECK,
  REEF_WITH_LAMPS,
} from "@sunfathom/fixtures/scenes";
import { numberIn, readTable } from "@sunfathom/fixtures/tables";
import { describe, expect, it } from "vitest";
import {
  attenuation,
  exposureLoss,
  filterChoice,
  filterKinds,
  mixedLight,
  models,
  waterTypes,
} from "../index.js";

describe("reference data", () => {
  it("names every table and formula once, each with a source, a domain and its weaknesses", () => {
    const all = models();
    expect(new Set(all.map((m) => m.id)).size).toBe(all.length);
    for (const { id, what, source, domain, known_weaknesses } of all) {
      for (const text of [what, source, domain, known_weaknesses]) expect(text.length, id).toBeGreaterThan(5);
    }
  });

  it("knows every source that an answer names", () => {
    const ids = new Set(models().map((m) => m.id));
    for (const scene of [
      BRIGHT_REEF,
      DARK_AND_GREEN,
      NIGHT_WRECK,
      REEF_WITH_LAMPS,
      { ...daylightScene("1C", 40, 9), cloud_oktas: 6 },
    ]) {
      for (const decide of [attenuation, filterChoice, exposureLoss, mixedLight]) {
        const { sources } = decide(scene);
        expect(sources.length).toBeGreaterThan(0);
        expect(new Set(sources).size).toBe(sources.length);
        for (const id of sources) expect([...ids]).toContain(id);
      }
    }
  });

  it("gives the water types with Jerlov's own values where his table has them, and names the edition", () => {
    const types = waterTypes();
    expect(types.map((t) => t.water_type)).toEqual([
      "I",
      "IA",
      "IB",
      "II",
      "III",
      "1C",
      "3C",
      "5C",
      "7C",
      "9C",
    ]);
    for (const { water_type, edition, wavelengths_nm, kd_per_m } of types) {
      expect(edition).toContain("1976");
      for (const row of readTable("jerlov_1976_kd").filter((r) => r["water_type"] === water_type)) {
        const i = wavelengths_nm.indexOf(numberIn(row, "wavelength_nm"));
        const nm = numberIn(row, "wavelength_nm");
        // At 675 and 700 nm the clearest types lie below pure water and are raised to it.
        if (i >= 0 && nm >= 400 && nm < 675) expect(kd_per_m[i]).toBeCloseTo(numberIn(row, "Kd_per_m"), 10);
      }
    }
  });

  it("gives the filter kinds, and says of every colour that its shape is assumed", () => {
    const kinds = filterKinds();
    expect(kinds.map((k) => k.filter_kind)).toEqual(
      expect.arrayContaining(["red", "magenta", "blue", "neutral"]),
    );
    for (const { filter_kind, shape_assumed, density_shape, wavelengths_nm, use } of kinds) {
      expect(shape_assumed).toBe(filter_kind !== "neutral");
      expect(density_shape.length).toBe(wavelengths_nm.length);
      expect(Math.max(...density_shape)).toBeCloseTo(1, 4);
      if (filter_kind === "blue") expect(use).toBe("lamp");
    }
  });
});
