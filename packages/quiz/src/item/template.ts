import type { Advice } from "@sunfathom/planner";
import type { Show } from "@sunfathom/words";
import type { Catalogue } from "../messages/catalogue.js";
import type { Draw } from "../random/draw.js";
import type { Aim } from "./aim.js";
import type { Draft } from "./draft.js";
import type { Interaction, Level, Topic } from "./item.js";

/** What a template works with. */
export interface Maker {
  draw: Draw;
  /** Where the right option shall stand among the others by size. */
  aim: Aim;
  level: Level;
  /** Texts in the language of the paper. */
  say: Catalogue;
  /** Numbers with their units, as the paper shows them. */
  show: Show;
}

export interface Template {
  /** Stable, in snake_case. */
  id: string;
  topic: Topic;
  interaction: Interaction;
  levels: readonly Level[];
  /** What its questions or their answers advise or are about that calls for cautions. */
  advises?: readonly Advice[];
  /** One question, or undefined where what was drawn would not be fair or clear: then the next draw is tried. */
  make(maker: Maker): Draft | undefined;
}
