import { calculationOf, type OperationName } from "./calculations.js";
import type { Answered, Refused } from "./outcome.js";

/** Answers a scene by the name of what is asked, as the calculation's own `reply` does. */
export function answer(name: OperationName, raw: unknown): Answered | Refused {
  return calculationOf(name).reply(raw);
}
