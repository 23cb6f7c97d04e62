import { numberIn, readTable } from "@sunfathom/fixtures/tables";
import { expect, it } from "vitest";
import { FIRST_NM, STEP_NM } from "../spectrum/grid.js";
import { FLOOR_KINDS, floorReflectance } from "./floor-reflectance.js";

// Means of spectra by G. Asner (sand, coral, algae) and by Schnalzger 2017 (seagrass), as an open bio-optical library carries them.
const table = readTable("bottom_reflectance");

it.each(FLOOR_KINDS)("%s reflects what its table says, at every wavelength of the grid", (kind) => {
  const ours = floorReflectance(kind);
  for (const row of table) {
    expect(ours[(numberIn(row, "wavelength_nm") - FIRST_NM) / STEP_NM]).toBeCloseTo(numberIn(row, kind), 9);
  }
});
