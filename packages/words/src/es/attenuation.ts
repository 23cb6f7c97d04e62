import type { AttenuationTexts } from "../calculation-texts.js";
import { causes } from "./causes.js";
import { cautions } from "./cautions.js";
import { attenuationReasons } from "./reasons/attenuation.js";
import { lightReasons } from "./reasons/light.js";

export const attenuation: AttenuationTexts = {
  reasons: { ...attenuationReasons, ...lightReasons },
  causes,
  cautions,
};
