/**
 * Light in a sea by tracing photons: an independent check for what the model says in closed form. Tests only.
 *
 * Plane-parallel, flat surface with total and Fresnel reflection from below, elastic scattering with the phase function of
 * Fournier & Jonasz 1999 (Proc. SPIE 3761, 62; index 1.10, slope 3.5835: backscattered share 0.0183, the mean of Petzold
 * 1972, after Mobley, Sundman & Boss 2002, Applied Optics 41, 1035). Deep water: photons are lost below the last layer.
 */
import { uniformFrom } from "../random.test-support.js";
import { fresnelReflectance, refractedAngle_deg, WATER_INDEX } from "../surface/snell-fresnel.js";

export interface Sea {
  /** Scattering over absorption. */
  scatteringOverAbsorption: number;
  /** Sun's zenith angle in air. */
  sunZenith_deg: number;
  /** Share of the direct beam in the light just below the surface; the rest is an even sky. */
  directShare: number;
}

/** Irradiances in one layer over the downwelling one; depth as absorption times metres. */
export interface Layer {
  absorptionDepth: number;
  upwelling: number;
  meanCosine: number;
  /** Irradiance on a vertical plane: mean over its directions, and at 0, 45 ... 180 degrees from the sun. */
  upright: number;
  uprightAt: number[];
  /** Not relative: downwelling light, for its attenuation. */
  downwelling: number;
}

const AZIMUTHS_DEG = [0, 45, 90, 135, 180];
const RADIAN = Math.PI / 180;
const LAYERS = 16;
/** Photons are followed to this many layers' worth below the last that is reported, so that it is not dark from below. */
const BELOW = 1.5;

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
const COSINES = fournierForandCosines(1.1, 3.5835);

/** Share reflected back down of light that meets the surface from below. */
function reflectedFromBelow(cosine: number): number {
  const sineInAir = WATER_INDEX * Math.sqrt(1 - cosine * cosine);
  return sineInAir >= 1 ? 1 : fresnelReflectance(Math.asin(sineInAir) / RADIAN);
}

/** Light in `LAYERS` layers down to an absorption depth. Deterministic for a seed. */
export function traceSea(sea: Sea, toAbsorptionDepth: number, photons: number, seed: number): Layer[] {
  const random = uniformFrom(seed);
  const single = sea.scatteringOverAbsorption / (1 + sea.scatteringOverAbsorption);
  const thickness = (toAbsorptionDepth * (1 + sea.scatteringOverAbsorption)) / LAYERS;
  const floor = thickness * LAYERS * BELOW;
  const sums = Array.from({ length: LAYERS }, () => ({
    down: 0,
    up: 0,
    scalar: 0,
    mean: 0,
    at: [0, 0, 0, 0, 0],
  }));
  const facing = AZIMUTHS_DEG.map((azimuth) => ({
    x: Math.cos(azimuth * RADIAN),
    y: Math.sin(azimuth * RADIAN),
  }));
  const sunSine = Math.sin(refractedAngle_deg(sea.sunZenith_deg) * RADIAN);
  let [x, y, z] = [0, 0, 1];

  const tally = (layer: number, path: number): void => {
    const sum = sums[layer];
    sum.scalar += path;
    if (z > 0) sum.down += path * z;
    else sum.up -= path * z;
    sum.mean += (path * Math.sqrt(1 - z * z)) / Math.PI;
    for (let k = 0; k < facing.length; k++)
      sum.at[k] += path * Math.max(0, x * facing[k].x + y * facing[k].y);
  };
  const tallyPath = (from: number, to: number, weight: number, length: number): void => {
    const [top, bottom] = from < to ? [from, to] : [to, from];
    const first = Math.floor(top / thickness);
    if (bottom - top < 1e-9) {
      if (first < LAYERS) tally(first, weight * length);
      return;
    }
    for (let n = first; n < LAYERS && n * thickness < bottom; n++) {
      const part = Math.min(bottom, (n + 1) * thickness) - Math.max(top, n * thickness);
      if (part > 0) tally(n, (weight * length * part) / (bottom - top));
    }
  };
  const turn = (): void => {
    const cosine = COSINES[Math.floor(random() * COSINES.length)];
    const sine = Math.sqrt(Math.max(0, 1 - cosine * cosine));
    const angle = 2 * Math.PI * random();
    const [c, s] = [Math.cos(angle) * sine, Math.sin(angle) * sine];
    const flat = Math.sqrt(Math.max(1e-12, 1 - z * z));
    const next = [
      (c * x * z - s * y) / flat + x * cosine,
      (c * y * z + s * x) / flat + y * cosine,
      -c * flat + z * cosine,
    ];
    const length = Math.hypot(...next);
    [x, y, z] = next.map((value) => value / length);
  };
  const launch = (): void => {
    const skySine = Math.sqrt(random()) / WATER_INDEX;
    const azimuth = 2 * Math.PI * random();
    const direct = random() < sea.directShare;
    const sine = direct ? sunSine : skySine;
    x = direct ? sine : sine * Math.cos(azimuth);
    y = direct ? 0 : sine * Math.sin(azimuth);
    z = Math.sqrt(1 - sine * sine);
  };

  for (let n = 0; n < photons; n++) {
    launch();
    let depth = 0;
    let weight = 1;
    while (weight > 0) {
      const length = -Math.log(1 - random());
      let end = depth + z * length;
      if (end < 0) {
        const toSurface = depth / -z;
        tallyPath(depth, 0, weight, toSurface);
        weight *= reflectedFromBelow(-z);
        z = -z;
        depth = 0;
        end = z * (length - toSurface);
        tallyPath(0, end, weight, length - toSurface);
      } else tallyPath(depth, end, weight, length);
      depth = end;
      weight *= single;
      if (depth > floor) break;
      if (weight < 0.02) weight = random() < 0.1 ? weight * 10 : 0;
      turn();
    }
  }
  return sums.map(({ down, up, scalar, mean, at }, n) => ({
    absorptionDepth: ((n + 0.5) * toAbsorptionDepth) / LAYERS,
    upwelling: up / down,
    meanCosine: (down - up) / scalar,
    upright: mean / down,
    uprightAt: at.map((value) => value / down),
    downwelling: down / photons,
  }));
}
