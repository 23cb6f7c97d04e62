import type { NamedFilter } from "@sunfathom/planner";
import { densityOf } from "./format.js";

type Kind = Exclude<NamedFilter["kind"], "none">;

const KINDS: Readonly<Record<Kind, string>> = {
  red: "filtro rojo",
  magenta: "filtro magenta",
  blue: "filtro azul",
  green: "filtro verde",
  neutral: "filtro ND",
};

/** Un filtro por su color, sin artículo. */
export const kindName = (kind: Kind): string => KINDS[kind];

/** Tal como es, o como se compra. */
function densitiesOf(density: number, shelf: NamedFilter["shelf"]): string {
  if (!shelf) return `de densidad ${densityOf(density)}`;
  const { from, to } = shelf;
  return from === to
    ? `de densidad aproximada ${densityOf(from)}`
    : `de densidad ${densityOf(from)} (o hasta ${densityOf(to)})`;
}

const bare = (kind: Kind, density: number | undefined, shelf: NamedFilter["shelf"]): string =>
  density === undefined ? `${KINDS[kind]} medido` : `${KINDS[kind]} ${densitiesOf(density, shelf)}`;

const withArticle =
  (article: "un" | "el") =>
  ({ kind, density, id, shelf }: NamedFilter): string => {
    if (kind === "none") return "ningún filtro";
    return id === undefined
      ? `${article} ${bare(kind, density, shelf)}`
      : `${id} (${bare(kind, density, shelf)})`;
  };

/** Un filtro del que aún no se ha hablado. */
export const filterName = withArticle("un");

/** Un filtro que ya está puesto. */
export const theFilter = withArticle("el");

/** Una opción entre varias: un filtro, o ninguno. */
export const choiceOf = (filter: NamedFilter): string =>
  filter.kind === "none" ? "ir sin filtro" : filterName(filter);

/** Si ahora hay otro puesto. */
export const takeOff = (p: { instead_of?: NamedFilter }): string =>
  p.instead_of ? `Quite ${theFilter(p.instead_of)}. ` : "";
