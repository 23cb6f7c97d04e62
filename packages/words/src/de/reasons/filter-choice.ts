import type { FilterChoiceReasons, Finish } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { dialShutter, settings } from "../dial.js";
import { filterName } from "../filter-name.js";
import { between, densityOf, depth, neutral, stops, strength } from "../format.js";
import { filterMainReasons } from "./filter-main.js";

/** Wonach das Bild beurteilt wird. */
const judgedBy: Record<Finish, string> = {
  in_camera:
    "Beurteilt wird das Bild, wie es aus der Kamera kommt, mit ihrem Weißabgleich und ohne Bearbeitung.",
  basic_edit:
    "Beurteilt wird das Bild nach einer einfachen Bearbeitung: Weißabgleich, Belichtung, Schwarzpunkt und Sättigung, je ein Regler.",
  matched:
    "Beurteilt wird das Bild nach einer Farbkorrektur, die auf eine im selben Licht gefilmte Farbtafel abgestimmt ist.",
};

const otherwise: Record<Finish, string> = {
  in_camera: "Für Bilder direkt aus der Kamera",
  basic_edit: "Mit einer einfachen Bearbeitung hinterher",
  matched: "Mit einer Farbkorrektur nach einer Farbtafel",
};

/** Wonach belichtet wird, und wie hell das bei diesen Einstellungen ist. */
const carded: Record<
  FilterChoiceReasons["light_to_spare"]["metering"],
  { what: string; right: (at: string) => string }
> = {
  white_card: {
    what: "eine Weißkarte",
    right: (at) => `nutzt eine Weißkarte ${at} den Tonwertumfang ganz aus`,
  },
  grey_card: { what: "eine Graukarte", right: (at) => `ist eine Graukarte ${at} richtig belichtet` },
  picture: { what: "das ganze Bild", right: (at) => `ist das ganze Bild ${at} richtig belichtet` },
};

/** Gründe zur Wahl des Filters. */
export const filterChoiceReasons: Texts<FilterChoiceReasons, string> = {
  ...filterMainReasons,
  finish_judged: (p) => judgedBy[p.finish],
  finish_turns_choice: (p) =>
    p.error > p.advised_error
      ? `${otherwise[p.finish]} lass den Filter weg: Der empfohlene verbessert die Farben zu wenig, um ihn anzubringen.`
      : `${otherwise[p.finish]} ${p.filter.kind === "none" ? "bist du ganz ohne Filter besser dran" : `wäre ${filterName(p.filter, "wer")} die bessere Wahl`}: Dann bleibt ein ${strength(p.error)}er Farbfehler, aber ein kleinerer als mit der Empfehlung.`,
  denser_gains_nothing_below: (p, u) =>
    `Bis ${depth(p.depth_m, u)} steigt die beste Dichte, auf ${densityOf(p.density)}. Darunter ist ein schwächerer Filter oder keiner besser, weil das Licht oder das Rot selbst ausgeht.`,
  filter_brings_balance_into_reach: (p, u) =>
    `Ohne Filter schafft die Kamera ab ${depth(p.depth_m, u)} keinen Weißabgleich (in ${depth(p.deepest_m, u)} liegt sie um ${stops(p.residual_stops)} daneben). Der Filter hält Grün und Blau zurück, sodass du auf Rot belichten kannst${p.reach_from_m !== undefined && p.reach_to_m !== undefined ? `, und die Kamera schafft ${between(p.reach_from_m, p.reach_to_m, u)} einen Weißabgleich` : ", und der Weißabgleich kommt näher heran"}.`,
  balance_out_of_reach: (p, u) =>
    `Ab ${depth(p.depth_m, u)} schafft die Kamera keinen Weißabgleich (in ${depth(p.deepest_m, u)} liegt sie um ${stops(p.residual_stops)} daneben). Nimm den Rest in der Farbkorrektur heraus.`,
  balance_in_reach_without: () => "Den Weißabgleich schafft die Kamera auch ohne Filter.",
  light_to_spare: (p, u) =>
    `Es ist reichlich Licht da: In ${depth(p.depth_m, u)} ohne Filter ${carded[p.metering].right(`mit ${settings(p)}`)}.`,
  light_is_too_much: (p, u) =>
    `In ${depth(p.depth_m, u)} ohne Filter ist ${carded[p.metering].what} um ${stops(p.excess_stops)} zu hell mit ${settings(p)}, der knappsten Belichtung, die du der Kamera erlaubst. Erlaube eine kleinere Blende, oder nimm ${neutral(p.density)}.`,
  colour_filter_as_neutral: () =>
    "Gegen ausgefressene Stellen wirkt ein Farbfilter auch nur wie ein ND-Filter. Dafür lohnt er sich nicht.",
  light_has_run_out: (p, u) =>
    p.short_stops > 0.05
      ? `Es ist zu dunkel: In ${depth(p.depth_m, u)} bleibt ${carded[p.metering].what} mit ${settings(p)} selbst ohne Filter um ${stops(p.short_stops)} zu dunkel, und jeder Filter kostet noch mehr Licht.`
      : `Das Licht ist knapp: In ${depth(p.depth_m, u)} ohne Filter ${carded[p.metering].right(`erst mit ${settings(p)}`)}. Jede Blendenstufe, die ein Filter kostet, bezahlst du mit Rauschen.`,
  light_holds_density: (p, u) =>
    `Das Licht geht früher aus als die Farbe. Mit mehr davon wäre ${filterName(p.wanted, "wer")} besser. In ${depth(p.depth_m, u)} braucht das Bild schon ${settings(p)} und ${dialShutter(p.shutter_s)}, und mehr Dichte bezahlst du mit Rauschen. Weniger Bilder pro Sekunde oder ein lichtstärkeres Objektiv lassen sie zu.`,
  densest_tried: (p) =>
    `Der dichteste Filter, der hier geprüft wird, hat die Dichte ${densityOf(p.density)}, und in diesen Tiefen ist er der beste: Ein noch dichterer wäre vielleicht besser. So dichte gibt es kaum; von schwächeren kommt der dichteste, den du bekommst, am nächsten heran.`,
  filter_shape_assumed: () =>
    "Keine Norm legt die Kurve eines Filters fest. Die Formen hier sind angenommen; wie andere Filter gleichen Namens davon abweichen, steckt in der Unsicherheit.",
  filter_trade_rule_blue: (_, u) => `Übliche Praxis: Rotfilter in blauem Wasser, ab etwa ${depth(3, u)}.`,
  filter_trade_rule_green: () => "Übliche Praxis: Magentafilter in grünem Wasser.",
};
