/**
 * Relative optical air mass from the sun's zenith angle in degrees (refracted), 1 overhead.
 * Source: Kasten & Young 1989, Revised optical air mass tables and approximation formula, Applied Optics 28, 4735. To 90 degrees.
 */
export function relativeAirMass(sunZenith_deg: number): number {
  return 1 / (Math.cos((sunZenith_deg * Math.PI) / 180) + 0.50572 * (96.07995 - sunZenith_deg) ** -1.6364);
}
