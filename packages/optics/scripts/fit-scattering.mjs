// Fits the relation between scattering and diffuse attenuation of the coast that src/water/scattering-from-kd.ts uses.
// Run after a build: node packages/optics/scripts/fit-scattering.mjs
import { JERLOV_1976 } from "../dist/data/jerlov-1976.js";
import { WILLIAMSON_HOLLINS_2022 } from "../dist/data/williamson-hollins-2022.js";
import { WAVELENGTHS_NM } from "../dist/spectrum/grid.js";
import { kdFromTable } from "../dist/water/kd-table.js";
import { PURE_WATER_KD_PER_M, PURE_WATER_SCATTERING_PER_M } from "../dist/water/pure-water.js";

const line = (x, y) => {
  const mx = x.reduce((s, v) => s + v, 0) / x.length;
  const my = y.reduce((s, v) => s + v, 0) / y.length;
  const slope =
    x.reduce((s, v, i) => s + (v - mx) * (y[i] - my), 0) / x.reduce((s, v) => s + (v - mx) ** 2, 0);
  const at = (v) => my + slope * (v - mx);
  const sd = Math.sqrt(x.reduce((s, v, i) => s + (y[i] - at(v)) ** 2, 0) / (x.length - 2));
  return { slope, intercept: at(0), sd };
};
const at555 = WAVELENGTHS_NM.indexOf(555);
const logRemainder = [];
const logB = [];
const exponents = [];
for (const [type, { b }] of Object.entries(WILLIAMSON_HOLLINS_2022)) {
  if (!type.endsWith("C")) continue;
  const kd = kdFromTable(JERLOV_1976.wavelength_nm, JERLOV_1976[type]);
  const particles = b.wavelength_nm.map(
    (nm, i) => b.value_per_m[i] - PURE_WATER_SCATTERING_PER_M[Math.round((nm - 380) / 5)],
  );
  logRemainder.push(Math.log(kd[at555] - PURE_WATER_KD_PER_M[at555]));
  logB.push(Math.log(particles[b.wavelength_nm.indexOf(555)]));
  exponents.push(
    -line(
      b.wavelength_nm.map((nm) => Math.log(nm / 555)),
      particles.map(Math.log),
    ).slope,
  );
}
const magnitude = line(logRemainder, logB);
const exponent = exponents.reduce((sum, x) => sum + x, 0) / exponents.length;
console.log(
  `b_p(555) = ${Math.exp(magnitude.intercept).toFixed(2)} * (Kd - Kw)(555)^${magnitude.slope.toFixed(3)}, sd of ln b ${magnitude.sd.toFixed(2)}`,
);
console.log(
  `spectral exponent ${exponent.toFixed(2)}, of each type ${exponents.map((x) => x.toFixed(2)).join(", ")}`,
);
