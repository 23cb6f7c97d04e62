import {
  GRID_SIZE,
  illuminant,
  integrateProduct,
  integrateTriple,
  type Spectrum,
  X_BAR,
  type Xyz,
  Y_BAR,
  Z_BAR,
} from "@sunfathom/optics";

const D65 = illuminant("D65");
const UNIT = integrateProduct(D65, Y_BAR);

/** Tristimulus values of a surface under D65, Y = 1 for a perfect white. */
export function xyzUnderD65(reflectance: Spectrum): Xyz {
  return [
    integrateTriple(D65, reflectance, X_BAR) / UNIT,
    integrateTriple(D65, reflectance, Y_BAR) / UNIT,
    integrateTriple(D65, reflectance, Z_BAR) / UNIT,
  ];
}

/** A perfect white under D65. */
export const WHITE_D65: Xyz = xyzUnderD65(new Float64Array(GRID_SIZE).fill(1));
