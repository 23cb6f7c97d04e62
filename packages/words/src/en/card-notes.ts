import type { BalanceOnStandIn, CardNotes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { castOf, shown } from "./format.js";
import { spoken } from "./list.js";

const STAND_INS: Readonly<Record<BalanceOnStandIn["stand_in"], string>> = {
  white_slate: "a white slate",
  pale_sand: "pale sand",
  grey_glove: "a plain grey glove",
  hand: "your bare hand",
};

/** What is worth knowing of the card that a white balance is set on. */
export const cardNotes: Texts<CardNotes, string> = {
  without_card: (p) =>
    `Without a card, take the first of these that you have: ${spoken(p.ranked.map(({ stand_in, cast }) => `${STAND_INS[stand_in]} leaves ${castOf(cast)}`))}.`,
  card_level: (p) =>
    `Expose so that a white card lies at about ${shown(p.white_percent)} % on the histogram or zebras, a grey one at ${shown(p.grey_percent)} %: a white card that is clipped gives a wrong balance.`,
  card_level_by_maker: () =>
    "In a log recording the maker's table says at how many percent a white card lies; keep it clear of clipping, or the balance is wrong.",
  balance_in_edit: () =>
    "Film the card for a few seconds after each balance: in the edit, take the white point from it and copy that to all shots of that depth.",
};
