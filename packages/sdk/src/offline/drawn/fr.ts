import { pictures } from "@sunfathom/words/fr";
import { problems } from "@sunfathom/words/fr/problems";
import type { DrawnTongue } from "./tongue.js";

/** All that French has to say on pictures. */
export const tongue: DrawnTongue = { pictures, problems };
