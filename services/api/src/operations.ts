import { operationsIn } from "@sunfathom/answers";
import { en } from "@sunfathom/words/en";

/** Every calculation, in the one language that there is. */
export const operations = operationsIn(en);
