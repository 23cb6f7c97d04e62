// Fits the two constants of src/imaging/sea-floor.ts to photon tracing, and prints them with what is left of the differences.
// Run after a build: node packages/optics/scripts/fit-sea-floor.mjs
import { lightField } from "#model/imaging/light-field";
import { traceSea } from "#model/imaging/radiance.test-support";
import { FLOOR_CONSTANTS, floorLight } from "#model/imaging/sea-floor";
import { refractedAngle_deg } from "#model/surface/snell-fresnel";
import { kirkKd } from "#model/water/kirk-1984";
import { fitted, rms } from "./fit.mjs";

const PHOTONS = Number(process.env.PHOTONS ?? 20_000);
const LAYERS_FROM_THE_FLOOR = 2;

const points = [
  [0.1, 0.05],
  [1, 0.1],
  [3, 0.2],
  [6, 0],
].flatMap(([particles, molecules], w) =>
  [
    [20, 0.85],
    [55, 0.75],
    [40, 0],
  ].flatMap(([zenith, directShare], s) =>
    [
      [0.1, 0.5],
      [0.3, 0.5],
      [0.3, 0.15],
      [1, 0.3],
      [2, 0.5],
    ].flatMap(([floorDepth_m, reflectance], f) => {
      const sea = {
        scatteringOverAbsorption: particles,
        molecularOverAbsorption: molecules,
        sunZenith_deg: zenith,
        directShare,
      };
      const seed = 3000 + 100 * w + 10 * s + f;
      const deep = traceSea(sea, floorDepth_m, PHOTONS, seed);
      const shallow = traceSea(
        { ...sea, floor: { absorptionDepth: floorDepth_m, reflectance } },
        floorDepth_m,
        PHOTONS,
        seed,
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
      return shallow.slice(0, -LAYERS_FROM_THE_FLOOR).map((layer, n) => {
        const depth_m = layer.absorptionDepth;
        const field = lightField({ sunAngleInWater_deg, directShare, depth_m }, coefficients);
        return {
          reflectance,
          place: { above_m: floorDepth_m - depth_m, floorDepth_m, deepReflectance: field.upwelling },
          coefficients,
          upwelling: layer.upwelling,
          deepUpwelling: deep[n].upwelling,
          gain: layer.downwelling / deep[n].downwelling,
        };
      });
    }),
  ),
);

const upwelling = (k) =>
  points.map(
    ({ reflectance, place, coefficients, upwelling: seen, deepUpwelling }) =>
      floorLight(reflectance, place, coefficients, k).upwelling + deepUpwelling - seen,
  );
const gain = (k) =>
  points.map(({ reflectance, place, coefficients, gain: seen }) =>
    Math.log(floorLight(reflectance, place, coefficients, k).gain / seen),
  );

let k = FLOOR_CONSTANTS;
k = fitted(k, ["slant"], (tried) => upwelling(tried));
k = fitted(k, ["sentDown"], (tried) => gain(tried));
for (const [name, value] of Object.entries(k)) console.log(`${name}: ${Number(value.toPrecision(2))},`);
console.log(
  `upwelling over downwelling: ${points.length} points, root mean square ${rms(upwelling(k)).toFixed(3)}`,
);
console.log(`gain of the downwelling light, ln: root mean square ${rms(gain(k)).toFixed(3)}`);
