import type { StandIn } from "@sunfathom/optics";
import type { Nothing } from "./coded.js";

/** What is worth knowing of a card that a white balance is set on. */
export interface CardNotes {
  /** What stands in, the least cast first. */
  without_card: { ranked: readonly { stand_in: StandIn; cast: number }[] };
  card_level: { white_percent: number; grey_percent: number };
  card_level_by_maker: Nothing;
  /** Where the camera falls short: film the card, and balance on it in the edit. */
  balance_in_edit: Nothing;
}
