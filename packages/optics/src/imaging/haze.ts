/**
 * Water between subject and camera: what is left of the subject's light, and the light that the water scatters in.
 *
 * I = J exp(-c r) + B (1 - exp(-c r)), per wavelength, with B the radiance of open water. Form of Akkaynak & Treibitz 2018, A
 * revised underwater image formation model, CVPR, 6723, with one coefficient for both terms: they differ by channel and range in
 * their model because channels are wide, which integration over wavelength takes care of here. Level view, no lamp between.
 */
import { GRID_SIZE, type Spectrum } from "../spectrum/grid.js";

/** Light that open water adds over the path, in the unit of `openWater`. */
export function veilingLight(openWater: Spectrum, pathTransmittance: Spectrum): Spectrum {
  const out = new Float64Array(GRID_SIZE);
  for (let i = 0; i < GRID_SIZE; i++) out[i] = openWater[i] * (1 - pathTransmittance[i]);
  return out;
}
