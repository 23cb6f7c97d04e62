// Absorption and scattering that follow from diffuse attenuation, against what was measured.
import { JERLOV_TYPES, jerlovKd } from "#model/water/jerlov-1976";
import { waterFromKd } from "#model/water/water-optics";
import { readCsv } from "../read-csv.mjs";
import { svgOf } from "./chart.mjs";
import { COLOURS } from "./chart-series.mjs";
import { deviation, deviationTable, number } from "./numbers.mjs";
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
  const markdown = `## 2. Absorption and scattering

Source: Williamson & Hollins 2022, *Applied Optics* 61, 9951: absorption and scattering measured in waters of the types IA to 7C. Points:
means of campaigns with the standard deviation between them (IA and 7C rest on one campaign each and have none).
The model gets scattering from Kd at 555 nm and absorption from Kd and scattering by Kirk 1984.

![Eight panels for the types IA to 7C. The model's scattering runs within the bars of most points, above those of type III and below those of 7C. Its absorption follows the points in green and red; in violet and blue it lies above them for the coastal types and below them for IB and II.](absorption-scattering.svg)

${deviationTable([
  ["Absorption a", of("a")],
  ["Scattering b", of("b")],
  ...TYPES.map((type) => [
    `Type ${type}, both`,
    compared.filter(({ where }) => where.includes(`, ${type},`)),
  ]),
])}

Within one standard deviation of the mean: absorption ${within(of("a"), 1)} points, scattering ${within(of("b"), 1)}; within two: ${within(of("a"), 2)} and ${within(of("b"), 2)}.

- **Domain:** waters IA to 7C; I and 9C extrapolate.
- **Weak:** the relation for scattering was fitted to these very points, so its agreement is a residual and no independent proof; scattering is uncertain by a factor of two either way, and the model carries that. Absorption was not fitted. It is too high in the violet of coastal types (largest: ${number(deviation(of("a")).largest, 2)} times), because the table of Jerlov has more of it than these campaigns met, and too low in the blue of IB and II, where the measured absorption comes near the Kd of the table itself or exceeds it.
`;
  return { markdown, plots: { "absorption-scattering.svg": plot() } };
}
