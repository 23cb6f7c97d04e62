// Beam attenuation and visibility against the stations of Petzold 1972.
import { familyKd } from "#model/water/hue-family";
import { JERLOV_TYPES, jerlovKd } from "#model/water/jerlov-1976";
import { kirkKd } from "#model/water/kirk-1984";
import { PURE_WATER_ABSORPTION_PER_M } from "#model/water/pure-water";
import { VISIBILITY_INDEX, visibilityFromBeam_m } from "#model/water/visibility";
import { REFERENCE_MU0, waterFromKd } from "#model/water/water-optics";
import { readCsv } from "../read-csv.mjs";
import { svgOf } from "./chart.mjs";
import { COLOURS } from "./chart-series.mjs";
import { deviationTable, markdownTable, number } from "./numbers.mjs";

/** Hue mix of the water family for what the report calls each station. */
const MIX = { "clear ocean": 0, coastal: 1, "turbid harbour": 1 };

/** The member of the family with this Kd at 530 nm. */
function memberWithKd(kd_530, mix) {
  let low = Math.log(5e-4);
  let high = Math.log(5);
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2;
    if (familyKd(Math.exp(middle), mix)[VISIBILITY_INDEX] < kd_530) low = middle;
    else high = middle;
  }
  return waterFromKd(familyKd(Math.exp((low + high) / 2), mix));
}

const stations = readCsv("petzold_1972_stations_530nm").map((row) => {
  const [a, b, c] = [Number(row.a_per_m), Number(row.b_per_m), Number(row.c_per_m)];
  const kd = kirkKd(a, b, REFERENCE_MU0);
  const model_c = memberWithKd(kd, MIX[row.water]).beam_attenuation_per_m[VISIBILITY_INDEX];
  return { name: `${row.station} (${row.water})`, a, b, c, kd, model_c };
});
const types = JERLOV_TYPES.map((type) => {
  const water = waterFromKd(jerlovKd(type));
  return {
    type,
    kd: water.kd_reference_per_m[VISIBILITY_INDEX],
    visibility_m: visibilityFromBeam_m(water.beam_attenuation_per_m[VISIBILITY_INDEX]),
  };
});

/** The type whose beam attenuation at 530 nm lies nearest to a measured one. */
const nearestByBeam = (c) => {
  const off = ({ visibility_m }) => Math.abs(Math.log(visibility_m / visibilityFromBeam_m(c)));
  return types.reduce((best, type) => (off(type) < off(best) ? type : best)).type;
};
/** Absorption and scattering at 530 nm that Williamson & Hollins 2022 measured in a type, straight between their wavelengths. */
function measuredAt530(type, quantity) {
  const points = readCsv("williamson_hollins_2022_measured_iop")
    .filter((row) => row.water_type === type && row.quantity === quantity)
    .map((row) => [Number(row.wavelength_nm), Number(row.value_per_m)])
    .sort(([p], [q]) => p - q);
  const after = points.findIndex(([nm]) => nm >= 530);
  const [[nm, low], [next_nm, high]] = [points[after - 1], points[after]];
  return low + ((high - low) * (530 - nm)) / (next_nm - nm);
}

/** Coastal waters of two publications, each with the model's scattering at the same Kd. */
const coast = [
  ...stations
    .filter(({ name }) => !name.includes("clear"))
    .map(({ name, a, b, kd, model_c }) => ({ name: `Petzold 1972, ${name}`, a, b, kd, model_c })),
  ...["1C", "3C", "5C", "7C"].map((type) => {
    const [a, b] = [measuredAt530(type, "a"), measuredAt530(type, "b")];
    const kd = kirkKd(a, b, REFERENCE_MU0);
    const model_c = memberWithKd(kd, 1).beam_attenuation_per_m[VISIBILITY_INDEX];
    return { name: `Williamson & Hollins 2022, ${type}`, a, b, kd, model_c };
  }),
].map((water) => {
  const model = memberWithKd(water.kd, 1);
  return { ...water, ln: Math.log(model.scattering_per_m[VISIBILITY_INDEX] / water.b) };
});
const meanOf = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;
const spreadOf = (waters) => Math.sqrt(meanOf(waters.map(({ ln }) => ln * ln)));
const byPetzold = coast.filter(({ name }) => name.startsWith("Petzold"));
const byWilliamson = coast.filter(({ name }) => name.startsWith("Williamson"));

const outside = stations.filter(({ c, model_c }) => model_c > 2 * c).map(({ name }) => name.split(" ")[0]);
const clearest = stations.filter(({ name }) => name.includes("clear"));
const overPureWater = clearest.map(({ a }) => a / PURE_WATER_ABSORPTION_PER_M[VISIBILITY_INDEX]);

