import type { calculations } from "../generated/calculations.js";

export type OperationName = (typeof calculations)[number]["name"];
