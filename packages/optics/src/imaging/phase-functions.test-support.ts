/**
 * Where scattered light goes, for tracing photons. Tests and fitting scripts only.
 *
 * Particles: Fournier & Jonasz 1999 (Proc. SPIE 3761, 62; index 1.10, slope 3.5835: backscattered share 0.0183, the mean of
 * Petzold 1972, after Mobley, Sundman & Boss 2002, Applied Optics 41, 1035). Molecules: 1 + 0.835 cos^2 (Morel 1974, in
 * Optical aspects of oceanography, for a depolarisation of 0.09; from memory).
 */

/** Draws from 0 to 1. */
export type Uniform = () => number;

/** Cosines of scattering at evenly spaced shares of the phase function's integral. */
function fournierForandCosines(index: number, slope: number): Float64Array {
  const nu = (3 - slope) / 2;
  const scale = 4 / (3 * (index - 1) ** 2);
  const d180 = scale;
  const angles = Array.from({ length: 2001 }, (_, i) =>
    Math.exp(Math.log(1e-4) + (i / 2000) * Math.log(Math.PI * 1e4)),
  );
  const phase = angles.map((angle) => {
    const s2 = Math.sin(angle / 2) ** 2;
    const d = scale * s2;
    const dn = d ** nu;
    const body = nu * (1 - d) - (1 - dn) + (d * (1 - dn) - nu * (1 - d)) / s2;
    const back =
      ((1 - d180 ** nu) / (16 * Math.PI * (d180 - 1) * d180 ** nu)) * (3 * Math.cos(angle) ** 2 - 1);
    return body / (4 * Math.PI * (1 - d) ** 2 * dn) + back;
  });
  const sums = [0];
  for (let i = 1; i < angles.length; i++) {
    const ring = phase[i] * Math.sin(angles[i]) + phase[i - 1] * Math.sin(angles[i - 1]);
    sums.push(sums[i - 1] + ring * (angles[i] - angles[i - 1]));
  }
  const out = new Float64Array(4097);
  let j = 0;
  for (let i = 0; i < out.length; i++) {
    const share = (i / (out.length - 1)) * sums[sums.length - 1];
    while (j < sums.length - 2 && sums[j + 1] < share) j++;
    const part = (share - sums[j]) / (sums[j + 1] - sums[j]);
    out[i] = Math.cos(angles[j] + part * (angles[j + 1] - angles[j]));
  }
  return out;
}

const PARTICLES = fournierForandCosines(1.1, 3.5835);

/** Cosine of the angle by which a particle turns light. */
export const particleCosine = (random: Uniform): number => PARTICLES[Math.floor(random() * PARTICLES.length)];

const MOLECULAR_SQUARE = 0.835;

/** Cosine of the angle by which a molecule turns light: drawn by refusal. */
export function moleculeCosine(random: Uniform): number {
  for (;;) {
    const cosine = 2 * random() - 1;
    if (random() * (1 + MOLECULAR_SQUARE) < 1 + MOLECULAR_SQUARE * cosine * cosine) return cosine;
  }
}
