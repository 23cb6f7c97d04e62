import type { NamedFilter } from "@sunfathom/planner";
import { densityOf } from "./format.js";

/** A filter in a sentence. */
export function filterName({ kind, density, id }: NamedFilter): string {
  if (kind === "none") return "no filter";
  const nominal =
    density === undefined ? `a measured ${kind} filter` : `a ${kind} filter of density ${densityOf(density)}`;
  return id === undefined ? nominal : `${id} (${nominal})`;
}

/** One way among several: a filter, or none. */
export const choiceOf = (filter: NamedFilter): string =>
  filter.kind === "none" ? "going without a filter" : filterName(filter);

/** Where another filter is on now. */
export const takeOff = (p: { instead_of?: NamedFilter }): string =>
  p.instead_of ? `Take ${filterName(p.instead_of)} off. ` : "";
