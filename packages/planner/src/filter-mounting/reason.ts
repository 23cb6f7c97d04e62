import { type Reason as CodedReason, reasonsOf } from "../codes/coded.js";
import type { FilterMountingReasons } from "../codes/filter-mounting.js";

export type Reason = CodedReason<FilterMountingReasons>;

export const reason = reasonsOf<FilterMountingReasons>();
