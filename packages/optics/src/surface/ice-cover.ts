/**
 * Daylight through ice and snow: two streams in layers that absorb and scatter (Dunkle & Bevans 1956; Perovich 1990, CRREL 90-1; from
 * memory), dF-/dz = -(k + r) F- + r F+ and its like upward, so that light dies as exp(-K z) with K^2 = k (k + 2 r). Layers add up with
 * the light thrown to and fro between them; nothing comes back from the water. Sky light, or sun scattered by the first decimetres.
 *
 * k is that of pure ice (Warren & Brandt 2008) and a grey part of what is frozen in. Ice: r = 2.5/m, white ice inside (Perovich 1990, as
 * an open radiative-transfer library carries it), and 0.06/m of grey, for K = 0.6/m at 500 nm. Snow: r = 220/m and 0.58/m of grey, for
 * K = 16/m and an albedo of 0.93 at 500 nm. Both K and the albedo: Grenfell & Maykut 1977, J. Glaciol. 18, 445, abstract, the clearest
 * ice and dense dry snow. Domain: 390 to 780 nm, ice of 0.05 to 4 m, snow to 1 m. Ice with algae or sediment lets less through.
 */
import { WARREN_BRANDT_2008_ICE } from "../data/warren-brandt-2008-ice.js";
import { type Spectrum, spectrumFrom } from "../spectrum/grid.js";
import { onGrid } from "../spectrum/resample.js";

interface Layer {
  scattering_per_m: number;
  grey_per_m: number;
  /** Share of the volume that is ice. */
  iceShare: number;
}

const ICE: Layer = { scattering_per_m: 2.5, grey_per_m: 0.056, iceShare: 1 };
/** Of dense dry snow: a third of it is ice, from memory. */
const SNOW: Layer = { scattering_per_m: 220, grey_per_m: 0.58, iceShare: 0.35 };

interface Slab {
  transmittance: number;
  reflectance: number;
}

function slab(
  { scattering_per_m: r, grey_per_m, iceShare }: Layer,
  ice_per_m: number,
  thickness_m: number,
): Slab {
  const k = grey_per_m + iceShare * ice_per_m;
  const K = Math.sqrt(k * (k + 2 * r));
  const [sinh, cosh] = [Math.sinh(K * thickness_m), Math.cosh(K * thickness_m)];
  const below = (k + r) * sinh + K * cosh;
  return { transmittance: K / below, reflectance: (r * sinh) / below };
}

/** Share of daylight that comes through ice with snow on it, per wavelength. Thicknesses in m, 0 for none. */
export function iceTransmittance(ice_m: number, snow_m: number): Spectrum {
  const { wavelength_nm, absorption_per_m } = WARREN_BRANDT_2008_ICE;
  const absorption = onGrid(wavelength_nm, absorption_per_m);
  return spectrumFrom((_, i) => {
    const snow = slab(SNOW, absorption[i], snow_m);
    const ice = slab(ICE, absorption[i], ice_m);
    return (snow.transmittance * ice.transmittance) / (1 - snow.reflectance * ice.reflectance);
  });
}
