import type { ColourRecoveryTexts } from "../calculation-texts.js";
import { causes } from "./causes.js";
import { cautions } from "./cautions.js";
import { colourRecoveryReasons } from "./reasons/colour-recovery.js";
import { lightReasons } from "./reasons/light.js";

export const colourRecovery: ColourRecoveryTexts = {
  reasons: { ...colourRecoveryReasons, ...lightReasons },
  causes,
  cautions,
};
