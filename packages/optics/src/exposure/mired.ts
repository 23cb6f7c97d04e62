/** Micro reciprocal degree: 10^6 / K. Shifts add near the Planckian locus only, for weak filters. */
export const mired = (cct_K: number): number => 1e6 / cct_K;

/** Shift of a filter that turns light of one colour temperature into another. */
export const miredShift = (from_K: number, to_K: number): number => mired(to_K) - mired(from_K);

/** Colour temperature after a shift. */
export const shiftedCct_K = (from_K: number, shift_mired: number): number =>
  1e6 / (mired(from_K) + shift_mired);
