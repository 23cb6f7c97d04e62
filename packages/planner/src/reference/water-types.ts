import { JERLOV_TYPES, type JerlovType, jerlovKd, listOf, WAVELENGTHS_NM } from "@sunfathom/optics";
import type { WaterTypeInfo } from "../result/reference.js";

/** What a diver sees in each water, common practice, no published source. */
const DESCRIPTIONS: Record<JerlovType, string> = {
  I: "Clearest open ocean: deep indigo blue.",
  IA: "Very clear open ocean: deep blue.",
  IB: "Clear ocean, outer reefs: blue.",
  II: "Less clear ocean and warm seas near coasts: blue, softer.",
  III: "Turbid ocean, nutrient-rich upwelling: blue-green.",
  "1C": "Clear coastal water: blue-green to green.",
  "3C": "Coastal water: green.",
  "5C": "Turbid coastal water: dark green.",
  "7C": "Very turbid coastal water, bays: yellow-green to brown.",
  "9C": "Most turbid coastal water, estuaries: brown.",
};

/** The optical water types with their diffuse attenuation. */
export function waterTypes(): WaterTypeInfo[] {
  return JERLOV_TYPES.map((water_type) => ({
    water_type,
    description: DESCRIPTIONS[water_type],
    edition: "Jerlov 1976",
    wavelengths_nm: listOf(WAVELENGTHS_NM),
    kd_per_m: listOf(jerlovKd(water_type)),
    sources: ["jerlov_1976", "pope_fry_1997"],
  }));
}
