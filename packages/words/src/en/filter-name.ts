import type { NamedFilter } from "@sunfathom/planner";
import { densityOf } from "./format.js";

/** A filter in a sentence. */
export function filterName({ kind, density, id, shelf }: NamedFilter): string {
  if (kind === "none") return "no filter";
  const nominal =
    density === undefined
      ? `a measured ${kind} filter`
      : `a ${kind} filter of ${densitiesOf(density, shelf)}`;
  return id === undefined ? nominal : `${id} (${nominal})`;
}

/** As it is, or as one to be bought. */
function densitiesOf(density: number, shelf: NamedFilter["shelf"]): string {
  if (!shelf) return `density ${densityOf(density)}`;
  const { from, to } = shelf;
  return from === to
    ? `about density ${densityOf(from)}`
    : `density ${densityOf(from)} (or up to ${densityOf(to)})`;
}

/** One way among several: a filter, or none. */
export const choiceOf = (filter: NamedFilter): string =>
  filter.kind === "none" ? "going without a filter" : filterName(filter);

/** Where another filter is on now. */
export const takeOff = (p: { instead_of?: NamedFilter }): string =>
  p.instead_of ? `Take ${filterName(p.instead_of)} off. ` : "";
