import type { ExposureLossTexts } from "../calculation-texts.js";
import { causes } from "./causes.js";
import { cautions } from "./cautions.js";
import { exposureLossReasons } from "./reasons/exposure-loss.js";
import { lightReasons } from "./reasons/light.js";
import { waysToPay } from "./ways-to-pay.js";

export const exposureLoss: ExposureLossTexts = {
  reasons: { ...exposureLossReasons, ...lightReasons },
  causes,
  cautions,
  ways: waysToPay,
};
