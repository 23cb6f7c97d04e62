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
import type { FilterKind } from "../scene/scene.js";

/** What each kind does and where it is used. */
const DESCRIPTIONS: Record<FilterKind, string> = {
  red: "Holds back blue and green, passes red from about 590 nm: for blue water in daylight.",
  magenta: "Holds back green around 540 nm, passes blue and red: for green water in daylight.",
  blue: "Holds back red from about 590 nm, passes blue and green: on a video light, to match it to daylight at depth.",
  green:
    "Holds back red from about 590 nm and blue below about 480 nm, passes green: on a video light, to match it to daylight in green water.",
  neutral: "Holds back all colours alike: cuts light without changing its colour.",
};

/** The kinds of filter with the shapes assumed for them. */
export function filterKinds(): FilterKindInfo[] {
  return FILTER_KINDS.map((filter_kind) => ({
    filter_kind,
    description: DESCRIPTIONS[filter_kind],
    use: FILTER_BANDS[filter_kind].use,
    base_density: BASE_DENSITY,
    leakage: LEAKAGE,
    shape_assumed: filter_kind !== "neutral",
    wavelengths_nm: listOf(WAVELENGTHS_NM),
    density_shape: listOf(densityShape(filter_kind)),
  }));
}
