// How light fades with depth: quanta for types I to III, and energy against Paulson & Simpson 1977.
import { BIRD_RIORDAN_1986_WHOLE } from "#model/data/bird-riordan-1986-whole";
import { clearSkyBands, MARITIME_ATMOSPHERE } from "#model/daylight/clear-sky-bird-riordan-1986";
import { surfaceDaylight } from "#model/daylight/surface-daylight";
import { interpolate } from "#model/spectrum/resample";
import { surfaceReflectance } from "#model/surface/gregg-carder-1990";
import { throughSurface } from "#model/surface/underwater-daylight";
import { JERLOV_TYPES, jerlovKd } from "#model/water/jerlov-1976";
import { kdUnderSun, waterFromKd } from "#model/water/water-optics";
import { readCsv } from "../read-csv.mjs";
import { svgOf } from "./chart.mjs";
import { COLOURS } from "./chart-series.mjs";
import { deviationTable, markdownTable, number, percent, trapezoid } from "./numbers.mjs";
import { lineOf } from "./spectra.mjs";

const TYPES = JERLOV_TYPES.slice(0, 5);
const DEPTHS_M = [0, 1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100];
const SUN_DEG = 60;
const WIND_M_S = 4;
const STEP_NM = 5;
/** Greatest mean difference of Kd between the editions of 1968 and 1976. */
const EDITIONS_DIFFER_BY = 0.15;
const below = throughSurface(surfaceDaylight(SUN_DEG, 0), SUN_DEG, WIND_M_S);
const sky = clearSkyBands(90 - SUN_DEG, MARITIME_ATMOSPHERE, BIRD_RIORDAN_1986_WHOLE);
const reflected = surfaceReflectance(90 - SUN_DEG, WIND_M_S);
const throughFlat = sky.wavelength_nm.map(
  (_, i) =>
    (1 - reflected.direct) * sky.direct_normal[i] * Math.sin((SUN_DEG * Math.PI) / 180) +
    (1 - reflected.diffuse) * sky.diffuse_horizontal[i],
);
const jerlov = readCsv("jerlov_1976_kd");

/** Spectrum just below the surface and attenuation from 350 to 780 nm: the model's from 380 nm, below it the table in straight lines. */
function columnOf(type) {
  const water = waterFromKd(jerlovKd(type));
  const kd = kdUnderSun(water, below.mu0);
  const underSun = kd[0] / water.kd_reference_per_m[0];
  const table = jerlov.filter((row) => row.water_type === type);
  const [x, y] = ["wavelength_nm", "Kd_per_m"].map((key) => table.map((row) => Number(row[key])));
  const ultraviolet = [350, 355, 360, 365, 370, 375].map((nm) => ({
    nm,
    surface: interpolate(sky.wavelength_nm, throughFlat, nm),
    kd: interpolate(x, y, nm) * underSun,
  }));
  const visible = lineOf(kd).map(([nm, k], i) => ({ nm, surface: below.downwelling[i], kd: k }));
  return [...ultraviolet, ...visible];
}

/** Irradiance or quanta left at a depth between two wavelengths, in one arbitrary unit. */
const left = (column, depth_m, [from, to], weight) =>
  column
    .filter(({ nm }) => nm >= from && nm <= to)
    .map(({ nm, surface, kd }) => surface * Math.exp(-kd * depth_m) * weight(nm))
    .reduce((sum, v, i, all) => sum + (i === 0 || i === all.length - 1 ? v / 2 : v) * STEP_NM, 0);
const quanta = (nm) => nm;
const energy = () => 1;
const columns = Object.fromEntries(TYPES.map((type) => [type, columnOf(type)]));
const percentQuanta = (type, depth_m, band) =>
  (100 * left(columns[type], depth_m, band, quanta)) / left(columns[type], 0, band, quanta);

/** All sunlight just below the surface, W/m²: beyond the model's grid it is gone within metres, but counts at the top. */
const wholeSun = trapezoid(sky.wavelength_nm, throughFlat);
const percentEnergy = (type, depth_m) => (100 * left(columns[type], depth_m, [350, 780], energy)) / wholeSun;
/**
 * Paulson & Simpson 1977, Journal of Physical Oceanography 7, 952, Table 2: share R with length zeta1 and the rest with zeta2,
 * fitted to Jerlov's irradiance per type. Digits as in public ocean models.
 */
const DOUBLE_EXPONENTIAL = {
  I: [0.58, 0.35, 23],
  IA: [0.62, 0.6, 20],
  IB: [0.67, 1, 17],
  II: [0.77, 1.5, 14],
  III: [0.78, 1.4, 7.9],
};
const paulsonSimpson = (type, depth_m) => {
  const [share, first_m, second_m] = DOUBLE_EXPONENTIAL[type];
  return 100 * (share * Math.exp(-depth_m / first_m) + (1 - share) * Math.exp(-depth_m / second_m));
};

const STYLE = Object.fromEntries(
  [
    [COLOURS.blue, "circle"],
    [COLOURS.sky, "square"],
    [COLOURS.green, "triangle"],
    [COLOURS.orange, "diamond"],
    [COLOURS.vermilion, "star"],
  ].map(([colour, shape], k) => [TYPES[k], { colour, shape }]),
);
const curve = Array.from({ length: 101 }, (_, m) => m);
const depthChart = ({ title, describe, xLabel, deepest_m, legend, seriesOf }) =>
  svgOf({
    title,
    describe,
    columns: 1,
    panelWidth: 560,
    panelHeight: 380,
    xLabel,
    yLabel: "Depth (m)",
    x: { domain: [LEAST_PERCENT, 120], ticks: [0.01, 0.1, 1, 10, 100], log: true },
    y: {
      domain: [0, deepest_m],
      ticks: [0, 20, 40, 60, 80, 100].filter((m) => m <= deepest_m),
      downward: true,
    },
    legend: [...legend, ...TYPES.map((type) => ({ kind: "points", ...STYLE[type], label: `type ${type}` }))],
    panels: [{ series: TYPES.flatMap(seriesOf) }],
  });

