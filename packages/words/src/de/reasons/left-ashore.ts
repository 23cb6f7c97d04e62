import type { LeftAshoreReasons, NamedFilter } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { filterName } from "../filter-name.js";
import { capital, castOf, shown } from "../format.js";

/** Warum ein eigener Filter an Land bleibt. */
export const leftAshoreReasons: Texts<LeftAshoreReasons, string> = {
  lens_filter_ashore: (p) =>
    ashore(
      p.filter,
      p.times < 1.05 ? "Er kostet Licht und bringt nichts" : `Mit ihm wäre der Farbfehler ${larger(p.times)}`,
    ),
  neutral_ashore: (p) => ashore(p.filter, "Ohne ihn ist es nicht zu hell"),
  lamp_filter_ashore: (p) =>
    ashore(
      p.filter,
      p.cast
        ? `Auf den Videolampen ließe er ${castOf(p.cast.left)}`
        : "Hier müssen keine Videolampen zum Tageslicht passen",
    ),
};

const ashore = (filter: NamedFilter, why: string): string =>
  `${capital(filterName(filter, "wer"))} bleibt an Land: ${why}.`;

const larger = (times: number): string =>
  times < 1.5 ? "größer" : times < 2.5 ? "etwa doppelt so groß" : `etwa ${shown(times)}-mal so groß`;
