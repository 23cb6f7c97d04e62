// Fits the constants of src/imaging/light-field.ts to photon tracing, and prints them with what is left of the differences.
// Run after a build: node packages/optics/scripts/fit-light-field.mjs (about two minutes)
import { FIELD_CONSTANTS, lightField, openWaterRadiance } from "#model/imaging/light-field";
import { TILTS_DEG, traceSea } from "#model/imaging/radiance.test-support";
import { refractedAngle_deg } from "#model/surface/snell-fresnel";
import { kirkKd } from "#model/water/kirk-1984";
import { fitted, rms } from "./fit.mjs";

const PHOTONS = Number(process.env.PHOTONS ?? 40_000);
const TO_ABSORPTION_DEPTH = 3;
/** Share of the surface light below which few photons arrive and the tracing is noise. */
const LEAST_LIGHT = 0.03;
const AZIMUTHS_DEG = [0, 45, 90, 135, 180];

const waters = [
  [0.1, 0],
  [0.3, 0.05],
  [1, 0],
  [1, 0.3],
  [2, 0.1],
  [3, 0.2],
  [5, 0.02],
  [8, 0],
];
const suns = [
  [15, 0.85],
  [30, 0.8],
  [50, 0.8],
  [70, 0.6],
  [40, 0],
];

const points = waters.flatMap(([particles, molecules], w) =>
  suns.flatMap(([zenith, directShare], s) => {
    const layers = traceSea(
      {
        scatteringOverAbsorption: particles,
        molecularOverAbsorption: molecules,
        sunZenith_deg: zenith,
        directShare,
      },
      TO_ABSORPTION_DEPTH,
      PHOTONS,
      1000 + 10 * w + s,
    );
    const sunAngleInWater_deg = refractedAngle_deg(zenith);
    const mu0 =
      1 / (directShare / Math.cos((sunAngleInWater_deg * Math.PI) / 180) + (1 - directShare) / 0.84);
    const coefficients = {
      absorption_per_m: 1,
      particles_per_m: particles,
      molecules_per_m: molecules,
      kd_per_m: kirkKd(1, particles + molecules, mu0),
    };
    return layers
      .filter(({ downwelling }) => downwelling > LEAST_LIGHT)
      .map((traced) => ({
        geometry: { sunAngleInWater_deg, directShare, depth_m: traced.absorptionDepth },
        coefficients,
        traced,
      }));
  }),
);

const squares = {
  scalar: (k) =>
    points.map(({ geometry, coefficients, traced }) => {
      const seen = (1 - traced.upwelling) / traced.meanCosine;
      return Math.log(lightField(geometry, coefficients, k).scalar / seen);
    }),
  upright: (k) =>
    points.map(({ geometry, coefficients, traced }) =>
      Math.log(lightField(geometry, coefficients, k).upright / traced.upright),
    ),
  // Relative to the upright mean, which it is added to: near nothing its own ratio says nothing.
  net: (k) =>
    points
      .filter(({ geometry }) => geometry.directShare > 0)
      .map(({ geometry, coefficients, traced }) => {
        const { net } = lightField(geometry, coefficients, k);
        return (net - traced.netTowards) / (traced.upright + traced.netTowards);
      }),
  upwelling: (k) =>
    points
      .filter(({ coefficients }) => coefficients.particles_per_m > 0.5)
      .map(({ geometry, coefficients, traced }) =>
        Math.log(lightField(geometry, coefficients, k).upwelling / traced.upwelling),
      ),
  // Of noisy bins the difference of roots, which counts dim ones for no more than they tell.
  level: (k) =>
    points.flatMap(({ geometry, coefficients, traced }) => {
      const field = lightField(geometry, coefficients, k);
      return AZIMUTHS_DEG.map((azimuth, n) => {
        const cos = Math.cos((azimuth * Math.PI) / 180);
        const ours = openWaterRadiance(field, coefficients, { cosFromSun: cos }, k);
        const scale = Math.sqrt(Math.max(1e-9, openWaterRadiance(field, coefficients, {}, k)));
        return (2 * (Math.sqrt(ours) - Math.sqrt(traced.level[n]))) / scale;
      });
    }),
  // Against level, where particles send back enough for the bands to be more than noise.
  tilt: (k) =>
    points
      .filter(({ coefficients }) => coefficients.particles_per_m + 10 * coefficients.molecules_per_m >= 0.5)
      .flatMap(({ geometry, coefficients, traced }) => {
        const field = lightField(geometry, coefficients, k);
        const at = (tilt_deg) =>
          openWaterRadiance(field, coefficients, { upSine: Math.sin((tilt_deg * Math.PI) / 180) }, k);
        const level = traced.tilted[TILTS_DEG.indexOf(0)];
        return TILTS_DEG.map((tilt_deg, n) => [tilt_deg, n])
          .filter(([tilt_deg]) => tilt_deg !== 0 && tilt_deg <= 30)
          .map(([tilt_deg, n]) => Math.log(at(tilt_deg) / at(0)) - Math.log(traced.tilted[n] / level));
      }),
};
let k = FIELD_CONSTANTS;
k = fitted(k, ["scalarChange"], squares.scalar);
k = fitted(k, ["uprightChange", "uprightFar", "uprightBack"], squares.upright);
k = fitted(k, ["netFade", "netOnset", "netExtraPath"], squares.net);
k = fitted(k, ["levelParticles", "levelMolecules", "levelTowards"], squares.level);
k = fitted(k, ["upTowards"], squares.tilt);
for (const [name, value] of Object.entries(k)) console.log(`${name}: ${Number(value.toPrecision(3))},`);
for (const [name, misses] of Object.entries(squares)) {
  const all = misses(k);
  const mean = all.reduce((sum, v) => sum + v, 0) / all.length;
  console.log(
    `${name}: ${all.length} points, mean ${mean.toFixed(3)}, root mean square ${rms(all).toFixed(3)}`,
  );
}
