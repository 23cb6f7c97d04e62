import type { CardNotes } from "../codes/card-notes.js";
import { type Coded, codesOf } from "../codes/coded.js";
import type { OnCard, WhiteBalanceFigures } from "../result/white-balance.js";

const say = codesOf<CardNotes>();

/** What stands in for the card, where it lies on a histogram, and what the edit makes of it where the camera falls short. */
export function cardNotesOf(
  { depths }: WhiteBalanceFigures,
  { stand_ins, white_card_level_percent: white, grey_card_level_percent: grey }: OnCard,
): Coded<CardNotes>[] {
  if (!stand_ins) return [];
  const ranked = stand_ins.map(({ stand_in, cast_left_delta_e00: cast }) => ({ stand_in, cast }));
  return [
    say("without_card", { ranked }),
    white === undefined || grey === undefined
      ? say("card_level_by_maker")
      : say("card_level", { white_percent: white, grey_percent: grey }),
    ...(depths.some(({ in_reach }) => !in_reach) ? [say("balance_in_edit")] : []),
  ];
}
