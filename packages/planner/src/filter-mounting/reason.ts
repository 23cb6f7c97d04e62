import { MOUNTING_CAUTIONS_EN } from "../messages/mounting-en.js";
import { FILTER_MOUNTING_REASONS_EN } from "../messages/reasons/filter-mounting-en.js";
import { cautionsWith, reasonsWith } from "../messages/say.js";

export const reason = reasonsWith(FILTER_MOUNTING_REASONS_EN);
export const mountingCaution = cautionsWith(MOUNTING_CAUTIONS_EN);
