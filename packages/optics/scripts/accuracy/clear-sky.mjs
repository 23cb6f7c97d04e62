// The clear sky of Bird & Riordan 1986 against its published run, Kasten & Czeplak 1980 and ASTM G173.
import { BIRD_RIORDAN_1986_WHOLE } from "#model/data/bird-riordan-1986-whole";
import { clearSkyBands, MARITIME_ATMOSPHERE } from "#model/daylight/clear-sky-bird-riordan-1986";
import { kastenCzeplakClearSky_W_m2 } from "#model/daylight/kasten-czeplak-1980";
import { readCsv } from "../read-csv.mjs";
import { svgOf } from "./chart.mjs";
import { COLOURS } from "./chart-series.mjs";
import { deviationTable, percent, trapezoid } from "./numbers.mjs";

const RADIAN = Math.PI / 180;
const EXAMPLE_ZENITH_DEG = 47.912086;
/** Inputs of the published run; the sun's distance on day 75 after Spencer 1971. */
const EXAMPLE_AIR = {
  pressure_Pa: 101300,
  ozone_atm_cm: 0.344,
  water_vapour_cm: 1.42,
  aerosol_optical_depth_500nm: 0.1,
  angstrom_exponent: 1.14,
  ground_albedo: 0.2,
  sun_distance_factor: 1.0108216,
};
/** The standard's own atmosphere. */
const G173_ZENITH_DEG = 48.19;
const G173_AIR = {
  pressure_Pa: 101325,
  ozone_atm_cm: 0.34378,
  water_vapour_cm: 1.4164,
  aerosol_optical_depth_500nm: 0.084,
  angstrom_exponent: 1.14,
  ground_albedo: 0.1,
  sun_distance_factor: 1,
};

const PARTS = [
  { key: "global_horizontal", name: "global", colour: COLOURS.black, shape: "circle" },
  { key: "direct_normal", name: "direct, facing the sun", colour: COLOURS.vermilion, shape: "square" },
  { key: "diffuse_horizontal", name: "diffuse", colour: COLOURS.blue, shape: "triangle" },
];
const example = readCsv("spctrl2_worked_example");

function withGlobal(zenith, air) {
  const bands = clearSkyBands(zenith, air, BIRD_RIORDAN_1986_WHOLE);
  const cos = Math.cos(zenith * RADIAN);
  return {
    ...bands,
    global_horizontal: bands.diffuse_horizontal.map((d, i) => d + bands.direct_normal[i] * cos),
  };
}
const replay = withGlobal(EXAMPLE_ZENITH_DEG, EXAMPLE_AIR);

const replayPlot = () =>
  svgOf({
    title: "Clear-sky spectrum of a published run",
    describe:
      "Global, direct and diffuse spectral irradiance from 300 to 1800 nm: lines of the model through the published points of all bands.",
    columns: 1,
    panelWidth: 600,
    panelHeight: 290,
    xLabel: "Wavelength (nm)",
    yLabel: "Spectral irradiance (W/m²/nm)",
    x: { domain: [290, 1810], ticks: [400, 600, 800, 1000, 1200, 1400, 1600, 1800] },
    y: { domain: [0, 1.6], ticks: [0, 0.4, 0.8, 1.2, 1.6] },
    legend: PARTS.flatMap(({ name, colour, shape }) => [
      { kind: "line", colour, label: `${name}, model` },
      { kind: "points", colour, shape, label: "published" },
    ]),
    panels: [
      {
        series: PARTS.flatMap(({ key, colour, shape }) => {
          const shown = replay.wavelength_nm.map((nm, i) => ({ nm, i })).filter(({ nm }) => nm <= 1800);
          return [
            { kind: "line", colour, points: shown.map(({ nm, i }) => [nm, replay[key][i]]) },
            {
              kind: "points",
              colour,
              shape,
              points: shown.map(({ nm, i }) => [nm, Number(example[i][`${key}_W_m2_nm`])]),
            },
          ];
        }),
      },
    ],
  });

/** Integral over 300 to 4000 nm under clean sea air. */
function global_W_m2(elevation_deg) {
  const sky = withGlobal(90 - elevation_deg, MARITIME_ATMOSPHERE);
  return trapezoid(sky.wavelength_nm, sky.global_horizontal);
}
const elevations = Array.from({ length: 17 }, (_, n) => 10 + 5 * n);
const SCATTER = 0.3;

const elevationPlot = () =>
  svgOf({
    title: "Clear-sky global irradiance",
    describe:
      "Irradiance on the level over the sun's elevation from 10 to 90 degrees: the model's line runs somewhat above the formula of Kasten & Czeplak 1980, inside its band of 30 per cent.",
    columns: 1,
    panelWidth: 560,
    panelHeight: 280,
    xLabel: "Sun elevation (degrees)",
    yLabel: "Global irradiance (W/m²)",
    x: { domain: [8, 92], ticks: [10, 20, 30, 40, 50, 60, 70, 80, 90] },
    y: { domain: [0, 1200], ticks: [0, 200, 400, 600, 800, 1000, 1200] },
    legend: [
      { kind: "line", colour: COLOURS.blue, label: "model, 300 to 4000 nm" },
      { kind: "points", colour: COLOURS.vermilion, label: "Kasten & Czeplak 1980" },
      { kind: "band", colour: COLOURS.vermilion, label: "its scatter, ± 30 %" },
    ],
    panels: [
      {
        series: [
          {
            kind: "band",
            colour: COLOURS.vermilion,
            points: elevations.map((h) => {
              const value = kastenCzeplakClearSky_W_m2(h);
              return [h, value * (1 - SCATTER), value * (1 + SCATTER)];
            }),
          },
          { kind: "line", colour: COLOURS.blue, points: elevations.map((h) => [h, global_W_m2(h)]) },
          {
            kind: "points",
            colour: COLOURS.vermilion,
            points: elevations.map((h) => [h, kastenCzeplakClearSky_W_m2(h)]),
          },
        ],
      },
    ],
  });

