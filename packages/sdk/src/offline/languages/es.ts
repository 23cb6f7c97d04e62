import { es } from "@sunfathom/words/es";
import { sceneProblems } from "@sunfathom/words/es/problems";
import type { Tongue } from "../tongue.js";

/** All that Spanish has to say offline. */
export const tongue: Tongue = { words: es, problems: sceneProblems };
