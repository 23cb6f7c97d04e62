import { pictures } from "@sunfathom/words/en";
import { problems } from "@sunfathom/words/en/problems";
import type { DrawnTongue } from "./tongue.js";

/** All that English has to say on pictures. */
export const tongue: DrawnTongue = { pictures, problems };
