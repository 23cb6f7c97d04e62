/**
 * What the pixels of a class of cameras hold, how noisy they are read, and how many of them make one that is looked at.
 *
 * All from memory of measurements that are published of single cameras: silicon holds about 1500 to 3500 electrons for each square
 * micrometre, and pixels are 1.2 to 2 micrometres wide in phones, 1.5 to 2.4 in action cameras and compact ones, 3.5 to 6 behind
 * interchangeable lenses and 5 to 8 in cinema cameras; they are read with 1.5 to 4 electrons of noise. A picture is taken to be looked
 * at with two million pixels. Cameras of one class differ by a factor of three, which is carried as the doubt of `full_well`.
 */
import type { CameraClass } from "../scene/scene.js";

export interface Pixels {
  /** Electrons that a pixel holds at ISO 100. */
  full_well_iso_100_e: number;
  read_noise_e: number;
  /** Pixels, times frames, that are averaged to one that is looked at. */
  averaged: number;
}

export const PIXELS: Readonly<Record<CameraClass, Pixels>> = {
  phone: { full_well_iso_100_e: 7000, read_noise_e: 2, averaged: 4 },
  // Eight frames, as phones merge them for a still.
  phone_merged: { full_well_iso_100_e: 7000, read_noise_e: 2, averaged: 4 * 8 },
  action: { full_well_iso_100_e: 10000, read_noise_e: 2.5, averaged: 4 },
  compact: { full_well_iso_100_e: 20000, read_noise_e: 3, averaged: 4 },
  interchangeable: { full_well_iso_100_e: 45000, read_noise_e: 3, averaged: 10 },
  cinema: { full_well_iso_100_e: 60000, read_noise_e: 4, averaged: 8 },
};
