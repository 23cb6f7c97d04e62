import type { Conditions } from "./conditions.js";
import { isCovered } from "./is-covered.js";
import { hasLensFilter } from "./lens-filter.js";

/** Ids of the tables and formulas behind the light of a scene (see `models`). */
export function lightSources({ scene, daylight, water, floor }: Conditions): string[] {
  return [
    ...water.sources,
    "williamson_hollins_2022",
    "kirk_1984",
    ...(daylight ? ["bird_riordan_1986", "kasten_czeplak_1980", "gregg_carder_1990", "light_field"] : []),
    ...(daylight && isCovered(scene) ? [scene.overhead === "ice" ? "ice_cover" : "overhead"] : []),
    ...(daylight && floor ? ["sea_floor"] : []),
    ...(daylight && floor && !scene.bottom_reflectance ? ["bottom_reflectance"] : []),
    ...(scene.daylight_basis === "place_time" ? ["sun_position"] : []),
    "mean_sensor",
    "cie_1931_observer",
    ...(scene.lamps.length > 0 ? ["cie_led_illuminants", "lamp_beam", "path_attenuation"] : []),
    ...(hasLensFilter(scene) && !scene.filter_transmittance ? ["filter_shapes"] : []),
  ];
}
