// Absorption and scattering that follow from diffuse attenuation, against what was measured.
import { JERLOV_TYPES, jerlovKd } from "#model/water/jerlov-1976";
import { chlorophyllFromKd_mg_m3 } from "#model/water/particles-case-1";
import { PURE_WATER_SCATTERING_PER_M } from "#model/water/pure-water";
import { waterFromKd } from "#model/water/water-optics";
import { readCsv } from "../read-csv.mjs";
import { svgOf } from "./chart.mjs";
import { COLOURS } from "./chart-series.mjs";
import { deviation, deviationTable, markdownTable, number } from "./numbers.mjs";
import { lineOf, SPARSE_WAVELENGTH_AXIS, valueAt } from "./spectra.mjs";

const measured = readCsv("williamson_hollins_2022_measured_iop")
  .filter((row) => Number(row.wavelength_nm) <= 710)
  .map((row) => ({
    type: row.water_type,
    quantity: row.quantity,
    nm: Number(row.wavelength_nm),
    value: Number(row.value_per_m),
    sd: row.std_dev_per_m === "" ? undefined : Number(row.std_dev_per_m),
  }));
const TYPES = JERLOV_TYPES.filter((type) => measured.some((m) => m.type === type));
const QUANTITIES = {
  a: { field: "absorption_per_m", name: "absorption a", colour: COLOURS.blue, shape: "circle" },
  b: { field: "scattering_per_m", name: "scattering b", colour: COLOURS.vermilion, shape: "square" },
};
const pointsOf = (type, quantity) => measured.filter((m) => m.type === type && m.quantity === quantity);

const plot = () =>
  svgOf({
    title: "Absorption and scattering against measurements",
    describe:
      "One panel for each type from IA to 7C. Lines: absorption and scattering of the model. Markers with bars: means and standard deviations of measurements.",
    columns: 4,
    panelWidth: 190,
    panelHeight: 190,
    xLabel: "Wavelength (nm)",
    yLabel: "Absorption, scattering (1/m)",
    x: SPARSE_WAVELENGTH_AXIS,
    y: { domain: [0.01, 5], ticks: [0.01, 0.03, 0.1, 0.3, 1, 3], log: true },
    legend: Object.values(QUANTITIES).flatMap(({ name, colour, shape }) => [
      { kind: "line", colour, label: `${name}, model` },
      { kind: "points", colour, shape, label: "measured, ± 1 SD" },
    ]),
    panels: TYPES.map((type) => {
      const water = waterFromKd(jerlovKd(type));
      return {
        title: `Type ${type}`,
        series: Object.entries(QUANTITIES).flatMap(([quantity, { field, colour, shape }]) => [
          { kind: "line", colour, points: lineOf(water[field], 380, 710) },
          {
            kind: "points",
            colour,
            shape,
            points: pointsOf(type, quantity).map(({ nm, value, sd }) =>
              sd === undefined ? [nm, value] : [nm, value, value - sd, value + sd],
            ),
          },
        ]),
      };
    }),
  });

export function scatteringSection() {
  const compared = Object.entries(QUANTITIES).flatMap(([quantity, { field, name }]) =>
    TYPES.flatMap((type) => {
      const water = waterFromKd(jerlovKd(type));
      return pointsOf(type, quantity).map(({ nm, value, sd }) => ({
        quantity,
        sd,
        ours: valueAt(water[field], nm),
        published: value,
        where: `${name}, ${type}, ${nm} nm`,
      }));
    }),
  );
  const of = (quantity) => compared.filter((pair) => pair.quantity === quantity);
  const within = (pairs, n) => {
    const withSd = pairs.filter(({ sd }) => sd !== undefined);
    const hit = withSd.filter(({ ours, published, sd }) => Math.abs(ours - published) <= n * sd);
    return `${hit.length} of ${withSd.length}`;
  };
  const ratioAt = (type) =>
    pointsOf(type, "b").find(({ nm }) => nm === 555).value /
    valueAt(waterFromKd(jerlovKd(type)).scattering_per_m, 555);
  const markdown = `## 2. Absorption and scattering

Source: Williamson & Hollins 2022, *Applied Optics* 61, 9951: absorption and scattering measured in waters of the types IA to 7C. Points:
means of campaigns with the standard deviation between them (IA and 7C rest on one campaign each and have none).
The model gets scattering of the open sea (I to III) from the chlorophyll that Kd at 490 nm tells (Morel & Maritorena 2001, *Journal of
Geophysical Research* 106, 7163), that of the coast (1C to 9C) from Kd at 555 nm, and absorption from Kd and scattering by Kirk 1984.

![Eight panels for the types IA to 7C. The model's scattering runs within the bars of most points, below those of IA in green and red, above those of II and III and below those of 7C. Its absorption follows the points in green and red; in violet and blue it lies above them for the coastal types and below them for IB and II.](absorption-scattering.svg)

${deviationTable([
  ["Absorption a", of("a")],
  ["Scattering b", of("b")],
  ...TYPES.map((type) => [
    `Type ${type}, both`,
    compared.filter(({ where }) => where.includes(`, ${type},`)),
  ]),
])}

${markdownTable(
  [
    "Type",
    "Chlorophyll from Kd(490) (mg/m³)",
    "b at 550 nm, Morel & Maritorena 2001 (1/m)",
    "b at 555 nm measured (1/m)",
    "b at 550 nm of the model (1/m)",
  ],
  JERLOV_TYPES.map((type) => {
    const chlorophyll = chlorophyllFromKd_mg_m3(jerlovKd(type));
    const sea = valueAt(PURE_WATER_SCATTERING_PER_M, 550);
    const published = TYPES.includes(type) ? pointsOf(type, "b").find(({ nm }) => nm === 555) : undefined;
    return [
      type,
      type.endsWith("C") ? "not case 1" : number(chlorophyll, 2),
      type.endsWith("C") ? "" : number(0.416 * chlorophyll ** 0.766 + sea, 3),
      published ? number(published.value, 3) : "none",
      number(valueAt(waterFromKd(jerlovKd(type)).scattering_per_m, 550), 3),
    ];
  }),
)}

Within one standard deviation of the mean: absorption ${within(of("a"), 1)} points, scattering ${within(of("b"), 1)}; within two: ${within(of("a"), 2)} and ${within(of("b"), 2)}.

- **Domain:** open sea whose particles are its plankton's, and coast from 1C to 7C; 9C extrapolates.
- **Weak:** the relation of the coast was fitted to these very points, so its agreement is a residual and no independent proof; that of the open sea was not. Both sources do not agree about II and III: measured scattering there is ${number(ratioAt("II"), 2)} and ${number(ratioAt("III"), 2)} of what chlorophyll tells, and at the blue end of III less, since its slope is flatter than 1/λ. Scattering is uncertain by a factor of two either way (standard deviation of its logarithm 0.7), and the model carries that. Absorption was not fitted. It is too high in the violet of coastal types (largest: ${number(deviation(of("a")).largest, 2)} times), because the table of Jerlov has more of it than these campaigns met, and too low in the blue of IB and II, where the measured absorption comes near the Kd of the table itself or exceeds it.
`;
  return { markdown, plots: { "absorption-scattering.svg": plot() } };
}
