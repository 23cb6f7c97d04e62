// Light on a solid subject, from a floor and of open water: closed forms against photon tracing, and exposures against practice.
import { illuminance_lx } from "#model/colour/observer";
import { daylightFromTable } from "#model/daylight/daylight-table";
import { ev100FromDome } from "#model/exposure/iso-2720";
import { lightAtDepth } from "#model/imaging/light-at-depth";
import { lightField, openWaterRadiance } from "#model/imaging/light-field";
import { portTransmittance } from "#model/imaging/port-transmittance";
import { traceSea } from "#model/imaging/radiance.test-support";
import { floorLight } from "#model/imaging/sea-floor";
import { domeLight } from "#model/imaging/subject-light";
import { multiply, pathTransmittance } from "#model/spectrum/combine";
import { refractedAngle_deg } from "#model/surface/snell-fresnel";
import { throughSurface } from "#model/surface/underwater-daylight";
import { kirkKd } from "#model/water/kirk-1984";
import { scatteringScaleForBeam } from "#model/water/water-description";
import { describeByClarity } from "#model/water/water-from-clarity";
import { kdUnderSun, waterFromKd } from "#model/water/water-optics";
import { deviationTable, number } from "./numbers.mjs";

const PHOTONS = 6000;
const TO_ABSORPTION_DEPTH = 2;
const LEAST_LIGHT = 0.05;
const SEAS = [
  [0.3, 0.05],
  [2, 0.15],
  [6, 0.05],
].flatMap(([particles, molecules]) =>
  [
    { sunZenith_deg: 20, directShare: 0.85, sky: "sun 70° high" },
    { sunZenith_deg: 55, directShare: 0.75, sky: "sun 35° high" },
    { sunZenith_deg: 40, directShare: 0, sky: "overcast" },
  ].map((light) => ({ particles, molecules, ...light })),
);

function tracedAndOurs() {
  return SEAS.flatMap(({ particles, molecules, sunZenith_deg, directShare, sky }, n) => {
    const sea = {
      scatteringOverAbsorption: particles,
      molecularOverAbsorption: molecules,
      sunZenith_deg,
      directShare,
    };
    const sunAngleInWater_deg = refractedAngle_deg(sunZenith_deg);
    const mu0 =
      1 / (directShare / Math.cos((sunAngleInWater_deg * Math.PI) / 180) + (1 - directShare) / 0.84);
    const at = {
      absorption_per_m: 1,
      particles_per_m: particles,
      molecules_per_m: molecules,
      kd_per_m: kirkKd(1, particles + molecules, mu0),
    };
    const floor = { absorptionDepth: 0.8, reflectance: 0.4 };
    const overFloor = traceSea({ ...sea, floor }, floor.absorptionDepth, PHOTONS, 900 + n).slice(0, -2);
    return [
      ...traceSea(sea, TO_ABSORPTION_DEPTH, PHOTONS, 800 + n)
        .filter(({ downwelling }) => downwelling > LEAST_LIGHT)
        .map((layer) => {
          const field = lightField({ sunAngleInWater_deg, directShare, depth_m: layer.absorptionDepth }, at);
          return { layer, field, at, where: place(particles, molecules, sky, layer) };
        }),
      ...overFloor.map((layer) => {
        const depth_m = layer.absorptionDepth;
        const field = lightField({ sunAngleInWater_deg, directShare, depth_m }, at);
        const above_m = floor.absorptionDepth - depth_m;
        const { upwelling } = floorLight(
          floor.reflectance,
          { above_m, floorDepth_m: floor.absorptionDepth, deepReflectance: field.upwelling },
          at,
        );
        return {
          layer,
          floorUpwelling: field.upwelling + upwelling,
          where: place(particles, molecules, sky, layer),
        };
      }),
    ];
  });
}
const place = (particles, molecules, sky, { absorptionDepth }) =>
  `b/a ${particles} and ${molecules}, ${sky}, a·z = ${number(absorptionDepth, 2)}`;