const plot = () =>
  svgOf({
    title: "Visibility and diffuse attenuation at 530 nm",
    describe:
      "Visibility falls with diffuse attenuation. A line joins the ten water types of the model, between dashed lines for scattering halved and doubled; markers are the eight stations of Petzold 1972.",
    columns: 1,
    panelWidth: 560,
    panelHeight: 300,
    xLabel: "Diffuse attenuation at 530 nm (1/m)",
    yLabel: "Visibility 4.8/c (m)",
    x: { domain: [0.035, 1], ticks: [0.05, 0.1, 0.2, 0.5, 1], log: true },
    y: { domain: [0.8, 80], ticks: [1, 2, 5, 10, 20, 50], log: true },
    legend: [
      { kind: "points", colour: COLOURS.blue, shape: "square", label: "model, ten types" },
      { kind: "line", dash: "5 4", colour: COLOURS.blue, label: "scattering halved, doubled" },
      { kind: "points", colour: COLOURS.vermilion, label: "Petzold 1972, by station" },
    ],
    panels: [
      {
        series: [
          ...[1, 0.5, 2].map((scatteringScale) => ({
            kind: "line",
            colour: COLOURS.blue,
            dash: scatteringScale === 1 ? undefined : "5 4",
            points: types
              .map(({ type, kd }) => {
                const c = waterFromKd(jerlovKd(type), { scatteringScale }).beam_attenuation_per_m[
                  VISIBILITY_INDEX
                ];
                return [kd, visibilityFromBeam_m(c)];
              })
              .sort((p, q) => p[0] - q[0]),
          })),
          {
            kind: "points",
            shape: "square",
            colour: COLOURS.blue,
            points: types.map((t) => [t.kd, t.visibility_m]),
          },
          ...types.map((t) => ({
            kind: "text",
            at: [t.kd, t.visibility_m],
            ...(t.type === "III" ? { dx: -6, dy: 14, anchor: "end" } : { dx: 7, dy: -4 }),
            text: t.type,
            colour: COLOURS.blue,
          })),
          {
            kind: "points",
            colour: COLOURS.vermilion,
            points: stations.map((s) => [s.kd, visibilityFromBeam_m(s.c)]),
          },
          ...stations.map((s) => ({
            kind: "text",
            at: [s.kd, visibilityFromBeam_m(s.c)],
            dx: 6,
            dy: -6,
            text: s.name.split(" ")[0],
            colour: COLOURS.vermilion,
          })),
        ],
      },
    ],
  });

export function stationsSection() {
  const markdown = `## 3. Beam attenuation and visibility

Source: Petzold 1972, SIO Ref. 72-78: absorption, scattering and beam attenuation at eight stations, 530 nm. Visibility as 4.8/c
(Davies-Colley 1988, *Limnology and Oceanography* 33, 616; Zaneveld & Pegau 2003, *Optics Express* 11, 2997). The stations give no
diffuse attenuation; here it follows from their a and b by Kirk 1984, and the model's c is that of the member of its water family with
the same Kd at 530 nm.

![Visibility over diffuse attenuation, both on logarithmic axes. The model's ten types fall from 52 m to 1.3 m. The clear stations 1 to 3 and the coastal stations 4 and 5 lie above the line and above its dashed bound for half the scattering; the harbour stations 6 and 7 lie inside the bounds above the line, 8 just below it.](visibility.svg)

${markdownTable(
  [
    "Station",
    "a + b (1/m)",
    "c measured (1/m)",
    "c of the model (1/m)",
    "c/Kd measured",
    "c/Kd model",
    "Visibility measured c (m)",
    "Visibility model (m)",
    "Type with the measured c",
  ],
  stations.map(({ name, a, b, c, kd, model_c }) => [
    name,
    number(a + b, 4),
    number(c, 4),
    number(model_c),
    number(c / kd, 2),
    number(model_c / kd, 2),
    number(visibilityFromBeam_m(c)),
    number(visibilityFromBeam_m(model_c)),
    nearestByBeam(c),
  ]),
)}

${deviationTable([
  [
    "c = a + b at the stations",
    stations.map(({ name, a, b, c }) => ({ ours: a + b, published: c, where: name })),
  ],
  ["c from Kd", stations.map(({ name, c, model_c }) => ({ ours: model_c, published: c, where: name }))],
])}

How far apart coasts are that two publications measured, at 530 nm, Kd by Kirk 1984 from their own a and b; *b of the model* is that of
coastal water with the same Kd:

${markdownTable(
  [
    "Water",
    "a (1/m)",
    "b (1/m)",
    "b/a",
    "Kd (1/m)",
    "c/Kd measured",
    "c/Kd model",
    "b of the model over measured",
  ],
  coast.map(({ name, a, b, kd, model_c, ln }) => [
    name,
    number(a),
    number(b),
    number(b / a, 2),
    number(kd),
    number((a + b) / kd, 2),
    number(model_c / kd, 2),
    number(Math.exp(ln), 2),
  ]),
)}

- **Why Kd alone does not tell the coast:** four of these waters have a Kd of ${number(byPetzold[1].kd, 2)} to ${number(byPetzold[0].kd, 2)} per metre, stations 4, 5 and 8 and type 3C, and scatter ${number(byPetzold[0].b)}, ${number(byPetzold[1].b)}, ${number(byPetzold[4].b)} and ${number(byWilliamson[1].b)} per metre: a range of more than five within one publication, and the other lies inside it. Dissolved matter that absorbs and particles that scatter come to the same Kd. c = a + b holds in all of them, and µ0·Kd lies between a and c: neither sum is at fault. Nor is the type: by beam attenuation stations 4 and 5 are type 1C, by Kd they are 3C. No relation of Kd goes through all four. The model keeps the publication with more campaigns and all wavelengths, and carries the rest as doubt: the logarithm of its b departs from the measured one by ${number(spreadOf(byWilliamson), 2)} (root mean square) in the waters that it was fitted to, by ${number(spreadOf(byPetzold), 2)} at the stations that it was not, and by ${number(spreadOf(coast), 2)} over both; it carries a standard deviation of 0.7.
- **Domain:** level view, a dark target, daylight; a contrast threshold of 2 %.
- **Weak:** beam attenuation is not fixed by diffuse attenuation. At equal Kd the model's c is more than twice the measured one at ${outside.length} of ${stations.length} stations (numbers ${outside.join(", ")}). The clear ones state an absorption of ${number(Math.min(...overPureWater), 2)} to ${number(Math.max(...overPureWater), 2)} times that of pure water, which makes the Kd that follows from it high for a clear ocean: by beam attenuation alone they are like the types in the last column. Where visibility matters, state it: it replaces this relation.
`;
  return { markdown, plots: { "visibility.svg": plot() } };
}
