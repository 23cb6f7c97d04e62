import { operationsIn } from "@sunfathom/answers";
import { en } from "@sunfathom/words/en";
import { sceneProblems } from "@sunfathom/words/en/problems";

export const operations = operationsIn(en, sceneProblems);
