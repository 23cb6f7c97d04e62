import type { FilterMainReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { choiceOf, filterName, kindName } from "../filter-name.js";
import {
  between,
  capital,
  densityOf,
  depth,
  distance,
  errorFall,
  fromTo,
  kelvin,
  shareOf,
  strength,
} from "../format.js";

/** Was bei der Wahl des Filters entscheidet. */
export const filterMainReasons: Texts<FilterMainReasons, string> = {
  filter_earns: (p, u) =>
    `${capital(between(p.min_m, p.max_m, u))} gilt: ${capital(filterName(p.filter, "wer"))} ${errorFall(p.without_e, p.with_e)}.`,
  no_filter_earns: (p) =>
    p.best_change < 0
      ? `Kein Filter verbessert die Farben genug. Der beste, ${filterName(p.best, "wer")}, würde zu wenig bringen, um ihn anzubringen.`
      : `Kein Filter verbessert die Farben. Selbst der beste, ${filterName(p.best, "wer")}, würde sie verschlechtern.`,
  no_filter_owned: () =>
    "In deiner Ausrüstung ist kein Filter fürs Objektiv, deshalb wird keiner empfohlen. Lass `kit` weg, wenn du wissen willst, welcher passen würde.",
  change_at_depth: (p, u) =>
    `Der Filter verbessert die Farben ${fromTo(p.from_m, p.to_m, u)}. Setz ihn auf, wenn du in diesen Bereich kommst, nimm ihn ab, wenn du ihn verlässt, und mach jedes Mal einen neuen Weißabgleich.`,
  serves_part_of_range: (p, u) =>
    `Er verbessert die Farben ${fromTo(p.from_m, p.to_m, u)} und verschlechtert sie außerhalb. Unter Wasser kannst du ihn nicht wechseln, und über den ganzen Bereich lohnt er sich trotzdem.`,
  part_would_gain: (p, u) =>
    `Über den ganzen Bereich lohnt sich kein Filter, aber ${between(p.from_m, p.to_m, u)} ${p.kind === "none" ? "keiner" : `ein ${kindName(p.kind)}`}. Wenn du nur dort filmst, frag nach diesem Bereich.`,
  only_lamps_would_help: (p) =>
    `Mit jedem Filter bleibt ein ${strength(p.error)}er Farbfehler: Die fehlenden Farben sind hier zu schwach. Geh mit Videolampen nah ans Motiv, bleib flacher, oder nimm die Farben, wie sie sind.`,
  densities_as_good: (p) =>
    `Von Dichte ${densityOf(p.from_density)} bis ${densityOf(p.to_density)} siehst du keinen Unterschied. Der schwächste Filter kostet am wenigsten Licht.`,
  no_red_to_gain: (p, u) =>
    `Ab ${depth(p.depth_m, u)} ist kaum noch Rot da: Selbst hinter ${p.filter.id === undefined ? filterName(p.filter, "wem") : filterName(p.filter, "wer")} ist weniger als 1 % vom Signal des Rotkanals rotes Licht. Ein Filter bringt dort nichts.`,
  filter_adds_no_red: (p, u) =>
    `Ein Filter bringt kein rotes Licht dazu. In ${depth(p.depth_m, u)} ist von dem, was die Kamera als Rot aufnimmt, ${shareOf(p.with_share * 100)} wirklich rotes Licht, ohne Filter ${shareOf(p.without_share * 100)}: Der Rest ist Grün und Blau.`,
  lamps_are_the_only_light: (p) =>
    `Deine Videolampen sind das einzige Licht: Ein Filter auf dem Objektiv würde bloß etwas davon wegnehmen. Mach den Weißabgleich auf eine Karte in ihrem Licht${p.lamp ? `, an der Lampe etwa ${kelvin(p.lamp.cct_K)}` : ""}.`,
  near_tie: (p) =>
    `Es ist knapp. ${capital(choiceOf(p.runner_up, "ist"))} fast so gut und vielleicht sogar die bessere Wahl.`,
  subject_out_of_sight: (p, u) =>
    `Das trübe Wasser verdeckt das Motiv: Es ist ${distance(p.distance_m, u)} weit weg, und man sieht hier etwa ${distance(p.visibility_m, u)} weit. Ein Filter würde nur die Farbe der Trübung ändern. Geh erst näher heran.`,
};
