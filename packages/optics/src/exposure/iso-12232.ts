/**
 * Focal-plane exposure and saturation of a digital camera.
 * Source: ISO 12232: saturation at H = 78 / S lx s. H = 0.65 L t / N^2 for a distant subject on the axis of a typical lens
 * (0.65 from memory).
 */
export const focalPlaneExposure_lx_s = (
  luminance_cd_m2: number,
  f_number: number,
  shutter_s: number,
): number => (0.65 * luminance_cd_m2 * shutter_s) / f_number ** 2;

export const saturationExposure_lx_s = (iso: number): number => 78 / iso;
