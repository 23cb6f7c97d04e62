import type { BalanceOnStandIn, CardNotes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { castOf, percent, spoken } from "./format.js";

const STAND_INS: Readonly<Record<BalanceOnStandIn["stand_in"], string>> = {
  white_slate: "eine weiße Schreibtafel",
  pale_sand: "heller Sand",
  grey_glove: "ein einfarbig grauer Handschuh",
  hand: "deine bloße Hand",
};

/** Was man über die Karte für den Weißabgleich wissen sollte. */
export const cardNotes: Texts<CardNotes, string> = {
  without_card: (p) =>
    `Ohne Karte nimm aus dieser Reihe das Erste, das du dabeihast: ${spoken(p.ranked.map(({ stand_in, cast }) => `${STAND_INS[stand_in]} hinterlässt ${castOf(cast)}`))}.`,
  card_level: (p) =>
    `Belichte so, dass eine Weißkarte im Histogramm oder bei den Zebras bei etwa ${percent(p.white_percent)} liegt, eine Graukarte bei ${percent(p.grey_percent)}: Eine ausgefressene Weißkarte ergibt einen falschen Weißabgleich.`,
  card_level_by_maker: () =>
    "Bei einer Log-Aufnahme steht in der Tabelle des Herstellers, bei wie viel Prozent eine Weißkarte liegt; sie darf nicht ausfressen, sonst stimmt der Weißabgleich nicht.",
  balance_in_edit: () =>
    "Filme die Karte nach jedem Weißabgleich ein paar Sekunden lang: Nimm davon in der Bearbeitung den Weißpunkt und übertrag ihn auf alle Aufnahmen aus dieser Tiefe.",
};
