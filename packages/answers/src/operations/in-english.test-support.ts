import { en } from "@sunfathom/words/en";
import { sceneProblems } from "@sunfathom/words/en/problems";
import type { Calculation } from "./calculation.js";
import type { OperationName } from "./calculations.js";
import type { Answered, Refused } from "./outcome.js";
import { operationsIn } from "./table.js";

export const operations = operationsIn(en, sceneProblems);

export function calculationOf(name: OperationName): Calculation {
  const calculation = operations.find((entry) => entry.name === name);
  if (calculation === undefined) throw new Error(`There is no calculation ${name}.`);
  return calculation;
}

/** Answers a scene by the name of what is asked. */
export const answer = (name: OperationName, raw: unknown): Answered | Refused =>
  calculationOf(name).reply(raw);
