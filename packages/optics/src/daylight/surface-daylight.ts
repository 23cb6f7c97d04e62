import { scale } from "../spectrum/combine.js";
import type { Spectrum } from "../spectrum/grid.js";
import { onGrid } from "../spectrum/resample.js";
import { type Atmosphere, clearSkyBands, MARITIME_ATMOSPHERE } from "./clear-sky-bird-riordan-1986.js";
import { cloudTransmittance } from "./kasten-czeplak-1980.js";

/** Daylight on a horizontal surface just above the sea, W m^-2 nm^-1. */
export interface SurfaceDaylight {
  direct: Spectrum;
  diffuse: Spectrum;
}

/**
 * Direct and diffuse daylight for a sun elevation (10 to 90 degrees) and a cloud cover (0 to 8 oktas).
 *
 * Clear sky by Bird & Riordan 1986. Cloud takes the total down by Kasten & Czeplak 1980; the direct beam is left in
 * proportion to the open sky, and the rest of what remains is diffuse.
 * @throws RangeError below 10 degrees, where the clear-sky model no longer holds.
 */
export function surfaceDaylight(
  sunElevation_deg: number,
  cloud_oktas: number,
  atmosphere: Atmosphere = MARITIME_ATMOSPHERE,
): SurfaceDaylight {
  const zenith = 90 - sunElevation_deg;
  const bands = clearSkyBands(zenith, atmosphere);
  const cosZenith = Math.cos((zenith * Math.PI) / 180);
  const direct = scale(onGrid(bands.wavelength_nm, bands.direct_normal), cosZenith);
  const diffuse = onGrid(bands.wavelength_nm, bands.diffuse_horizontal);
  return underCloud({ direct, diffuse }, cloud_oktas);
}

/** Takes a clear sky's daylight to what is left of it under cloud, in place. */
export function underCloud(clear: SurfaceDaylight, cloud_oktas: number): SurfaceDaylight {
  if (cloud_oktas === 0) return clear;
  const { direct, diffuse } = clear;
  const open = 1 - cloud_oktas / 8;
  const left = cloudTransmittance(cloud_oktas);
  for (let i = 0; i < direct.length; i++) {
    const total = (direct[i] + diffuse[i]) * left;
    direct[i] = Math.min(total, direct[i] * open);
    diffuse[i] = total - direct[i];
  }
  return clear;
}
