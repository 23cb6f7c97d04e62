/**
 * Light in a sea by tracing photons: an independent check for what the model says in closed form. Tests only.
 *
 * Plane-parallel, flat surface with total and Fresnel reflection from below, elastic scattering by particles and by molecules
 * (phase functions beside this file). Without a floor photons are lost far below the last layer; a floor is a matt reflector.
 */
import { uniformFrom } from "../random.test-support.js";
import { fresnelReflectance, refractedAngle_deg, WATER_INDEX } from "../surface/snell-fresnel.js";
import { moleculeCosine, particleCosine } from "./phase-functions.test-support.js";

export interface Sea {
  /** Scattering by particles over absorption. */
  scatteringOverAbsorption: number;
  /** Scattering by molecules over absorption; 0 when left out. */
  molecularOverAbsorption?: number;
  /** A matt floor: its absorption depth and its reflectance, 0 to 1. Deep water when left out. */
  floor?: { absorptionDepth: number; reflectance: number };
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
  /** Net horizontal irradiance away from the sun: on a plane that faces it, less on one that faces away. */
  netTowards: number;
  /** Level radiance times pi, within 10 degrees of level, when looking 0, 45 ... 180 degrees away from the sun. */
  level: number[];
  /**
   * Radiance times pi when looking up (above 0) or down, within 5 degrees of each of `TILTS_DEG`, mean over all directions seen from
   * above.
   */
  tilted: number[];
  /** Not relative: downwelling light, for its attenuation. */
  downwelling: number;
}

const AZIMUTHS_DEG = [0, 45, 90, 135, 180];
/** How far up the camera looks, degrees. Light that it meets goes down by as much. */
export const TILTS_DEG = [-60, -45, -30, -15, 0, 15, 30, 40];
const TILT_HALF_DEG = 5;
const RADIAN = Math.PI / 180;
const TILT_BANDS = TILTS_DEG.map((tilt) => ({
  from: Math.sin((tilt - TILT_HALF_DEG) * RADIAN),
  to: Math.sin((tilt + TILT_HALF_DEG) * RADIAN),
}));
const LAYERS = 16;
/** Sine of the half-height of the band that counts as level. */
const LEVEL_SINE = Math.sin(10 * RADIAN);
/** Photons are followed to this many layers' worth below the last that is reported, so that it is not dark from below. */
const BELOW = 1.5;

/** Of the level band around a direction: an eighth of the circle straight towards or away from the sun, two eighths beside it. */
const levelSolidAngle = (bin: number): number => 2 * LEVEL_SINE * (bin % 4 === 0 ? 1 : 2) * (Math.PI / 4);

/** Share reflected back down of light that meets the surface from below. */
function reflectedFromBelow(cosine: number): number {
  const sineInAir = WATER_INDEX * Math.sqrt(1 - cosine * cosine);
  return sineInAir >= 1 ? 1 : fresnelReflectance(Math.asin(sineInAir) / RADIAN);
}

/** Light in `LAYERS` layers down to an absorption depth. Deterministic for a seed. */
export function traceSea(sea: Sea, toAbsorptionDepth: number, photons: number, seed: number): Layer[] {
  const random = uniformFrom(seed);
  const { scatteringOverAbsorption: particles, molecularOverAbsorption: molecules = 0 } = sea;
  const beam = 1 + particles + molecules;
  const single = (particles + molecules) / beam;
  const molecular = molecules / (particles + molecules);
  const thickness = (toAbsorptionDepth * beam) / LAYERS;
  const floor = sea.floor ? sea.floor.absorptionDepth * beam : thickness * LAYERS * BELOW;
  const sums = Array.from({ length: LAYERS }, () => ({
    down: 0,
    up: 0,
    scalar: 0,
    mean: 0,
    net: 0,
    at: [0, 0, 0, 0, 0],
    level: [0, 0, 0, 0, 0],
    tilted: TILTS_DEG.map(() => 0),
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
    sum.net += path * x;
    if (Math.abs(z) < LEVEL_SINE) {
      const fromSun = Math.acos(Math.max(-1, Math.min(1, x / Math.hypot(x, y)))) / RADIAN;
      sum.level[Math.round(fromSun / 45)] += path;
    }
    for (let k = 0; k < TILT_BANDS.length; k++)
      if (z > TILT_BANDS[k].from && z < TILT_BANDS[k].to) sum.tilted[k] += path;
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
    const cosine = molecular > 0 && random() < molecular ? moleculeCosine(random) : particleCosine(random);
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

  /** Matt: as many photons for each share of the solid angle as its cosine (Lambert). */
  const leaveFloor = (): void => {
    const sine = Math.sqrt(random());
    const azimuth = 2 * Math.PI * random();
    [x, y, z] = [sine * Math.cos(azimuth), sine * Math.sin(azimuth), -Math.sqrt(1 - sine * sine)];
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
      } else if (end > floor && sea.floor) {
        tallyPath(depth, floor, weight, (floor - depth) / z);
        depth = floor;
        weight *= sea.floor.reflectance;
        leaveFloor();
        continue;
      } else tallyPath(depth, end, weight, length);
      depth = end;
      weight *= single;
      if (depth > floor) break;
      if (weight < 0.02) weight = random() < 0.1 ? weight * 10 : 0;
      turn();
    }
  }
  return sums.map(({ down, up, scalar, mean, net, at, level, tilted }, n) => ({
    absorptionDepth: ((n + 0.5) * toAbsorptionDepth) / LAYERS,
    upwelling: up / down,
    meanCosine: (down - up) / scalar,
    upright: mean / down,
    uprightAt: at.map((value) => value / down),
    netTowards: net / down,
    level: level.map((value, bin) => (Math.PI * value) / down / levelSolidAngle(bin)),
    // A band of sines has a solid angle of 2 pi times its height.
    tilted: tilted.map(
      (value, band) =>
        (Math.PI * value) / down / (2 * Math.PI * (TILT_BANDS[band].to - TILT_BANDS[band].from)),
    ),
    downwelling: down / photons,
  }));
}
