import { broken, type RuleOf, type Violation } from "./rule.js";

/** A sample of a curve that does not come after the one before it. */
export interface NotRising {
  wavelength_nm: number;
  before_nm: number;
}

/** Samples of a curve must stand in order, so that a slip of the pen is not taken for a curve. */
export function rising<
  Field extends "kd_samples" | "filter_transmittance" | "bottom_reflectance" | "sensor_samples",
>(field: Field): RuleOf<`${Field}_rising`, NotRising> {
  return {
    code: `${field}_rising`,
    violations: (scene) => notRising(scene[field] ?? [], `/${field}`),
  };
}

/** The samples that do not come after the one before them. @param pointer to the list */
export function notRising(
  samples: readonly { wavelength_nm: number }[],
  pointer: string,
): Violation<NotRising>[] {
  return samples.flatMap(({ wavelength_nm }, index) => {
    const before_nm = samples[index - 1]?.wavelength_nm;
    if (before_nm === undefined || wavelength_nm > before_nm) return [];
    return [broken(`${pointer}/${index}/wavelength_nm`, { wavelength_nm, before_nm })];
  });
}
