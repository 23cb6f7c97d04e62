import { fr } from "@sunfathom/words/fr";
import { sceneProblems } from "@sunfathom/words/fr/problems";
import type { Tongue } from "../tongue.js";

/** All that French has to say offline. */
export const tongue: Tongue = { words: fr, problems: sceneProblems };
