import { BALANCE_EN } from "./en/balance.js";
import { CITATIONS_EN, COMMON_EN } from "./en/common.js";
import { EXPOSURE_EN } from "./en/exposure.js";
import { FILTER_EN } from "./en/filter.js";
import { GRADING_EN } from "./en/grading.js";
import { LAMPS_EN } from "./en/lamps.js";
import { LIGHT_EN } from "./en/light.js";
import { MISCONCEPTIONS_EN } from "./en/misconceptions.js";
import { MOUNTING_EN } from "./en/mounting.js";
import { SAFETY_EN } from "./en/safety.js";

const EN = {
  common: COMMON_EN,
  citations: CITATIONS_EN,
  misconceptions: MISCONCEPTIONS_EN,
  light: LIGHT_EN,
  filter: FILTER_EN,
  exposure: EXPOSURE_EN,
  balance: BALANCE_EN,
  lamps: LAMPS_EN,
  grading: GRADING_EN,
  mounting: MOUNTING_EN,
  safety: SAFETY_EN,
};

/** Every text of the quiz. Another language is another value of this type. */
export type Catalogue = typeof EN;

export const CATALOGUES = { en: EN } satisfies Record<string, Catalogue>;
export type Language = keyof typeof CATALOGUES;
