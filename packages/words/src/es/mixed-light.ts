import type { MixedLightTexts } from "../calculation-texts.js";
import { causes } from "./causes.js";
import { cautions } from "./cautions.js";
import { lightReasons } from "./reasons/light.js";
import { mixedLightReasons } from "./reasons/mixed-light.js";
import { waysOut } from "./ways-out.js";

export const mixedLight: MixedLightTexts = {
  reasons: { ...mixedLightReasons, ...lightReasons },
  causes,
  cautions,
  ways: waysOut,
};
