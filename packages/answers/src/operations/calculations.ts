import { calculations } from "../generated/calculations.js";
import type { Calculation } from "./calculation.js";

export type OperationName = (typeof calculations)[number]["name"];

/** @throws Error for a name that the table does not have */
export function calculationOf(name: OperationName): Calculation {
  const calculation = calculations.find((entry) => entry.name === name);
  if (calculation === undefined) throw new Error(`There is no calculation ${name}.`);
  return calculation;
}
