import type { NamedFilter } from "@sunfathom/planner";
import { densityOf } from "./format.js";

type Kind = Exclude<NamedFilter["kind"], "none">;

const KINDS: Readonly<Record<Kind, string>> = {
  red: "Rotfilter",
  magenta: "Magentafilter",
  blue: "Blaufilter",
  green: "Grünfilter",
  neutral: "ND-Filter",
};

/** Ein Filter nach seiner Farbe, ohne Artikel. */
export const kindName = (kind: Kind): string => KINDS[kind];

const ARTICLES = {
  wer: ["kein Filter", "ein", "gemessener"],
  wen: ["keinen Filter", "einen", "gemessenen"],
  /** „Wen“, von einem, der schon da ist. */
  den: ["keinen Filter", "den", "gemessenen"],
  wem: ["keinem Filter", "einem", "gemessenen"],
} as const;

/** Ein Filter mitten im Satz, im Fall, nach dem man fragt. */
export function filterName({ kind, density, id, shelf }: NamedFilter, fall: keyof typeof ARTICLES): string {
  const [none, article, measured] = ARTICLES[fall];
  if (kind === "none") return none;
  if (id !== undefined)
    return `${id} (${density === undefined ? `gemessener ${KINDS[kind]}` : `${KINDS[kind]} der Dichte ${densityOf(density)}`})`;
  return density === undefined
    ? `${article} ${measured} ${KINDS[kind]}`
    : `${article} ${KINDS[kind]} ${densitiesOf(density, shelf)}`;
}

/** So, wie er ist, oder so, wie man ihn kauft. */
function densitiesOf(density: number, shelf: NamedFilter["shelf"]): string {
  if (!shelf) return `der Dichte ${densityOf(density)}`;
  const { from, to } = shelf;
  return from === to
    ? `etwa der Dichte ${densityOf(from)}`
    : `der Dichte ${densityOf(from)} (oder bis ${densityOf(to)})`;
}

/** Eine Wahl unter mehreren, mit „wäre“ oder „ist“: „ein Rotfilter wäre“, „ganz ohne Filter wäre es“. */
export const choiceOf = (filter: NamedFilter, verb: "ist" | "wäre"): string =>
  filter.kind === "none" ? `ganz ohne Filter ${verb} es` : `${filterName(filter, "wer")} ${verb}`;

/** Wo jetzt ein anderer darauf ist. */
export const takeOff = (p: { instead_of?: NamedFilter }): string =>
  p.instead_of ? `Nimm ${filterName(p.instead_of, "den")} ab. ` : "";
