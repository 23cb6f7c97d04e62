import type { Rule, Violation } from "./rule.js";

/** Samples of a curve must stand in order, so that a slip of the pen is not taken for a curve. */
export function rising(field: "kd_samples" | "filter_transmittance"): Rule {
  return {
    code: `${field}_rising`,
    fields: [field],
    violations: (scene) => notRising(scene[field] ?? [], `/${field}`),
  };
}

/** The samples that do not come after the one before them. @param pointer to the list */
export function notRising(samples: readonly { wavelength_nm: number }[], pointer: string): Violation[] {
  return samples.flatMap(({ wavelength_nm }, index) => {
    const before = samples[index - 1]?.wavelength_nm;
    if (before === undefined || wavelength_nm > before) return [];
    return [
      {
        pointer: `${pointer}/${index}/wavelength_nm`,
        message: `${wavelength_nm} nm follows ${before} nm.`,
        allowed: `above ${before} nm`,
      },
    ];
  });
}