/** Common practice, no published source: stops under sunny 16 (EV 14.64), from memory of a diving handbook. */
const PRACTICE = [
  [0.1, 1.5],
  [1.8, 2],
  [6, 2.5],
  [9, 3],
  [15, 4],
];
const SUNNY_16 = Math.log2(16 ** 2 * 100);
/** Mean cosine over headings within 60 degrees of straight away from the sun. */
const BEHIND = Math.sin(Math.PI / 3) / (Math.PI / 3);

function exposures() {
  const water = describeByClarity("visibility_m", 15, "blue");
  const { kd_reference_per_m, coastalShare, beam_attenuation_530 } = water;
  const scatteringScale = scatteringScaleForBeam(water, beam_attenuation_530.value_per_m) ?? 1;
  const optics = waterFromKd(kd_reference_per_m, { scatteringScale, coastalShare });
  const below = throughSurface(daylightFromTable(60, 0), 60, 4);
  const kd = kdUnderSun(optics, below.mu0);
  const { sunAngleInWater_deg, directShare } = below;
  return PRACTICE.map(([depth_m, stops]) => {
    const down = multiply(pathTransmittance(kd, depth_m), below.downwelling);
    const geometry = { sunAngleInWater_deg, directShare, depth_m };
    const over = lightAtDepth(geometry, optics, kd, { axis: { cosToSun: BEHIND, upSine: 0 } });
    const lux = (light) => portTransmittance() * illuminance_lx(light);
    return {
      depth_m,
      practice: SUNNY_16 - stops,
      solid: ev100FromDome(lux(multiply(down, over.subject))),
    };
  });
}

export function subjectSection() {
  const points = tracedAndOurs();
  const deep = points.filter(({ field }) => field !== undefined);
  const dome = (cosToSun) =>
    deep.map(({ layer, field, where }) => ({
      ours: domeLight(field, { cosToSun, upSine: 0 }),
      published: ((1 - layer.upwelling) / layer.meanCosine + layer.netTowards * cosToSun) / 2,
      where,
    }));
  const openWater = deep.map(({ layer, field, at, where }) => ({
    ours: openWaterRadiance(field, at),
    published: layer.level.reduce((sum, value, n) => sum + value * (n % 4 === 0 ? 1 : 2), 0) / 8,
    where,
  }));
  const floor = points
    .filter(({ floorUpwelling }) => floorUpwelling !== undefined)
    .map(({ layer, floorUpwelling, where }) => ({ ours: floorUpwelling, published: layer.upwelling, where }));
  const rows = exposures().map(
    ({ depth_m, practice, solid }) =>
      `| ${depth_m} | ${number(practice, 3)} | ${number(solid, 3)} | ${solid >= practice ? "+" : "−"}${number(Math.abs(solid - practice), 2)} |`,
  );
  const markdown = `## 7. A solid subject, a sea floor and open water

Points: the photon tracing of section 6, extended by scattering on molecules and by a matt floor, in seas
that fitted none of the constants (${PHOTONS} photons each). A solid subject is what a dome receptor in its place meters (cardioid,
ISO 2720): half of scalar irradiance and of net irradiance along the axis to the camera, exactly.

${deviationTable([
  ["Dome, sun behind the camera", dome(1)],
  ["Dome, sun beside", dome(0)],
  ["Dome, sun in the picture", dome(-1)],
  ["Upwelling light over a floor of 0.4", floor],
  ["Open water at eye level, mean of all directions", openWater],
])}

Exposure in water of 15 m visibility, blue, clear sky, sun 60° high, EV at ISO 100 behind the port, of a subject at no distance; the page of
the planner has what an answer says at 1 m, and the parts of the loss. Practice: sunny 16 (EV 14.64) less
1.5, 2, 2.5, 3 and 4 stops, common practice from memory of a diving handbook, no published source.

| Depth (m) | Practice | Solid subject, sun behind the camera | Solid against practice (stops) |
| --- | --- | --- | --- |
${rows.join("\n")}

- **Domain:** particles 0.1 to 8 times and molecules up to 0.3 times the absorption, sun 20 to 75° high to overcast, three absorption lengths deep.
- **Weak:** few photons of the tracing pass level, so that open water is known to some 10 % only; a dome's constant lies anywhere from 320 to 540 by the standard, which is three quarters of a stop.
`;
  return { markdown, plots: {} };
}
