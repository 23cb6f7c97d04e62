import type { Calculation } from "./calculation.js";
import { attenuation } from "./calculations/attenuation.js";
import { colourRecovery } from "./calculations/colour-recovery.js";
import { diveAdvice } from "./calculations/dive-advice.js";
import { exposureLoss } from "./calculations/exposure-loss.js";
import { filterChoice } from "./calculations/filter-choice.js";
import { filterMounting } from "./calculations/filter-mounting.js";
import { mixedLight } from "./calculations/mixed-light.js";
import { whiteBalance } from "./calculations/white-balance.js";

/**
 * Every calculation. Another one is one more entry here, from a file of its own: who computes one of them imports its file
 * alone.
 */
export const calculations = [
  attenuation,
  filterChoice,
  exposureLoss,
  mixedLight,
  whiteBalance,
  colourRecovery,
  diveAdvice,
  filterMounting,
] as const;

export type OperationName = (typeof calculations)[number]["name"];

/** @throws Error for a name that the table does not have */
export function calculationOf(name: OperationName): Calculation {
  const calculation = calculations.find((entry) => entry.name === name);
  if (calculation === undefined) throw new Error(`There is no calculation ${name}.`);
  return calculation;
}
