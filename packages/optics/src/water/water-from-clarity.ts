/**
 * Water from what a diver can say: how far he sees, or where a Secchi disc vanishes, and the colour of the water.
 *
 * The colour picks a stretch of the water family, the distance its turbidity. A visibility gives the beam attenuation
 * (4.8 / c); diffuse attenuation follows through scattering (scattering-from-kd.ts) and Kirk 1984, which
 * tie the two together in every member of the family. A Secchi depth gives the diffuse attenuation itself (Lee et al. 2015).
 */
import { OpticsDomainError } from "../domain-error.js";
import { WAVELENGTHS_NM } from "../spectrum/grid.js";
import { coastalShareOfMix, lnRemainder, SPECTRAL_SHAPE_SIGMA_LN } from "./hue-family.js";
import { SECCHI_SIGMA_LN } from "./secchi.js";
import { beamFromVisibility_per_m, VISIBILITY_INDEX, VISIBILITY_SIGMA_LN } from "./visibility.js";
import { SCATTERING_SIGMA_LN, type WaterDescription, type WaterSigma } from "./water-description.js";
import {
  CLARITY_RANGES,
  type Clarity,
  HUE_MIX_SIGMA,
  hueMixOf,
  kdForClarity,
  type Range,
  turbidityFor,
  WATER_HUES,
  type WaterHue,
} from "./water-hue.js";
import { waterFromKd } from "./water-optics.js";

const OUT_OF_RANGE = {
  secchi_depth_m: "secchi_depth_out_of_range",
  visibility_m: "visibility_out_of_range",
} as const;

const toTenth = (metres: number): number => Number(metres.toFixed(1));

function requirePossible(clarity: Clarity, value_m: number, hue: WaterHue): void {
  const ranges = WATER_HUES.map((name) => ({ name, range: CLARITY_RANGES[clarity][name] }));
  const holds = (range: Range): boolean => value_m >= range[0] && value_m <= range[1];
  const fitting = ranges.filter(({ range }) => holds(range));
  const least = Math.min(...ranges.map(({ range }) => range[0]));
  const most = Math.max(...ranges.map(({ range }) => range[1]));
  if (fitting.length === 0) {
    throw new OpticsDomainError({
      code: OUT_OF_RANGE[clarity],
      parameters: { value_m, min_m: toTenth(least), max_m: toTenth(most) },
    });
  }
  if (fitting.some(({ name }) => name === hue)) return;
  const [from, to] = CLARITY_RANGES[clarity][hue];
  throw new OpticsDomainError({
    code: "water_hue_contradicts_measure",
    parameters: {
      measure: clarity,
      value_m,
      water_hue: hue,
      min_m: toTenth(from),
      max_m: toTenth(to),
      fitting_hues: fitting.map(({ name }) => name),
    },
  });
}

/** Mean spread of ln(Kd - Kw) over 440 to 600 nm when the hue mix is off by its standard deviation. */
function hueNameSigma(clarity: Clarity, value_m: number, hueMix: number): number {
  const middle = lnRemainder(kdForClarity(clarity, value_m, hueMix));
  const sides = [hueMix - HUE_MIX_SIGMA, hueMix + HUE_MIX_SIGMA].filter((mix) => mix >= 0 && mix <= 2);
  const squares = sides.flatMap((mix) => {
    const other = lnRemainder(kdForClarity(clarity, value_m, mix));
    return Array.from(other, (value, i) => (value - middle[i]) ** 2).filter(
      (_, i) => WAVELENGTHS_NM[i] >= 440 && WAVELENGTHS_NM[i] <= 600,
    );
  });
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
}

/** Change of ln turbidity per change of ln of the distance read, about this reading. */
function turbidityPerReading(clarity: Clarity, value_m: number, hueMix: number, sigma_ln: number): number {
  const murky = turbidityFor(clarity, value_m * Math.exp(-sigma_ln), hueMix);
  const clear = turbidityFor(clarity, value_m * Math.exp(sigma_ln), hueMix);
  return Math.log(murky / clear) / (2 * sigma_ln);
}

/**
 * @param clarity which distance was read.
 * @param value_m the distance, m.
 * @throws OpticsDomainError when no natural water shows that distance, or none of that hue; the parameters name what does.
 */
export function describeByClarity(clarity: Clarity, value_m: number, hue: WaterHue): WaterDescription {
  requirePossible(clarity, value_m, hue);
  const hueMix = hueMixOf(hue);
  const kd = kdForClarity(clarity, value_m, hueMix);
  const coastalShare = coastalShareOfMix(hueMix);
  const shape: WaterSigma[] = [
    { cause: "spectral_shape", sigma_ln: SPECTRAL_SHAPE_SIGMA_LN },
    { cause: "hue_name", sigma_ln: hueNameSigma(clarity, value_m, hueMix) },
  ];
  if (clarity === "secchi_depth_m") {
    const slope = turbidityPerReading(clarity, value_m, hueMix, SECCHI_SIGMA_LN);
    return {
      kd_reference_per_m: kd,
      coastalShare,
      remainder_sigmas: [{ cause: "clarity_reading", sigma_ln: slope * SECCHI_SIGMA_LN }, ...shape],
      scattering_sigmas: [{ cause: "scattering_per_water", sigma_ln: SCATTERING_SIGMA_LN }],
    };
  }
  const beam = beamFromVisibility_per_m(value_m);
  const scatteredShare = waterFromKd(kd, { coastalShare }).scattering_per_m[VISIBILITY_INDEX] / beam;
  const slope = turbidityPerReading(clarity, value_m, hueMix, VISIBILITY_SIGMA_LN);
  return {
    kd_reference_per_m: kd,
    coastalShare,
    beam_attenuation_530: { value_per_m: beam, sigma_ln: VISIBILITY_SIGMA_LN },
    remainder_sigmas: [
      { cause: "clarity_reading", sigma_ln: slope * VISIBILITY_SIGMA_LN },
      { cause: "beam_to_diffuse", sigma_ln: slope * scatteredShare * SCATTERING_SIGMA_LN },
      ...shape,
    ],
    scattering_sigmas: [{ cause: "clarity_reading", sigma_ln: VISIBILITY_SIGMA_LN / scatteredShare }],
  };
}
