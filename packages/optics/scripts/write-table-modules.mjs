// Writes src/data/*.ts from tables/*.csv. Run: node packages/optics/scripts/write-table-modules.mjs
// `--check` writes nothing and fails when a module differs from what its table gives.
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { cellMeans, GRID, gridNm } from "./grid-means.mjs";
import { packed } from "./pack-columns.mjs";
import { readCsv } from "./read-csv.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));

const num = (cell) => (cell === "" ? null : Number(cell));
const within =
  (from, to, step = 0) =>
  (row) => {
    const nm = Number(row.wavelength_nm);
    return nm >= from && nm <= to && (step === 0 || nm % step === 0);
  };
const column = (rows, key) => rows.map((row) => num(row[key]));
/** To so many decimals: what a table prints beyond what was measured is not sent to everybody. */
const rounded = (decimals, values) => values.map((v) => Number(v.toFixed(decimals)));
const columns = (rows, names) =>
  Object.fromEntries(Object.entries(names).map(([to, from]) => [to, column(rows, from)]));
const groups = (rows, key) => {
  const out = new Map();
  for (const row of rows) out.set(row[key], [...(out.get(row[key]) ?? []), row]);
  return [...out];
};

const g173 = () => {
  const rows = readCsv("astm_g173_03");
  return {
    wavelength_nm: gridNm(),
    extraterrestrial_W_m2_nm: cellMeans(rows, "extraterrestrial_W_m2_nm"),
    global_tilt37_W_m2_nm: cellMeans(rows, "global_tilt37_W_m2_nm"),
    direct_circumsolar_W_m2_nm: cellMeans(rows, "direct_circumsolar_W_m2_nm"),
  };
};
const spectral = (csv, names, from, to, step) => {
  const rows = readCsv(csv).filter(within(from, to, step));
  return { wavelength_nm: column(rows, "wavelength_nm"), ...columns(rows, names) };
};
const byGroup = (csv, key, names, from, to, step, keep = () => true) => {
  const all = groups(readCsv(csv).filter(within(from, to, step)), key).filter(([name]) => keep(name));
  const only = Object.values(names).length === 1;
  return {
    wavelength_nm: column(all[0][1], "wavelength_nm"),
    ...Object.fromEntries(
      all.map(([name, rows]) => [name, only ? column(rows, Object.values(names)[0]) : columns(rows, names)]),
    ),
  };
};
const measuredIops = () => {
  const out = {};
  for (const [type, rows] of groups(readCsv("williamson_hollins_2022_measured_iop"), "water_type")) {
    out[type] = {};
    for (const [quantity, part] of groups(rows, "quantity")) {
      out[type][quantity] = {
        wavelength_nm: column(part, "wavelength_nm"),
        value_per_m: column(part, "value_per_m"),
        std_dev_per_m: column(part, "std_dev_per_m"),
        campaigns: column(part, "n_campaigns"),
      };
    }
  }
  return out;
};

const skyBands = (from, to) =>
  spectral(
    "spctrl2_coefficients",
    {
      extraterrestrial_W_m2_nm: "extraterrestrial_W_m2_nm",
      water_vapour: "water_vapour",
      ozone: "ozone",
      mixed_gas: "mixed_gas",
    },
    from,
    to,
  );

const meanSensor = () => {
  const spread = spectral("sensor_rgb_mean", { sd_R: "sd_R" }, 400, 565);
  const mean = spectral(
    "sensor_rgb_mean",
    { mean_R: "mean_R", mean_G: "mean_G", mean_B: "mean_B" },
    400,
    720,
  );
  return {
    wavelength_nm: mean.wavelength_nm,
    mean_R: rounded(5, mean.mean_R),
    mean_G: rounded(5, mean.mean_G),
    mean_B: rounded(5, mean.mean_B),
    sd_wavelength_nm: spread.wavelength_nm,
    sd_R: rounded(5, spread.sd_R),
  };
};

