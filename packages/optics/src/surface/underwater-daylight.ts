import { Y_BAR } from "../colour/observer.js";
import type { SurfaceDaylight } from "../daylight/surface-daylight.js";
import { GRID_SIZE, type Spectrum } from "../spectrum/grid.js";
import { integrateProduct } from "../spectrum/integrate.js";
import { surfaceReflectance } from "./gregg-carder-1990.js";
import { refractedAngle_deg } from "./snell-fresnel.js";

/** Daylight just below the surface. */
export interface UnderwaterDaylight {
  /** Downwelling irradiance, W m^-2 nm^-1. */
  downwelling: Spectrum;
  /** Cosine of the effective light path: downwelling over scalar irradiance, photopic mean. */
  mu0: number;
  /** Sun's angle from the vertical in water. */
  sunAngleInWater_deg: number;
  /** Photopic share of the direct beam, 0 to 1. */
  directShare: number;
}

/** Mean cosine in water of light from an even sky, refracted (between 0.83 for a uniform and 0.86 for a cardioid sky). */
const SKY_MU = 0.85;

/**
 * Takes daylight through a sea surface roughened by wind (Gregg & Carder 1990; Snell).
 * @param downwelling written and part of what is returned; made where it is left out.
 */
export function throughSurface(
  daylight: SurfaceDaylight,
  sunElevation_deg: number,
  wind_m_s: number,
  downwelling: Spectrum = new Float64Array(GRID_SIZE),
): UnderwaterDaylight {
  const zenith = 90 - sunElevation_deg;
  const reflectance = surfaceReflectance(zenith, wind_m_s);
  for (let i = 0; i < GRID_SIZE; i++) {
    downwelling[i] =
      (1 - reflectance.direct) * daylight.direct[i] + (1 - reflectance.diffuse) * daylight.diffuse[i];
  }
  const direct = (1 - reflectance.direct) * integrateProduct(daylight.direct, Y_BAR);
  const directShare = direct / integrateProduct(downwelling, Y_BAR);
  const sunAngleInWater_deg = refractedAngle_deg(zenith);
  const sunMu = Math.cos((sunAngleInWater_deg * Math.PI) / 180);
  return {
    downwelling,
    mu0: 1 / (directShare / sunMu + (1 - directShare) / SKY_MU),
    sunAngleInWater_deg,
    directShare,
  };
}
