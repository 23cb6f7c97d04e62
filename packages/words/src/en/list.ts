import { metres, shown } from "./format.js";

/** A spoken list: "one, two and three". */
export const spoken = (all: readonly string[]): string =>
  all.length < 2 ? all.join("") : `${all.slice(0, -1).join(", ")} and ${all[all.length - 1]}`;

/** Depths as a spoken list: "6.3, 7.7 and 9.1 m". */
export function spokenDepths(depths: readonly number[]): string {
  return `${spoken(depths.map((d) => shown(d, 1)))} m`;
}

/** Depths that a diver can hit, as a spoken list: "7, 9 and 12 m". */
export const depths = (all: readonly number[]): string => `${spoken(all.map(metres))} m`;
