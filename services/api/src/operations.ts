import { languages } from "@sunfathom/contract";
import { tongueOf } from "./tongues.js";

/** Every calculation: names, paths, costs and examples are the same in all languages, and taken from the first. */
export const { operations } = tongueOf(languages[0]);
