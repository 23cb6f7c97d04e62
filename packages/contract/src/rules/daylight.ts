import { sceneDefaults } from "../scene/defaults.js";
import type { Rule } from "./rule.js";

export const daylightRules: readonly Rule[] = [
  {
    code: "sun_with_basis_sun",
    says: "`sun_elevation_deg` goes with `daylight_basis` `sun` alone.",
    fields: ["daylight_basis", "sun_elevation_deg"],
    violations: ({ daylight_basis = sceneDefaults.daylight_basis, sun_elevation_deg }) => {
      if (sun_elevation_deg === undefined || daylight_basis === "sun") return [];
      return [
        {
          pointer: "/sun_elevation_deg",
          message: `The sun has a height, but daylight_basis is ${daylight_basis}.`,
          allowed: "leave it out, or daylight_basis sun",
        },
      ];
    },
  },
];