const MODULES = [
  [
    "pope-fry-1997",
    "POPE_FRY_1997",
    "Pure-water absorption, 1/m.",
    "Pope & Fry 1997, Applied Optics 36, 8710, Table 3",
    () => spectral("water_absorption_pope_fry_1997", { absorption_per_m: "a_w_per_m" }, 380, 725, 5),
  ],
  [
    "wopp-v3",
    "WOPP_V3",
    "Pure-water absorption at 20 °C beyond the reach of Pope & Fry, 1/m.",
    "Röttgers et al. 2016, Water Optical Properties Processor v3",
    () => spectral("water_absorption_wopp_v3", { absorption_per_m: "a_w_20C_fresh_per_m" }, 730, 780),
  ],
  [
    "zhang-hu-he-2009",
    "ZHANG_HU_HE_2009",
    "Scattering of pure sea water (35 psu, 20 °C), 1/m.",
    "Zhang, Hu & He 2009, Optics Express 17, 5698",
    () => {
      const { wavelength_nm, b } = spectral(
        "seawater_scattering",
        { b: "b_zhang2009_S35_T20_per_m" },
        380,
        780,
      );
      return { wavelength_nm, scattering_per_m: rounded(7, b) };
    },
  ],
  [
    "quan-fry-1995",
    "QUAN_FRY_1995",
    "Refractive index of sea water (35 psu, 20 °C) against air.",
    "Quan & Fry 1995, Applied Optics 34, 3477; air after Ciddor 1996",
    () => spectral("seawater_refractive_index", { index_vs_air: "n_vs_air_S35_T20" }, 400, 700),
  ],
  [
    "skin-reflectance",
    "SKIN_REFLECTANCE",
    "Reflectance of skin around the 10th, 50th and 90th percentile of brightness.",
    "Cooksey, Allen & Tsai 2017, Journal of Research of NIST 122, 26",
    () => {
      const rows = readCsv("skin_reflectance").filter(within(GRID.from, GRID.to, GRID.step));
      return columns(rows, {
        wavelength_nm: "wavelength_nm",
        dark: "around_p10",
        middle: "around_p50",
        pale: "around_p90",
      });
    },
  ],
  [
    "warren-brandt-2008-ice",
    "WARREN_BRANDT_2008_ICE",
    "Absorption of pure ice, 1/m: 4 pi times the imaginary refractive index over the wavelength.",
    "Warren & Brandt 2008, Journal of Geophysical Research 113, D14220",
    () => {
      const rows = readCsv("warren_brandt_2008_ice");
      const wavelength_nm = column(rows, "wavelength_nm");
      const absorption = column(rows, "imaginary_index").map(
        (k, i) => (4e9 * Math.PI * k) / wavelength_nm[i],
      );
      return { wavelength_nm, absorption_per_m: rounded(6, absorption) };
    },
  ],
  [
    "jerlov-1976",
    "JERLOV_1976",
    "Diffuse attenuation of downwelling light per optical water type, 1/m.",
    "Jerlov 1976, Marine Optics, 2nd edition, Table XXVII",
    () => byGroup("jerlov_1976_kd", "water_type", { kd: "Kd_per_m" }, 350, 700),
  ],
  [
    "morel-maritorena-2001",
    "MOREL_MARITORENA_2001",
    "Kd = Kw + chi * Chl^e for waters whose colour follows the phytoplankton.",
    "Morel & Maritorena 2001, Journal of Geophysical Research 106, 7163, Table 2",
    () => spectral("morel_maritorena_2001_kd", { Kw_per_m: "Kw_per_m", chi: "chi", e: "e" }, 380, 700),
  ],
  [
    "williamson-hollins-2022",
    "WILLIAMSON_HOLLINS_2022",
    "Measured absorption a and scattering b per optical water type, 1/m.",
    "Williamson & Hollins 2022, Applied Optics 61, 9951",
    measuredIops,
  ],
  [
    "cie-1931-observer",
    "CIE_1931_OBSERVER",
    "Colour-matching functions of the 2 degree observer; y_bar is V(lambda).",
    "CIE 15; ISO/CIE 11664-1",
    () => {
      const names = { x_bar: "x_bar", y_bar: "y_bar", z_bar: "z_bar" };
      const { wavelength_nm, ...bars } = spectral("cie_1931_2deg_cmf_1nm", names, 380, 780, 5);
      const toSix = Object.entries(bars).map(([name, values]) => [name, rounded(6, values)]);
      return { wavelength_nm, ...Object.fromEntries(toSix) };
    },
  ],
  [
    "cie-illuminants",
    "CIE_ILLUMINANTS",
    "Relative power of the illuminants D55 and D65.",
    "CIE 15",
    () =>
      byGroup("cie_illuminants_5nm", "illuminant", { power: "relative_power" }, 380, 780, 5, (name) =>
        ["D55", "D65"].includes(name),
      ),
  ],
  [
    "cie-daylight-basis",
    "CIE_DAYLIGHT_BASIS",
    "Daylight components S0, S1, S2, by 10 nm: CIE 15 has them on straight lines between.",
    "CIE 15",
    () => spectral("cie_daylight_basis", { S0: "S0", S1: "S1", S2: "S2" }, 380, 780, 10),
  ],
  [
    "cie-led-illuminants",
    "CIE_LED_ILLUMINANTS",
    "Relative power of the LED illuminants.",
    "CIE 15:2018, Table 12",
    () => byGroup("cie_led_illuminants_5nm", "illuminant", { power: "relative_power" }, 380, 780, 5),
  ],
  [
    "astm-g173-03",
    "ASTM_G173_03",
    "Reference solar spectra, means over each cell of the 5 nm grid, W m^-2 nm^-1.",
    "ASTM G173-03",
    g173,
  ],
  [
    "bird-riordan-1986",
    "BIRD_RIORDAN_1986",
    "Extraterrestrial irradiance and gas absorption bands of the clear-sky model, over the grid.",
    "Bird & Riordan 1986, SERI/TR-215-2436",
    () => skyBands(GRID.from, GRID.to),
  ],
  [
    "bird-riordan-1986-whole",
    "BIRD_RIORDAN_1986_WHOLE",
    "Extraterrestrial irradiance and gas absorption bands of the clear-sky model, all 122: for tests, too long to be sent.",
    "Bird & Riordan 1986, SERI/TR-215-2436",
    () => skyBands(300, 4000),
  ],
  [
    "mean-sensor",
    "MEAN_SENSOR",
    "Mean of the peak-normalised sensitivities of 11 anonymous cameras, and the spread of red where it is cross-talk.",
    "averaged from sensitivities published by the Academy of Motion Picture Arts and Sciences; see tables/NOTICE-sensor.txt",
    meanSensor,
  ],
  [
    "chart-24",
    "CHART_24",
    "Reflectance of the 24-patch chart of ISO 17321-1, in the order of the table, which numbers them.",
    "Ohta 1997",
    () => {
      const { wavelength_nm, ...patches } = byGroup(
        "chart24_reflectance_ohta1997",
        "patch",
        { reflectance: "reflectance" },
        380,
        780,
        5,
      );
      return { wavelength_nm, reflectances: Object.values(patches) };
    },
  ],
  [
    "bottom-reflectance",
    "BOTTOM_REFLECTANCE",
    "Irradiance reflectance of sea floors.",
    "means of spectra by G. Asner and by Schnalzger 2017, as an open bio-optical library carries them (DOI 10.5281/zenodo.10246861)",
    () => {
      const rows = readCsv("bottom_reflectance").filter(within(GRID.from, GRID.to, GRID.step));
      const floors = ["sand", "coral", "crustose_coralline_algae", "macroalgae", "seagrass"];
      return columns(rows, Object.fromEntries(["wavelength_nm", ...floors].map((name) => [name, name])));
    },
  ],
];

