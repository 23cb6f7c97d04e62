/** Water from a Jerlov type or a chlorophyll concentration, with how sure each is. */
import { CHLOROPHYLL_SIGMA_LN_REMAINDER, kdFromChlorophyll } from "./chlorophyll-morel-maritorena-2001.js";
import { coastalShareOf, lnTurbidity } from "./hue-family.js";
import { JERLOV_TYPES, type JerlovType, jerlovKd } from "./jerlov-1976.js";
import { SCATTERING_SIGMA_LN, type WaterDescription, type WaterSigma } from "./water-description.js";

const SCATTERING: WaterSigma[] = [{ cause: "scattering_per_water", sigma_ln: SCATTERING_SIGMA_LN }];

/** Types as steps of a scale: a water lies anywhere within half a step, so the deviation is the step over root 12. */
function typeStepSigma(type: JerlovType): number {
  const isCoastal = (name: JerlovType): boolean => name.endsWith("C");
  const scale = JERLOV_TYPES.filter((name) => isCoastal(name) === isCoastal(type));
  const at = scale.indexOf(type);
  const turbidity = scale.slice(Math.max(0, at - 1), at + 2).map((name) => lnTurbidity(jerlovKd(name)));
  const step = (turbidity[turbidity.length - 1] - turbidity[0]) / (turbidity.length - 1);
  return step / Math.sqrt(12);
}

const described = new Map<JerlovType, WaterDescription>();

/** A water of this type of the 1976 edition; worked out once, so not to be written to. */
export function describeByType(type: JerlovType): WaterDescription {
  const known = described.get(type);
  if (known !== undefined) return known;
  const description: WaterDescription = {
    kd_reference_per_m: jerlovKd(type),
    coastalShare: coastalShareOf(jerlovKd(type)),
    remainder_sigmas: [{ cause: "water_type_resolution", sigma_ln: typeStepSigma(type) }],
    scattering_sigmas: SCATTERING,
  };
  described.set(type, description);
  return description;
}

/** @param chlorophyll_mg_m3 0.02 to 20. @throws OpticsDomainError outside that range. */
export function describeByChlorophyll(chlorophyll_mg_m3: number): WaterDescription {
  return {
    kd_reference_per_m: kdFromChlorophyll(chlorophyll_mg_m3),
    coastalShare: 0,
    remainder_sigmas: [{ cause: "chlorophyll_relation", sigma_ln: CHLOROPHYLL_SIGMA_LN_REMAINDER }],
    scattering_sigmas: SCATTERING,
  };
}
