/**
 * A plane-parallel sheet between lens and sensor. Near the axis exact (any textbook of optics, for example Hecht, Optics): the
 * image moves away from the lens by (1 - 1/n) t. Wedge, tilt and cockle of a real sheet are not counted. Lengths in mm.
 */

/** How far a sheet of this thickness (0 or more) and refractive index (1 or more) moves the image away from the lens. */
export const focusShift_mm = (thickness_mm: number, index: number): number => (1 - 1 / index) * thickness_mm;

/**
 * Distance from a thin lens of what is still sharp with the lens set to infinity and the image moved back by `shift_mm`:
 * f + f^2 / shift, from 1/f = 1/x + 1/x'. Anything farther asks for a lens that turns past infinity. Infinity without a shift.
 */
export const farthestSharp_mm = (focalLength_mm: number, shift_mm: number): number =>
  focalLength_mm + focalLength_mm ** 2 / shift_mm;

/** Diameter of the blur from a defocus behind the lens: the cone of f-number N is defocus / N wide there. */
export const defocusBlur_mm = (defocus_mm: number, fNumber: number): number => defocus_mm / fNumber;
