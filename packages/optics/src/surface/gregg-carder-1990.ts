/**
 * Share of direct and diffuse daylight that a wind-roughened sea reflects.
 *
 * Source: Gregg & Carder 1990, A simple spectral solar irradiance model for cloudless maritime atmospheres, Limnology and
 * Oceanography 35, 1657. Wind in m/s up to about 20; sun zenith to about 85 degrees. Coefficients as in five public codes.
 */
import { fresnelReflectance } from "./snell-fresnel.js";

function foamReflectance(wind_m_s: number): number {
  const w = wind_m_s;
  if (w <= 4) return 0;
  if (w <= 7) return 1.2e3 * (6.2e-4 + 1.56e-3 / w) * 2.2e-5 * w * w - 4e-4;
  return (1.2e3 * (4.9e-4 + 6.5e-5 * w) * 4.5e-5 - 4e-5) * w * w;
}

export interface SurfaceReflectance {
  /** Reflected share of the direct beam, foam included, 0 to 1. */
  direct: number;
  /** Reflected share of the diffuse light, foam included, 0 to 1. */
  diffuse: number;
}

export function surfaceReflectance(sunZenith_deg: number, wind_m_s: number): SurfaceReflectance {
  const foam = foamReflectance(wind_m_s);
  const calm = sunZenith_deg < 40 || wind_m_s < 2;
  const specular = calm
    ? fresnelReflectance(sunZenith_deg)
    : 0.0253 * Math.exp((-7.14e-4 * wind_m_s + 0.0618) * (sunZenith_deg - 40));
  return { direct: Math.min(1, specular + foam), diffuse: (wind_m_s <= 4 ? 0.066 : 0.057) + foam };
}
