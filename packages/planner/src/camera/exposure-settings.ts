import type { Camera } from "../scene/scene.js";

/** What the diver has left free, within the camera's limits. */
export interface ExposureLimits {
  min_iso: number;
  max_iso: number;
  min_f_number: number;
  max_f_number: number;
  shutter_s: number;
}

export const limitsOf = (camera: Camera): ExposureLimits => ({
  min_iso: camera.iso ?? camera.min_iso,
  max_iso: camera.iso ?? camera.max_iso,
  min_f_number: camera.f_number ?? camera.min_f_number,
  max_f_number: camera.f_number ?? camera.max_f_number,
  shutter_s: camera.shutter_s,
});

/** Half of a click of a third of a stop: closer than that a camera cannot be set. */
export const FITS_WITHIN_STOPS = 1 / 6;

export interface Settings {
  iso: number;
  f_number: number;
  shutter_s: number;
  /** Exposure that results over the one wanted, in stops: below 0 too dark, above 0 too bright, 0 where it fits. */
  off_by_stops: number;
  /** Whether ISO is at its lowest: there is light to spare. */
  at_lowest_iso: boolean;
}

/**
 * Settings that give the wanted product of ISO, shutter time and 1/N^2. The aperture opens first, since light is worth more than
 * gain; ISO rises from its lowest once the aperture is wide open, and the aperture closes once ISO is at its lowest.
 */
export function settingsFor(sensitivity: number, limits: ExposureLimits): Settings {
  const { min_iso, max_iso, min_f_number, max_f_number, shutter_s } = limits;
  const isoWideOpen = (sensitivity * min_f_number ** 2) / shutter_s;
  if (isoWideOpen > max_iso) {
    const off_by_stops = Math.log2(max_iso / isoWideOpen);
    return { iso: max_iso, f_number: min_f_number, shutter_s, off_by_stops, at_lowest_iso: false };
  }
  if (isoWideOpen > min_iso) {
    return { iso: isoWideOpen, f_number: min_f_number, shutter_s, off_by_stops: 0, at_lowest_iso: false };
  }
  const wanted = Math.sqrt((min_iso * shutter_s) / sensitivity);
  const f_number = Math.min(wanted, max_f_number);
  return {
    iso: min_iso,
    f_number,
    shutter_s,
    off_by_stops: 2 * Math.log2(wanted / f_number),
    at_lowest_iso: true,
  };
}
