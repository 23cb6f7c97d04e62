import type { Camera } from "../scene/scene.js";

/** What the diver has left free, within the camera's limits. */
export interface ExposureLimits {
  min_iso: number;
  max_iso: number;
  min_f_number: number;
  max_f_number: number;
  shutter_s: number;
  /** Shorter than that only where the camera exposes by itself. */
  shortest_shutter_s: number;
}

/** What cameras go down to by themselves: from memory. */
const SHORTEST_AUTO_S = 1 / 8000;

export const limitsOf = (camera: Camera): ExposureLimits => ({
  min_iso: camera.iso ?? camera.min_iso,
  max_iso: camera.iso ?? camera.max_iso,
  min_f_number: camera.f_number ?? camera.min_f_number,
  max_f_number: camera.f_number ?? camera.max_f_number,
  shutter_s: camera.shutter_s,
  shortest_shutter_s:
    camera.exposure_mode === "auto" ? Math.min(camera.shutter_s, SHORTEST_AUTO_S) : camera.shutter_s,
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
 * gain; ISO rises from its lowest once the aperture is wide open, and the aperture closes once ISO is at its lowest. Then the
 * exposure time is shortened, as far as it may be.
 */
export function settingsFor(sensitivity: number, limits: ExposureLimits): Settings {
  const { min_iso, max_iso, min_f_number, max_f_number, shutter_s, shortest_shutter_s } = limits;
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
  const excess_stops = 2 * Math.log2(wanted / f_number);
  const shortened_s = Math.max(shortest_shutter_s, shutter_s * 2 ** -excess_stops);
  return {
    iso: min_iso,
    f_number,
    shutter_s: shortened_s,
    off_by_stops: excess_stops - Math.log2(shutter_s / shortened_s),
    at_lowest_iso: true,
  };
}
