import type { LeftAshoreReasons, NamedFilter } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { capital } from "../capital.js";
import { filterName } from "../filter-name.js";
import { castOf, shown } from "../format.js";

/** Why a filter that is owned stays ashore. */
export const leftAshoreReasons: Texts<LeftAshoreReasons, string> = {
  lens_filter_ashore: (p) =>
    ashore(
      p.filter,
      p.times < 1.05
        ? "it costs light and gains nothing"
        : `with it the colour error would be ${larger(p.times)}`,
    ),
  neutral_ashore: (p) => ashore(p.filter, "it is not too bright without it"),
  lamp_filter_ashore: (p) =>
    ashore(
      p.filter,
      p.cast
        ? `on the video lights it would leave ${castOf(p.cast.left)}`
        : "no video lights have to match daylight here",
    ),
};

const ashore = (filter: NamedFilter, why: string): string =>
  `${capital(filterName(filter))} stays ashore: ${why}.`;

const larger = (times: number): string =>
  times < 1.5 ? "larger" : times < 2.5 ? "about twice as large" : `about ${shown(times)} times as large`;