const PAR = [400, 700];
const WIDE = [350, 700];
const LEAST_PERCENT = 0.005;
const isOnChart = ([value]) => value >= LEAST_PERCENT;

export function quantaSection() {
  const quantaPlot = depthChart({
    title: "Quanta left with depth, 400 to 700 nm",
    describe:
      "Percent of the quanta just below the surface, on a logarithmic axis, over depth to 100 m for the types I, IA, IB, II and III: the clearest keeps most.",
    xLabel: "Quanta left (percent of just below the surface)",
    deepest_m: 103,
    legend: [{ kind: "line", colour: COLOURS.black, label: "model" }],
    seriesOf: (type) => [
      {
        kind: "line",
        colour: STYLE[type].colour,
        points: curve.map((m) => [percentQuanta(type, m, PAR), m]),
      },
      {
        kind: "points",
        ...STYLE[type],
        points: DEPTHS_M.map((m) => [percentQuanta(type, m, PAR), m]).filter(isOnChart),
      },
    ],
  });
  const COMPARED_M = [5, 10, 15, 20, 25, 30, 40, 50];
  const energyPlot = depthChart({
    title: "Energy left with depth, against Paulson & Simpson 1977",
    describe:
      "Percent of all sunlight just below the surface over depth: lines of the model and markers of the published double exponential for the types I to III.",
    xLabel: "Energy left (percent of all sunlight just below the surface)",
    deepest_m: 62,
    legend: [
      { kind: "line", colour: COLOURS.black, label: "lines: model, 350 to 780 nm" },
      { kind: "points", colour: COLOURS.black, label: "markers: published" },
    ],
    seriesOf: (type) => [
      { kind: "line", colour: STYLE[type].colour, points: curve.map((m) => [percentEnergy(type, m), m]) },
      {
        kind: "points",
        ...STYLE[type],
        points: COMPARED_M.map((m) => [paulsonSimpson(type, m), m]).filter(isOnChart),
      },
    ],
  });
  const table = (band) =>
    markdownTable(
      ["Depth (m)", ...TYPES.map((type) => `${type} (%)`)],
      DEPTHS_M.map((m) => [m, ...TYPES.map((type) => number(percentQuanta(type, m, band)))]),
    );
  const pairs = (type) =>
    COMPARED_M.map((m) => ({
      ours: percentEnergy(type, m),
      published: paulsonSimpson(type, m),
      where: `${type}, ${m} m`,
    }));
  const markdown = `## 5. Light with depth in the types I to III

How it is computed: clear sky, sun ${SUN_DEG}° high, wind ${WIND_M_S} m/s (path cosine in water ${number(below.mu0)}); the spectrum just below the surface times
exp(−Kd z) per wavelength, Kd from Jerlov 1976 under that sun; quanta are irradiance times wavelength, summed by trapezoid at 5 nm. Percent of
just below the surface.

![Percent of quanta left on a logarithmic axis over depth to 100 m, one curve for each type from I to III. Type I keeps most; type III has one percent left between 30 and 40 m.](quanta.svg)

Quanta from 400 to 700 nm:

${table(PAR)}

Quanta from 350 to 700 nm. The model's grid starts at 380 nm; for 350 to 375 nm the table of Jerlov in straight lines and the clear-sky
bands stand in, here only:

${table(WIDE)}

Energy against a published fit: Paulson & Simpson 1977, *Journal of Physical Oceanography* 7, 952, who describe Jerlov's irradiance of
all sunlight by two exponentials for each type (digits as in public ocean models). The model counts 350 to 780 nm over all sunlight just
below the surface (300 to 4000 nm); above 5 m the infrared that it leaves out still matters, so that the comparison starts there.

![Percent of all sunlight left over depth. The model lies below the published markers of the clearest types near the surface and above those of all types but II at 50 m.](energy.svg)

${deviationTable(TYPES.map((type) => [`Type ${type}, 5 to 50 m`, pairs(type)]))}

Ours against the published fit:

${markdownTable(
  ["Depth (m)", ...TYPES],
  COMPARED_M.map((m) => [
    m,
    ...TYPES.map((type) => percent(percentEnergy(type, m) / paulsonSimpson(type, m))),
  ]),
)}

- **Domain:** a homogeneous sea without a bright bottom. The published fit is a smooth description of a table, made for the edition of 1968, whose types differ from those of 1976 by 4 to 15 % in Kd: at four attenuation lengths the larger of these alone makes ${percent(Math.exp(4 * EDITIONS_DIFFER_BY))}.
- **Weak:** one Kd is used from top to bottom, although light spreads with depth and fades faster than under the surface: at 50 m and beyond expect the model to be too bright. Below about 20 m in the clearest water, red made by inelastic scattering is not in these numbers; it counts for colour and hardly for quanta.
`;
  return { markdown, plots: { "quanta.svg": quantaPlot, "energy.svg": energyPlot } };
}
