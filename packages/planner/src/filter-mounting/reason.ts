import { FILTER_MOUNTING_REASONS_EN } from "../messages/reasons/filter-mounting-en.js";
import { reasonsWith } from "../messages/say.js";

export const reason = reasonsWith(FILTER_MOUNTING_REASONS_EN);
