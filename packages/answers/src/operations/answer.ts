import { calculationOf, type OperationName } from "./calculations.js";
import type { Answered, Refused } from "./outcome.js";

/**
 * Answers a scene.
 * @param name of the calculation
 * @param raw the scene as it came from outside; nothing is assumed of it
 * @returns the answer, or a problem that says all that is wrong
 * @throws only where the program itself is wrong
 */
export function answer(name: OperationName, raw: unknown): Answered | Refused {
  const prepared = calculationOf(name).prepare(raw);
  return prepared.status === "ready" ? prepared.compute() : prepared;
}
