import type { Scene } from "../scene/scene.js";
import { hasLensFilter } from "./lens-filter.js";
import { kdOf } from "./water.js";

/** Ids of the tables and formulas behind the light of a scene (see `models`). */
export function lightSources(scene: Scene): string[] {
  return [
    ...kdOf(scene).sources,
    "williamson_hollins_2022",
    "kirk_1984",
    ...(scene.daylight_basis === "none"
      ? []
      : ["bird_riordan_1986", "kasten_czeplak_1980", "gregg_carder_1990", "upright_fraction"]),
    "mean_sensor",
    "cie_1931_observer",
    ...(scene.lamps.length > 0 ? ["cie_led_illuminants", "path_attenuation"] : []),
    ...(hasLensFilter(scene) && !scene.filter_transmittance ? ["filter_shapes"] : []),
  ];
}
