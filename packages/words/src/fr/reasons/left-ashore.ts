import type { LeftAshoreReasons, NamedFilter } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { theFilter } from "../filter-name.js";
import { capital, castOf, shown } from "../format.js";

/** Pourquoi un filtre que l’on possède reste à terre. */
export const leftAshoreReasons: Texts<LeftAshoreReasons, string> = {
  lens_filter_ashore: (p) =>
    ashore(
      p.filter,
      p.times < 1.05
        ? "il coûte de la lumière et n’apporte rien"
        : `avec lui, l’erreur de couleur serait ${larger(p.times)}`,
    ),
  neutral_ashore: (p) => ashore(p.filter, "sans lui, il n’y a pas trop de lumière"),
  lamp_filter_ashore: (p) =>
    ashore(
      p.filter,
      p.cast
        ? `sur les phares vidéo, il laisserait ${castOf(p.cast.left)}`
        : "aucun phare vidéo n’a besoin ici d’être accordé à la lumière du jour",
    ),
};

const ashore = (filter: NamedFilter, why: string): string =>
  `${capital(theFilter(filter))} reste à terre : ${why}.`;

const larger = (times: number): string =>
  times < 1.5
    ? "plus grande"
    : times < 2.5
      ? "environ deux fois plus grande"
      : `environ ${shown(times)} fois plus grande`;
