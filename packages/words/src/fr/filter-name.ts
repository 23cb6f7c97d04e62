import type { NamedFilter } from "@sunfathom/planner";
import { densityOf } from "./format.js";

type Kind = Exclude<NamedFilter["kind"], "none">;

const COLOURS: Readonly<Record<Kind, string>> = {
  red: "rouge",
  magenta: "magenta",
  blue: "bleu",
  green: "vert",
  neutral: "ND",
};

/** Un filtre d’après sa couleur, sans article. */
export const kindName = (kind: Kind): string => `filtre ${COLOURS[kind]}`;

/** Un filtre au fil d’une phrase. Sans filtre, un sujet à l’infinitif. */
export function filterName({ kind, density, id, shelf }: NamedFilter): string {
  if (kind === "none") return "se passer de filtre";
  const nominal = `${kindName(kind)} ${density === undefined ? "mesuré" : densitiesOf(density, shelf)}`;
  return id === undefined ? `un ${nominal}` : `${id} (${nominal})`;
}

/** Tel qu’il est, ou tel qu’il s’achète. */
function densitiesOf(density: number, shelf: NamedFilter["shelf"]): string {
  if (!shelf) return `de densité ${densityOf(density)}`;
  const { from, to } = shelf;
  return from === to
    ? `de densité ${densityOf(from)} environ`
    : `de densité ${densityOf(from)} (ou jusqu’à ${densityOf(to)})`;
}

/** Un filtre déjà en place. */
export const theFilter = (filter: NamedFilter): string =>
  filterName(filter).replace(/^un filtre /, "le filtre ");

/** Ce que l’objectif porte. */
export const onLens = (filter: NamedFilter): string =>
  filter.kind === "none" ? "sans filtre sur l’objectif" : `avec ${filterName(filter)} sur l’objectif`;

/** Quand un autre est en place. */
export const takeOff = (p: { instead_of?: NamedFilter }): string =>
  p.instead_of ? `Retirez ${theFilter(p.instead_of)}. ` : "";
