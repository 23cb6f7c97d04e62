import { shown } from "./format.js";

/** Depths as a spoken list: "6.3, 7.7 and 9.1 m". */
export function spokenDepths(depths: readonly number[]): string {
  const all = depths.map((d) => shown(d, 1));
  return all.length < 2 ? `${all.join("")} m` : `${all.slice(0, -1).join(", ")} and ${all[all.length - 1]} m`;
}
