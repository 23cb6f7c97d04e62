import { cameraDefault } from "../scene/defaults.js";
import { broken, type Nothing, type RuleOf } from "./rule.js";

const kelvinWithMode: RuleOf<
  "kelvin_with_mode",
  { case: "missing" } | { case: "not_asked"; white_balance_mode: string }
> = {
  code: "kelvin_with_mode",
  violations: ({ white_balance_mode: mode = "card", white_balance_kelvin_K: cct_K }) => {
    if (mode === "kelvin")
      return cct_K === undefined ? [broken("/white_balance_mode", { case: "missing" })] : [];
    return cct_K === undefined
      ? []
      : [broken("/white_balance_kelvin_K", { case: "not_asked", white_balance_mode: mode })];
  },
};

const kelvinWithinLimits: RuleOf<
  "kelvin_within_limits",
  {
    white_balance_kelvin_K: number;
    min_K: number;
    max_K: number;
  }
> = {
  code: "kelvin_within_limits",
  violations: (scene) => {
    const { white_balance_kelvin_K } = scene;
    const min_K = scene.white_balance_min_cct_K ?? cameraDefault(scene, "white_balance_min_cct_K");
    const max_K = scene.white_balance_max_cct_K ?? cameraDefault(scene, "white_balance_max_cct_K");
    if (white_balance_kelvin_K === undefined) return [];
    // Limits out of order are another rule's business.
    if (min_K > max_K || (white_balance_kelvin_K >= min_K && white_balance_kelvin_K <= max_K)) return [];
    return [broken("/white_balance_kelvin_K", { white_balance_kelvin_K, min_K, max_K })];
  },
};

type Fixed = "iso" | "f_number" | "shutter_s";

/** A camera that exposes by itself with everything fixed has nothing left to set. */
const autoExposureFree: RuleOf<"auto_exposure_free", { fixed: Fixed[] }> = {
  code: "auto_exposure_free",
  violations: (scene) => {
    const fixed = (["iso", "f_number", "shutter_s"] as const).filter((field) => scene[field] !== undefined);
    return scene.exposure_mode === "auto" && fixed.length === 3
      ? [broken("/exposure_mode", { fixed: [...fixed] })]
      : [];
  },
};

/** A camera that balances by itself has one balance on no two cards. */
const lockedWithMode: RuleOf<"card_balance_not_auto", Nothing> = {
  code: "card_balance_not_auto",
  violations: ({ white_balance_mode, locked_balance }) =>
    white_balance_mode === "auto" && locked_balance === true ? [broken("/white_balance_mode", {})] : [],
};

export const whiteBalanceRules = [
  kelvinWithMode,
  kelvinWithinLimits,
  autoExposureFree,
  lockedWithMode,
] as const;
