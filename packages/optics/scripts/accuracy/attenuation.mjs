// Diffuse attenuation: the model against Jerlov 1976, Austin & Petzold 1986 and Morel & Maritorena 2001.
import { kdFromChlorophyll } from "#model/water/chlorophyll-morel-maritorena-2001";
import { JERLOV_TYPES, jerlovKd } from "#model/water/jerlov-1976";
import { PURE_WATER_ABSORPTION_PER_M } from "#model/water/pure-water";
import { readCsv } from "../read-csv.mjs";
import { svgOf } from "./chart.mjs";
import { COLOURS } from "./chart-series.mjs";
import { deviationTable, number, rms } from "./numbers.mjs";
import { lineOf, SPARSE_WAVELENGTH_AXIS, valueAt, WAVELENGTH_AXIS } from "./spectra.mjs";

const FIRST_NODE_NM = 400;
const KD_AXIS = { domain: [0.015, 4], ticks: [0.02, 0.05, 0.1, 0.2, 0.5, 1, 2], log: true };
/** Room on the left for the names of the types. */
const NAMED_AXIS = { ...WAVELENGTH_AXIS, domain: [358, 710] };
const nodesOf = (rows, type) =>
  rows
    .filter((row) => row.water_type === type && Number(row.wavelength_nm) >= FIRST_NODE_NM)
    .map((row) => [Number(row.wavelength_nm), Number(row.Kd_per_m)]);

const jerlovRows = readCsv("jerlov_1976_kd");
const austinPetzoldRows = readCsv("austin_petzold_1986_kd_types");
const jerlovNodes = Object.fromEntries(JERLOV_TYPES.map((type) => [type, nodesOf(jerlovRows, type)]));
const pairsOf = (spectrum, nodes, name) =>
  nodes.map(([nm, published]) => ({ ours: valueAt(spectrum, nm), published, where: `${name}, ${nm} nm` }));

function againstJerlov() {
  const colours = [COLOURS.blue, COLOURS.sky, COLOURS.green, COLOURS.orange, COLOURS.vermilion];
  const shapes = ["circle", "square", "triangle", "diamond", "star"];
  const rows = [JERLOV_TYPES.slice(0, 5), JERLOV_TYPES.slice(5)];
  const svg = svgOf({
    title: "Diffuse attenuation of the ten water types",
    describe:
      "Lines of the model through the values of Jerlov 1976 for each type; a line leaves its points only in the red, where the table lies below pure water.",
    columns: 2,
    panelWidth: 330,
    panelHeight: 300,
    xLabel: "Wavelength (nm)",
    yLabel: "Diffuse attenuation Kd (1/m)",
    x: NAMED_AXIS,
    y: KD_AXIS,
    legend: [
      { kind: "line", colour: COLOURS.black, label: "model, one line per type" },
      { kind: "points", colour: COLOURS.black, label: "Jerlov 1976, Table XXVII" },
      { kind: "line", dash: "5 4", colour: COLOURS.black, label: "absorption of pure water" },
    ],
    panels: rows.map((types, n) => ({
      title: n === 0 ? "Ocean" : "Coast",
      series: [
        {
          kind: "line",
          dash: "5 4",
          colour: COLOURS.black,
          points: lineOf(PURE_WATER_ABSORPTION_PER_M, 380, 710),
        },
        ...types.flatMap((type, k) => [
          { kind: "line", colour: colours[k], points: lineOf(jerlovKd(type), 380, 710) },
          { kind: "points", colour: colours[k], shape: shapes[k], points: jerlovNodes[type] },
          { kind: "text", at: [380, valueAt(jerlovKd(type), 380)], dx: -4, dy: 4, anchor: "end", text: type },
        ]),
      ],
    })),
  });
  const raised = JERLOV_TYPES.flatMap((type) =>
    jerlovNodes[type]
      .filter(([nm, kd]) => kd < valueAt(PURE_WATER_ABSORPTION_PER_M, nm))
      .map(([nm]) => `${type} at ${nm} nm`),
  );
  return { svg, raised };
}

/** Against the other table, whose types carry the same names. */
const sharedTypes = () => [...new Set(austinPetzoldRows.map((row) => row.water_type))];

const austinPetzold = () =>
  svgOf({
    title: "Two published tables of the same types",
    describe:
      "One panel for each shared type: the line of the model, which rests on Jerlov 1976, and points of Austin & Petzold 1986. They part most in the violet.",
    columns: 3,
    panelWidth: 220,
    panelHeight: 170,
    xLabel: "Wavelength (nm)",
    yLabel: "Diffuse attenuation Kd (1/m)",
    x: SPARSE_WAVELENGTH_AXIS,
    y: { domain: [0.015, 1], ticks: [0.02, 0.05, 0.1, 0.2, 0.5, 1], log: true },
    legend: [
      { kind: "line", colour: COLOURS.blue, label: "model (Jerlov 1976)" },
      { kind: "points", colour: COLOURS.vermilion, label: "Austin & Petzold 1986, Table VI" },
    ],
    panels: sharedTypes().map((type) => ({
      title: `Type ${type}`,
      series: [
        { kind: "line", colour: COLOURS.blue, points: lineOf(jerlovKd(type), 380, 710) },
        { kind: "points", colour: COLOURS.vermilion, points: nodesOf(austinPetzoldRows, type) },
      ],
    })),
  });

/** The oceanic type whose table lies nearest to a spectrum, by root mean square of ln over its nodes. */
function nearestType(kd) {
  const off = (type) => rms(jerlovNodes[type].map(([nm, value]) => Math.log(valueAt(kd, nm) / value)));
  return JERLOV_TYPES.slice(0, 5).reduce((best, type) => (off(type) < off(best) ? type : best));
}

