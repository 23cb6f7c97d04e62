import {
  BASE_DENSITY,
  densityShape,
  FILTER_BANDS,
  FILTER_KINDS,
  LEAKAGE,
  listOf,
  WAVELENGTHS_NM,
} from "@sunfathom/optics";
import type { FilterKindInfo } from "../result/reference.js";

/** The kinds of filter with the shapes assumed for them. */
export function filterKinds(): FilterKindInfo[] {
  return FILTER_KINDS.map((filter_kind) => ({
    filter_kind,
    description: FILTER_BANDS[filter_kind].description,
    use: FILTER_BANDS[filter_kind].use,
    base_density: BASE_DENSITY,
    leakage: LEAKAGE,
    shape_assumed: filter_kind !== "neutral",
    wavelengths_nm: listOf(WAVELENGTHS_NM),
    density_shape: listOf(densityShape(filter_kind)),
  }));
}
