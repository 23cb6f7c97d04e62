import { scale } from "../spectrum/combine.js";
import type { Spectrum } from "../spectrum/grid.js";
import { illuminance_lx } from "./observer.js";

/** A spectrum scaled to one lumen (or one lux). */
export function perLumen(spectrum: Spectrum): Spectrum {
  return scale(spectrum, 1 / illuminance_lx(spectrum));
}
