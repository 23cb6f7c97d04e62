/**
 * Diffuse attenuation, absorption and scattering tied together by the sun's path in the water.
 *
 * Kd = sqrt(a^2 + (0.425 mu0 - 0.19) a b) / mu0, mean over the euphotic zone; mu0 is the cosine of the (effective) light
 * path below the surface. Domain: b/a up to 30.
 * Source: Kirk 1984, Dependence of relationship between inherent and apparent optical properties of water on solar
 * altitude, Limnology and Oceanography 29, 350. Coefficients as used in public radiative-transfer code.
 */
const scatteringWeight = (mu0: number): number => 0.425 * mu0 - 0.19;

/** Diffuse attenuation, 1/m. */
export function kirkKd(absorption_per_m: number, scattering_per_m: number, mu0: number): number {
  const a = absorption_per_m;
  return Math.sqrt(a * a + scatteringWeight(mu0) * a * scattering_per_m) / mu0;
}

/** `kirkKd` under one sun over `kirkKd` under another, in the same water. */
export function kirkKdRatio(
  absorption_per_m: number,
  scattering_per_m: number,
  mu0: number,
  other: number,
): number {
  const a = absorption_per_m;
  const b = scattering_per_m;
  return (other / mu0) * Math.sqrt((a + scatteringWeight(mu0) * b) / (a + scatteringWeight(other) * b));
}

/** Absorption that gives this diffuse attenuation with this scattering, 1/m: the inverse of `kirkKd`. */
export function kirkAbsorption(kd_per_m: number, scattering_per_m: number, mu0: number): number {
  const half = (scatteringWeight(mu0) * scattering_per_m) / 2;
  return Math.sqrt(half * half + mu0 * mu0 * kd_per_m * kd_per_m) - half;
}