const standard = readCsv("astm_g173_03").map((row) => [
  Number(row.wavelength_nm),
  Number(row.direct_circumsolar_W_m2_nm),
]);
/** Mean of the standard over 5 nm on either side: the model's bands are about 10 nm wide. */
function standardAround(nm) {
  const inside = standard.filter(([at]) => Math.abs(at - nm) <= 5);
  return trapezoid(...[0, 1].map((k) => inside.map((p) => p[k]))) / 10;
}
const g173 = clearSkyBands(G173_ZENITH_DEG, G173_AIR);
const g173Points = g173.wavelength_nm
  .map((nm, i) => ({ nm, ours: g173.direct_normal[i] }))
  .filter(({ nm }) => nm >= 380 && nm <= 780)
  .map(({ nm, ours }) => ({ nm, ours, published: standardAround(nm), where: `${nm} nm` }));

const g173Plot = () =>
  svgOf({
    title: "Direct sun, standard atmosphere",
    describe:
      "Direct irradiance on a surface that faces the sun, 380 to 780 nm: the model's bands and the means of the standard spectrum over them.",
    columns: 1,
    panelWidth: 560,
    panelHeight: 260,
    xLabel: "Wavelength (nm)",
    yLabel: "Spectral irradiance (W/m²/nm)",
    x: { domain: [375, 785], ticks: [400, 450, 500, 550, 600, 650, 700, 750] },
    y: { domain: [0, 1.6], ticks: [0, 0.4, 0.8, 1.2, 1.6] },
    legend: [
      { kind: "line", colour: COLOURS.blue, label: "model, bands of Bird & Riordan 1986" },
      { kind: "points", colour: COLOURS.vermilion, label: "ASTM G173-03, means over 10 nm" },
    ],
    panels: [
      {
        series: [
          { kind: "line", colour: COLOURS.blue, points: g173Points.map(({ nm, ours }) => [nm, ours]) },
          {
            kind: "points",
            colour: COLOURS.vermilion,
            points: g173Points.map(({ nm, published }) => [nm, published]),
          },
        ],
      },
    ],
  });

export function clearSkySection() {
  const replayed = PARTS.flatMap(({ key, name }) =>
    example.map((row, i) => ({
      ours: replay[key][i],
      published: Number(row[`${key}_W_m2_nm`]),
      where: `${name}, ${row.wavelength_nm} nm`,
    })),
  );
  const totals = elevations.map((h) => ({
    ours: global_W_m2(h),
    published: kastenCzeplakClearSky_W_m2(h),
    where: `sun ${h}° high`,
  }));
  const nm = g173Points.map((p) => p.nm);
  const energy = ["ours", "published"].map((key) =>
    trapezoid(
      nm,
      g173Points.map((p) => p[key]),
    ),
  );
  const markdown = `## 4. Clear sky

Sources: Bird & Riordan 1986, SERI/TR-215-2436, and a published run of its program (sun zenith 47.9°, all 122 bands); Kasten & Czeplak
1980, *Solar Energy* 24, 177 (910 sin h − 30 W/m², measured over Hamburg); ASTM G173-03.

![Global, direct and diffuse irradiance over wavelength. The lines of the model run through the published markers of every band.](clear-sky-spectrum.svg)

![Global irradiance rising with the sun's elevation from 10 to 90 degrees. The model lies above the formula of Kasten and Czeplak, inside its 30 per cent band.](clear-sky-elevation.svg)

![Direct irradiance from 380 to 780 nm. The model's line follows the means of the standard spectrum.](clear-sky-g173.svg)

${deviationTable([
  ["Published run, three parts of 122 bands", replayed],
  ["Global irradiance against Kasten & Czeplak 1980, from 10°", totals],
  ["The same from 20°", totals.slice(2)],
  ["Direct spectrum against ASTM G173-03, 380 to 780 nm", g173Points],
])}

Over 380 to 780 nm as a whole the direct beam differs from ASTM G173-03 by ${percent(energy[0] / energy[1])}.

- **Domain:** cloudless, sun 10 to 90° high. Kasten & Czeplak's formula goes to nothing at 2°, so that ratios to it mean little for a low sun.
- **Weak:** clean sea air is assumed. Haze, dust and humidity of the day are not known; the model carries about 10 % for level. The formula comes from the air over a city, so a clean sea sky has to lie above it. The greatest differences from the standard spectrum sit in the narrow bands of water vapour near 725 nm and of oxygen near 760 nm, which the model knows at a few wavelengths only.
`;
  return {
    markdown,
    plots: {
      "clear-sky-spectrum.svg": replayPlot(),
      "clear-sky-elevation.svg": elevationPlot(),
      "clear-sky-g173.svg": g173Plot(),
    },
  };
}
