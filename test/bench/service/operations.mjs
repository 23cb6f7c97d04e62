import { operationsIn } from "@sunfathom/answers";
import { en } from "@sunfathom/words/en";

export const operations = operationsIn(en);
