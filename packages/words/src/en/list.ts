import { metres } from "./format.js";

/** A spoken list: "one, two and three". */
export const spoken = (all: readonly string[]): string =>
  all.length < 2 ? all.join("") : `${all.slice(0, -1).join(", ")} and ${all[all.length - 1]}`;

/** Depths that a diver can hit, as a spoken list: "7, 9 and 12 m". */
export const depths = (all: readonly number[]): string => `${spoken([...new Set(all.map(metres))])} m`;
