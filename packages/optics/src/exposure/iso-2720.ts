/**
 * Exposure meters: exposure value from luminance or illuminance.
 * Source: ISO 2720:1974, constants in its ranges: K 10.6 to 13.4 (12.5 in use), C 240 to 400 for a flat receptor (250 in use), C 320
 * to 540 for a receptor of cardioid response, a dome (340 in use, from memory). K and flat C together imply a grey of
 * pi K / C = 15.7 %.
 */
export const REFLECTED_K = 12.5;
export const INCIDENT_C = 250;
export const DOME_C = 340;

/** EV = log2(N^2 / t). */
export const exposureValue = (f_number: number, shutter_s: number): number =>
  Math.log2(f_number ** 2 / shutter_s);

/** Exposure value that a luminance in cd/m^2 asks for at ISO 100. */
export const ev100FromLuminance = (luminance_cd_m2: number): number =>
  Math.log2((luminance_cd_m2 * 100) / REFLECTED_K);

/** Exposure value that an illuminance in lux on a flat receptor asks for at ISO 100. */
export const ev100FromIlluminance = (illuminance_lx: number): number =>
  Math.log2((illuminance_lx * 100) / INCIDENT_C);

/** Exposure value that an illuminance in lux on a dome receptor asks for at ISO 100. */
export const ev100FromDome = (illuminance_lx: number): number => Math.log2((illuminance_lx * 100) / DOME_C);

/** ISO speed that makes settings expose for `ev100`. */
export const isoFor = (ev100: number, f_number: number, shutter_s: number): number =>
  100 * 2 ** (exposureValue(f_number, shutter_s) - ev100);