/** An object of columns, as text; `depth` levels in. */
const literal = (value, depth = 1) => {
  if (Array.isArray(value?.[0])) return `[\n${value.map((column) => `    ${packed(column)},\n`).join("")}  ]`;
  if (Array.isArray(value)) return packed(value);
  const pad = "  ".repeat(depth);
  const entries = Object.entries(value).map(
    ([name, part]) => `${pad}${JSON.stringify(name)}: ${literal(part, depth + 1)},\n`,
  );
  return `{\n${entries.join("")}${pad.slice(2)}}`;
};

const render = ([file, name, what, cite, make]) => {
  const body = literal(make());
  const used = ["evenly", "unpack"].filter((call) => body.includes(`${call}(`));
  const lines = [
    `// Generated from the tables by scripts/write-table-modules.mjs; do not edit.`,
    `import { ${used.join(", ")} } from "../spectrum/packed.js";`,
    ``,
    `/** ${what} Source: ${cite}. */`,
    `export const ${name} = ${body};`,
    ``,
  ];
  return [`${root}src/data/${file}.ts`, lines.join("\n")];
};

const check = process.argv.includes("--check");
let stale = 0;
for (const module of MODULES) {
  const [path, text] = render(module);
  if (!check) writeFileSync(path, text);
  else if (readFileSync(path, "utf8") !== text) {
    stale++;
    console.error(`${path.slice(root.length)} differs from its table`);
  }
}
if (stale > 0) process.exit(1);
console.log(`${MODULES.length} table modules ${check ? "match their tables" : "written"}`);
