import { CIE_DAYLIGHT_BASIS } from "../data/cie-daylight-basis.js";
import { type Spectrum, spectrumFrom } from "../spectrum/grid.js";
import { onGrid } from "../spectrum/resample.js";

/** Daylight of a correlated colour temperature, 4000 to 25000 K (CIE 15), relative power. */
export function daylightOfCct(cct_K: number): Spectrum {
  const t = cct_K;
  const x =
    t <= 7000
      ? 0.244063 + 99.11 / t + 2.9678e6 / t ** 2 - 4.607e9 / t ** 3
      : 0.23704 + 247.48 / t + 1.9018e6 / t ** 2 - 2.0064e9 / t ** 3;
  const y = -3 * x * x + 2.87 * x - 0.275;
  const m = 0.0241 + 0.2562 * x - 0.7341 * y;
  const m1 = (-1.3515 - 1.7703 * x + 5.9114 * y) / m;
  const m2 = (0.03 - 31.4424 * x + 30.0717 * y) / m;
  const { wavelength_nm, S0, S1, S2 } = CIE_DAYLIGHT_BASIS;
  const s0 = onGrid(wavelength_nm, S0);
  const s1 = onGrid(wavelength_nm, S1);
  const s2 = onGrid(wavelength_nm, S2);
  return spectrumFrom((_, i) => s0[i] + m1 * s1[i] + m2 * s2[i]);
}
