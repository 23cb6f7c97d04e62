import { pictures } from "@sunfathom/words/es";
import { problems } from "@sunfathom/words/es/problems";
import type { DrawnTongue } from "./tongue.js";

/** All that Spanish has to say on pictures. */
export const tongue: DrawnTongue = { pictures, problems };
