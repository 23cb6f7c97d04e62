import type { LeftAshoreReasons, NamedFilter } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { theFilter } from "../filter-name.js";
import { capital, castOf, shown } from "../format.js";

/** Por qué un filtro propio se queda en tierra. */
export const leftAshoreReasons: Texts<LeftAshoreReasons, string> = {
  lens_filter_ashore: (p) =>
    ashore(
      p.filter,
      p.times < 1.05 ? "cuesta luz y no mejora nada" : `con él el error de color ${larger(p.times)}`,
    ),
  neutral_ashore: (p) => ashore(p.filter, "sin él no hay demasiada luz"),
  lamp_filter_ashore: (p) =>
    ashore(
      p.filter,
      p.cast
        ? `en los focos de vídeo dejaría ${castOf(p.cast.left)}`
        : "aquí ningún foco de vídeo tiene que casar con la luz del día",
    ),
};

const ashore = (filter: NamedFilter, why: string): string =>
  `${capital(theFilter(filter))} se queda en tierra: ${why}.`;

const larger = (times: number): string =>
  times < 1.5
    ? "sería mayor"
    : times < 2.5
      ? "sería más o menos el doble"
      : `se multiplicaría más o menos por ${shown(times)}`;
