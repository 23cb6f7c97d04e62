// Light on an upright card: the closed form against photon tracing.
import { lightField } from "#model/imaging/light-field";
import { traceSea } from "#model/imaging/radiance.test-support";
import { cardLight } from "#model/imaging/subject-light";
import { refractedAngle_deg } from "#model/surface/snell-fresnel";
import { kirkKd } from "#model/water/kirk-1984";
import { svgOf } from "./chart.mjs";
import { COLOURS } from "./chart-series.mjs";
import { deviationTable, number, rms } from "./numbers.mjs";

const PHOTONS = 6000;
const TO_ABSORPTION_DEPTH = 3;
const SKY_MU = 0.86;
const SEAS = [0.3, 3, 8].flatMap((scatteringOverAbsorption) =>
  [
    { sunZenith_deg: 15, directShare: 0.85, sky: "sun 75° high" },
    { sunZenith_deg: 60, directShare: 0.7, sky: "sun 30° high" },
    { sunZenith_deg: 40, directShare: 0, sky: "overcast" },
  ].map((light) => ({ scatteringOverAbsorption, ...light })),
);
const FACINGS = {
  camera: {
    name: "any direction (mean)",
    colour: COLOURS.blue,
    shape: "circle",
    seen: ({ upright }) => upright,
  },
  sun: {
    name: "towards the sun",
    colour: COLOURS.vermilion,
    shape: "square",
    seen: ({ uprightAt }) => uprightAt[0],
  },
};

/** Absorption is 1 per m, so that metres are absorption depths. */
function modelAt({ scatteringOverAbsorption: b, sunZenith_deg, directShare }, depth_m, subjectFacing) {
  const sunAngleInWater_deg = refractedAngle_deg(sunZenith_deg);
  const mu0 =
    1 / (directShare / Math.cos((sunAngleInWater_deg * Math.PI) / 180) + (1 - directShare) / SKY_MU);
  const water = { absorption_per_m: 1, particles_per_m: b, molecules_per_m: 0, kd_per_m: kirkKd(1, b, mu0) };
  const field = lightField({ sunAngleInWater_deg, directShare, depth_m }, water);
  const axis = { upSine: 0, ...(subjectFacing === "sun" ? { cosToSun: 1 } : {}) };
  return cardLight(field, Math.tan((sunAngleInWater_deg * Math.PI) / 180), axis);
}
const curve = Array.from({ length: 61 }, (_, n) => 3 * (n / 60) ** 2);

export function uprightSection() {
  const traced = SEAS.map((sea, n) => ({
    sea,
    layers: traceSea(sea, TO_ABSORPTION_DEPTH, PHOTONS, 500 + n),
  }));
  const pairs = (facing, keep = () => true) =>
    traced
      .filter(({ sea }) => keep(sea))
      .flatMap(({ sea, layers }) =>
        layers.map((layer) => ({
          ours: modelAt(sea, layer.absorptionDepth, facing),
          published: FACINGS[facing].seen(layer),
          where: `b/a ${sea.scatteringOverAbsorption}, ${sea.sky}, a·z = ${number(layer.absorptionDepth, 2)}`,
        })),
      );
  const facingsOf = ({ directShare }) => (directShare === 0 ? ["camera"] : ["camera", "sun"]);
  const sunny = ({ directShare }) => directShare > 0;
  const svg = svgOf({
    title: "Light on an upright subject",
    describe:
      "Share of the downwelling light that falls on an upright subject over absorption depth, in nine seas: lines of the model and markers of photon tracing, for the mean of all directions and towards the sun.",
    columns: 3,
    panelWidth: 220,
    panelHeight: 150,
    xLabel: "Absorption depth a·z",
    yLabel: "Share of downwelling light",
    x: { domain: [0, 3], ticks: [0, 1, 2, 3] },
    y: { domain: [0, 1], ticks: [0, 0.25, 0.5, 0.75, 1] },
    legend: Object.values(FACINGS).flatMap(({ name, colour, shape }) => [
      { kind: "line", colour, label: `${name}, model` },
      { kind: "points", colour, shape, label: "traced" },
    ]),
    panels: traced.map(({ sea, layers }) => ({
      title: `b/a = ${sea.scatteringOverAbsorption}, ${sea.sky}`,
      series: facingsOf(sea).flatMap((facing) => [
        {
          kind: "line",
          colour: FACINGS[facing].colour,
          points: curve.map((d) => [d, modelAt(sea, d, facing)]),
        },
        {
          kind: "points",
          colour: FACINGS[facing].colour,
          shape: FACINGS[facing].shape,
          points: layers.map((layer) => [layer.absorptionDepth, FACINGS[facing].seen(layer)]),
        },
      ]),
    })),
  });
  const spread = (facing, keep) =>
    number(100 * rms(pairs(facing, keep).map(({ ours, published }) => Math.log(ours / published))), 2);
  const markdown = `## 6. Light on an upright card

No published table of this ratio was found. Points: a seeded photon-tracing simulation kept beside the tests (flat surface, phase function
of Fournier & Jonasz 1999, backscattered share 0.018; ${PHOTONS} photons a sea), which itself is checked against Gershun's law, Kirk 1984 and
the exact value under an even sky. The seas here are not those to which the model's constants were fitted, but from the same ranges.

![Nine panels: b/a of 0.3, 3 and 8 by three skies. The model's lines follow the traced markers; a subject towards the sun gets about two to three times the mean near the surface, and the difference fades with depth.](upright.svg)

${deviationTable([
  ["Any direction (mean)", pairs("camera")],
  ["Towards the sun", pairs("sun", sunny)],
])}

Root mean square of ln: ${spread("camera")} % for the mean of all directions, ${spread("sun", sunny)} % towards the sun.

- **Domain:** scattering 0.3 to 8 times absorption, sun 20 to 80° high, clear to overcast, three absorption lengths deep.
- **Weak:** deep in strongly scattering water the traced values are noisy, because few photons get that far.
`;
  return { markdown, plots: { "upright.svg": svg } };
}
