import { pictures } from "@sunfathom/words/de";
import { problems } from "@sunfathom/words/de/problems";
import type { DrawnTongue } from "./tongue.js";

/** All that German has to say on pictures. */
export const tongue: DrawnTongue = { pictures, problems };