function chlorophyll() {
  const cases = [0.05, 0.3, 2].map((mg_m3) => ({ mg_m3, kd: kdFromChlorophyll(mg_m3) }));
  const svg = svgOf({
    title: "Chlorophyll and the nearest water type",
    describe:
      "Three panels for 0.05, 0.3 and 2 mg of chlorophyll per cubic metre: the line of the model after Morel & Maritorena 2001 and points of the nearest type of Jerlov 1976.",
    columns: 3,
    panelWidth: 220,
    panelHeight: 190,
    xLabel: "Wavelength (nm)",
    yLabel: "Diffuse attenuation Kd (1/m)",
    x: SPARSE_WAVELENGTH_AXIS,
    y: { domain: [0.015, 1], ticks: [0.02, 0.05, 0.1, 0.2, 0.5, 1], log: true },
    legend: [
      { kind: "line", colour: COLOURS.blue, label: "model (Morel & Maritorena 2001)" },
      { kind: "points", colour: COLOURS.vermilion, label: "nearest type of Jerlov 1976" },
    ],
    panels: cases.map(({ mg_m3, kd }) => ({
      title: `${mg_m3} mg/m³, type ${nearestType(kd)}`,
      series: [
        { kind: "line", colour: COLOURS.blue, points: lineOf(kd, 380, 710) },
        { kind: "points", colour: COLOURS.vermilion, points: jerlovNodes[nearestType(kd)] },
      ],
    })),
  });
  const comparisons = cases.map(({ mg_m3, kd }) => {
    const type = nearestType(kd);
    return [`${mg_m3} mg/m³ against type ${type}`, pairsOf(kd, jerlovNodes[type], type)];
  });
  const formula = readCsv("morel_maritorena_2001_kd").filter(
    (row) => Number(row.wavelength_nm) >= FIRST_NODE_NM,
  );
  const own = cases.flatMap(({ mg_m3, kd }) =>
    formula.map((row) => ({
      ours: valueAt(kd, Number(row.wavelength_nm)),
      published: Number(row.Kw_per_m) + Number(row.chi) * mg_m3 ** Number(row.e),
      where: `${mg_m3} mg/m³, ${row.wavelength_nm} nm`,
    })),
  );
  return { svg, comparisons, own };
}

export function attenuationSection() {
  const jerlov = againstJerlov();
  const chl = chlorophyll();
  const tableI = deviationTable([
    [
      "Model against Jerlov 1976",
      JERLOV_TYPES.flatMap((type) => pairsOf(jerlovKd(type), jerlovNodes[type], type)),
    ],
    ...sharedTypes().map((type) => [
      `Type ${type} against Austin & Petzold 1986`,
      pairsOf(jerlovKd(type), nodesOf(austinPetzoldRows, type), type),
    ]),
    ["Chlorophyll against its own formula, Table 2", chl.own],
    ...chl.comparisons,
  ]);
  const step = (type) =>
    `${type} from ${number(valueAt(jerlovKd(type), 700))} to ${number(valueAt(jerlovKd(type), 705))} per metre`;
  const violet = sharedTypes().map((type) => {
    const published = nodesOf(austinPetzoldRows, type).find(([nm]) => nm === FIRST_NODE_NM)[1];
    return `${type} ${number(valueAt(jerlovKd(type), FIRST_NODE_NM) / published, 2)}`;
  });
  const markdown = `## 1. Diffuse attenuation

Source: Jerlov 1976, *Marine Optics*, 2nd edition, Table XXVII. Points: its values at every 25 nm from 400 nm; the values at 350 and
375 nm lie outside the model's grid. The model subtracts pure water, interpolates what remains and adds pure water back, so it must pass
through every point that does not lie below pure water.

![Two panels, ocean and coast, Kd from 0.015 to 4 per metre over wavelength. The lines run through the points of all ten types, except at the red end, where clear types lie below the dashed line of pure water and are raised to it. Beyond 700 nm the lines of the coastal types drop to pure water.](kd-jerlov.svg)

![Six panels, one for each of the types I to 1C. Model lines and the points of Austin and Petzold 1986 agree from green to red and part in the violet.](kd-austin-petzold.svg)

![Three panels for chlorophyll of 0.05, 0.3 and 2 milligrams per cubic metre, each with the nearest Jerlov type. At 0.05 and 0.3 the model lies below the points in violet and blue, at 2 above them; from 550 nm on they agree.](kd-chlorophyll.svg)

${tableI}

- **Domain:** 380 to 780 nm. No table goes beyond 700 nm; there the model has pure water alone.
- **Raised to pure water** (the table lies below the absorption of Pope & Fry 1997): ${jerlov.raised.join(", ")}. The largest difference from Jerlov in the table above is one of these; everywhere else the model is the table.
- **Weak:** nothing but pure water is left beyond 700 nm, so that Kd of turbid types drops there at a step (${step("7C")}, ${step("9C")}); little of what a camera or an eye sees lies beyond. Between two tables that carry the same type names, attenuation at 400 nm differs by these factors (model over Austin & Petzold): ${violet.join(", ")}. A chlorophyll concentration and a type are different scales: that the nearest type is off says how far a type can be from a real water of that clarity, and the model carries it as the spread of a spectral shape.
`;
  return {
    markdown,
    plots: {
      "kd-jerlov.svg": jerlov.svg,
      "kd-austin-petzold.svg": austinPetzold(),
      "kd-chlorophyll.svg": chl.svg,
    },
  };
}
