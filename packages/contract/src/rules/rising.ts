import type { Rule } from "./rule.js";

/** Samples of a curve must stand in order, so that a slip of the pen is not taken for a curve. */
export function rising(field: "kd_samples" | "filter_transmittance"): Rule {
  return {
    code: `${field}_rising`,
    says: `The wavelengths of \`${field}\` rise from sample to sample.`,
    fields: [field],
    violations: (scene) => {
      const wavelengths = (scene[field] ?? []).map(({ wavelength_nm }) => wavelength_nm);
      return wavelengths.flatMap((wavelength, index) => {
        const before = wavelengths[index - 1];
        if (before === undefined || wavelength > before) return [];
        return [
          {
            pointer: `/${field}/${index}/wavelength_nm`,
            message: `${wavelength} nm follows ${before} nm.`,
            allowed: `above ${before} nm`,
          },
        ];
      });
    },
  };
}
