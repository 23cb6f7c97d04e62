/**
 * What a filter weighs in sea water: a disc in an aluminium rim, less the water that they displace (Archimedes).
 * Densities in g/cm3: crown glass 2.51, acrylic 1.19, aluminium 2.70 (data sheets and handbooks, from memory); sea water 1.025.
 */
import type { Estimate } from "../result/common.js";
import type { FilterMaterial } from "../scene/filter-mounting-scene.js";
import { mapRising } from "../uncertainty/percentiles.js";

const SEA_WATER = 1.025;
const ALUMINIUM = 2.7;
const DENSITY: Readonly<Record<FilterMaterial, number>> = { glass: 2.51, resin: 1.19 };

/** How thick the clear part is, and never thicker than the rim. From memory of a few filters. */
const DISC_mm: Estimate = { low: 1.1, likely: 2, high: 3 };

/** From the clear part to the outside of the rim (common practice: the rim inside the thread and the thread). */
const RIM_WIDTH_mm = 3;

export interface Filter {
  clear_diameter_mm: number;
  /** Of the rim. */
  thickness_mm: number;
  material: FilterMaterial;
}

const CM3_PER_MM3 = 1e-3;

export function weightInWater_g({ clear_diameter_mm, thickness_mm, material }: Filter): Estimate {
  const radius_mm = clear_diameter_mm / 2;
  const disc_mm2 = Math.PI * radius_mm ** 2;
  const rim_mm2 = Math.PI * (radius_mm + RIM_WIDTH_mm) ** 2 - disc_mm2;
  const rim_g = rim_mm2 * thickness_mm * CM3_PER_MM3 * (ALUMINIUM - SEA_WATER);
  return mapRising(DISC_mm, (disc_mm) => {
    const disc_cm3 = disc_mm2 * Math.min(disc_mm, thickness_mm) * CM3_PER_MM3;
    return rim_g + disc_cm3 * (DENSITY[material] - SEA_WATER);
  });
}
