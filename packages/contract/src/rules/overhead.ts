import { impliedDaylightBasis } from "../scene/implied-daylight-basis.js";
import { broken, type RuleOf } from "./rule.js";

/** What goes with which. */
const PARTS = {
  daylight_open_share: ["overhang", "cavern", "wreck"],
  ice_thickness_m: ["ice"],
  snow_thickness_m: ["ice"],
} as const;
const parts = ["daylight_open_share", "ice_thickness_m", "snow_thickness_m"] as const;

const overheadParts: RuleOf<"overhead_parts", { field: string; goes_with: readonly string[] }> = {
  code: "overhead_parts",
  violations: (scene) =>
    parts.flatMap((field) => {
      const goes_with: readonly string[] = PARTS[field];
      if (scene[field] === undefined || goes_with.includes(scene.overhead ?? "none")) return [];
      return [broken(`/${field}`, { field, goes_with })];
    }),
};

const caveIsDark: RuleOf<"cave_is_dark", { daylight_basis: string }> = {
  code: "cave_is_dark",
  violations: (scene) => {
    const daylight_basis = impliedDaylightBasis(scene);
    return scene.overhead !== "cave" || daylight_basis === "none"
      ? []
      : [broken("/overhead", { daylight_basis })];
  },
};

export const overheadRules = [overheadParts, caveIsDark] as const;
