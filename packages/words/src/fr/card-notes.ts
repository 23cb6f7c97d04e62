import type { BalanceOnStandIn, CardNotes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { castOf, percent, spoken } from "./format.js";

const STAND_INS: Readonly<Record<BalanceOnStandIn["stand_in"], string>> = {
  white_slate: "une ardoise blanche",
  pale_sand: "du sable clair",
  grey_glove: "un gant gris uni",
  hand: "votre main nue",
};

/** Ce qu’il faut savoir de la charte qui sert à la balance des blancs. */
export const cardNotes: Texts<CardNotes, string> = {
  without_card: (p) =>
    `Sans charte, prenez ce que vous avez sous la main, dans cet ordre : ${spoken(p.ranked.map(({ stand_in, cast }) => `${STAND_INS[stand_in]} laisse ${castOf(cast)}`))}.`,
  card_level: (p) =>
    `Exposez pour qu’une charte blanche soit à environ ${percent(p.white_percent)} sur l’histogramme ou les zébras, une charte grise à ${percent(p.grey_percent)} : une charte blanche brûlée donne une balance fausse.`,
  card_level_by_maker: () =>
    "En enregistrement log, le tableau du fabricant dit à quel pourcentage se place une charte blanche ; ne la laissez pas brûler, ou la balance sera fausse.",
  balance_in_edit: () =>
    "Filmez la charte quelques secondes après chaque balance : au montage, prenez-y le point blanc et reportez-le sur tous les plans tournés à cette profondeur.",
};
