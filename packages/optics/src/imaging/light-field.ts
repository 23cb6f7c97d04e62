/**
 * What of the light field under water decides how a thing is lit and what stands behind it, per wavelength and relative to the
 * downwelling irradiance of deep water: scalar irradiance, net horizontal irradiance away from the sun, upwelling irradiance,
 * mean light on upright planes, and the radiance of open water.
 *
 * A cardioid receptor (1 + cos)/2, which is what ISO 2720 gives a dome, needs no more than scalar and vector irradiance:
 * E = (E0 - E.n)/2, exact. The scalar irradiance goes from that of the refracted sun and sky near the surface to what Gershun's
 * law gives with Kd, (1 - R) Kd/a; net horizontal irradiance is the sun's tan(w) that scattering fades; the reflectance of deep
 * water is b_b/(2 Kd) (Maritorena, Morel & Gentili 1994, Limnology and Oceanography 39, 1689). Level radiance over the mean
 * upright light is x/(a + x) with x a sum of the scattering coefficients, brighter towards the sun as exp(k cos). Looking up
 * by an angle e it is brighter by (a + x)/(a + x - Kd sin e), since light grows along the line of sight (Preisendorfer 1976,
 * from memory; Mobley 1994, Light and Water, section 9), and by exp(q sin e), since particles scatter forward what comes down; dimmer
 * looking down likewise. The constants below are fitted by scripts/fit-light-field.mjs to the photon tracing beside this file:
 * particles 0.1 to 8 and molecules 0 to 0.3 times the absorption, sun 20 to 75 degrees high to overcast, down to three absorption
 * lengths, looking 60 degrees down to 30 up.
 */
import { asymptoticUprightFractionFast, SKY_FRACTION } from "./upright-fraction.js";

const RADIAN = Math.PI / 180;

/** Backscattered share: of particles the mean of Petzold 1972 (Mobley, Sundman & Boss 2002), of molecules half. */
export const PARTICLE_BACKSCATTER = 0.0183;
export const MOLECULE_BACKSCATTER = 0.5;

export interface FieldConstants {
  /** How fast the scalar irradiance turns, in 1 - exp(-s sqrt(b z)). */
  scalarChange: number;
  /** How fast upright light turns, its factor on the asymptotic field, and what turned-back light adds near the surface. */
  uprightChange: number;
  uprightFar: number;
  uprightBack: number;
  /** Net horizontal irradiance fades as exp(-f x^2 / (x + g)), x = b z, and by the longer way that slant light goes in absorbing water. */
  netFade: number;
  netOnset: number;
  netExtraPath: number;
  /** x of open water: of particles and of molecules. */
  levelParticles: number;
  levelMolecules: number;
  /** How much brighter open water is towards the sun, times net horizontal irradiance and the particles' part of x. */
  levelTowards: number;
  /** How much brighter open water is above, times the particles' part of x. */
  upTowards: number;
}

/** Printed by scripts/fit-light-field.mjs. */
export const FIELD_CONSTANTS: FieldConstants = {
  scalarChange: 1.83,
  uprightChange: 0.321,
  uprightFar: 1.14,
  uprightBack: 1.03,
  netFade: 0.121,
  netOnset: 11.9,
  netExtraPath: 0.508,
  levelParticles: 0.151,
  levelMolecules: 1.58,
  levelTowards: 1.29,
  upTowards: 0.914,
};

/** The sun and sky just below the surface, and how deep it is. */
export interface FieldGeometry {
  /** Sun's angle from the vertical in water. */
  sunAngleInWater_deg: number;
  /** Share of the direct beam in the downwelling light just below the surface, 0 to 1. */
  directShare: number;
  depth_m: number;
}

/** Coefficients of the water at one wavelength, 1/m. */
export interface Coefficients {
  absorption_per_m: number;
  particles_per_m: number;
  molecules_per_m: number;
  /** Diffuse attenuation under this sun. */
  kd_per_m: number;
}

/** All over the downwelling irradiance of deep water. */
export interface LightField {
  scalar: number;
  /** The part that still comes straight from the sun. */
  beam: number;
  /** Positive away from the sun: what a plane facing it gets more than one that faces away. */
  net: number;
  upwelling: number;
  /** Mean over the directions of upright planes. */
  upright: number;
}

