import { de } from "@sunfathom/words/de";
import { sceneProblems } from "@sunfathom/words/de/problems";
import type { Tongue } from "../tongue.js";

/** All that German has to say offline. */
export const tongue: Tongue = { words: de, problems: sceneProblems };