/** Downwelling over scalar irradiance of an even sky below the surface; 0.84 in the tracing, 0.83 to 0.86 (Gordon 1989, from memory). */
const SKY_MU = 0.84;

/** Made-up waters may dim more with depth than along a way through them. */
const LEAST_ALONG = 0.2;

/** Of deep water: far above any natural one. */
const MOST_REFLECTANCE = 0.5;

const turned = (change: number, scatteringDepth: number): number =>
  1 - Math.exp(-change * Math.sqrt(scatteringDepth));

/** The field at a depth of deep water. */
export function lightField(
  { sunAngleInWater_deg, directShare, depth_m }: FieldGeometry,
  { absorption_per_m: a, particles_per_m, molecules_per_m, kd_per_m }: Coefficients,
  k: FieldConstants = FIELD_CONSTANTS,
): LightField {
  const b = particles_per_m + molecules_per_m;
  const scatteringDepth = b * depth_m;
  const tangent = Math.tan(sunAngleInWater_deg * RADIAN);
  const slant = 1 / Math.cos(sunAngleInWater_deg * RADIAN);
  const backscatter = PARTICLE_BACKSCATTER * particles_per_m + MOLECULE_BACKSCATTER * molecules_per_m;
  // Made-up waters may scatter far more than their attenuation lets them.
  const upwelling = Math.min(MOST_REFLECTANCE, backscatter / (2 * kd_per_m));
  const scalarNear = directShare * slant + (1 - directShare) / SKY_MU;
  const scalarFar = ((1 - upwelling) * kd_per_m) / a;
  const scalarWeight = turned(k.scalarChange, scatteringDepth);
  const uprightNear =
    (directShare * tangent) / Math.PI + (1 - directShare) * SKY_FRACTION + k.uprightBack * upwelling;
  const uprightFar = k.uprightFar * asymptoticUprightFractionFast(a / kd_per_m);
  const uprightWeight = turned(k.uprightChange, scatteringDepth);
  const fade =
    (k.netFade * scatteringDepth * scatteringDepth) / (scatteringDepth + k.netOnset) +
    k.netExtraPath * a * depth_m * (slant - 1);
  const beam = directShare * Math.exp(-fade);
  return {
    beam,
    scalar: (1 - scalarWeight) * scalarNear + scalarWeight * Math.max(scalarNear, scalarFar),
    net: beam * tangent,
    upwelling,
    upright: (1 - uprightWeight) * uprightNear + uprightWeight * uprightFar,
  };
}

/** Modified Bessel function of the first kind and order zero, for arguments up to about 3. */
function besselI0(x: number): number {
  const quarter = (x * x) / 4;
  let term = 1;
  let sum = 1;
  for (let n = 1; n < 20; n++) {
    term *= quarter / (n * n);
    sum += term;
    if (term < 1e-9) break;
  }
  return sum;
}

/** Where a camera looks at open water. */
export interface Sight {
  /** Cosine of the angle, seen from above, between where it looks and the sun; the mean over directions when left out. */
  cosFromSun?: number;
  /** Sine of the angle by which it looks up, below 0 when it looks down; level when left out. */
  upSine?: number;
}

/** Looking up by more than this one sees through the surface: open water is taken as it is there. */
const MOST_UP_SINE = Math.sin(35 * RADIAN);

/** Radiance of open water, as that of a white upright surface would be in the downwelling irradiance: pi L / Ed. */
export function openWaterRadiance(
  field: LightField,
  { absorption_per_m: a, particles_per_m, molecules_per_m, kd_per_m }: Coefficients,
  { cosFromSun, upSine = 0 }: Sight = {},
  k: FieldConstants = FIELD_CONSTANTS,
): number {
  const particles = k.levelParticles * particles_per_m;
  const x = particles + k.levelMolecules * molecules_per_m;
  if (x === 0) return 0;
  const up = Math.min(MOST_UP_SINE, upSine);
  const along = (a + x) / Math.max(LEAST_ALONG * (a + x), a + x - kd_per_m * up);
  const mean = ((field.upright * x) / (a + x)) * along * Math.exp((k.upTowards * up * particles) / x);
  if (cosFromSun === undefined) return mean;
  const lean = (k.levelTowards * field.net * particles * Math.sqrt(1 - up * up)) / x;
  return (mean * Math.exp(lean * cosFromSun)) / besselI0(lean);
}
