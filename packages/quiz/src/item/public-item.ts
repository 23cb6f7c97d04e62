import type { Entry, Interaction, Item, Level, Picture, Topic } from "./item.js";

/** A question as learners see it: neither the key nor anything that it could be told from, beyond what the question states. */
export interface PublicItem {
  id: string;
  fingerprint: string;
  template: string;
  topic: Topic;
  level: Level;
  interaction: Interaction;
  stem: string;
  picture?: Picture;
  difficulty: number;
  /** Choices, and the entries to put in order. */
  options?: Entry[];
  /** Matching: what to match, and with what. */
  left?: Entry[];
  right?: Entry[];
  /** Numeric: unit and decimals of the answer. */
  unit?: string;
  decimals?: number;
}

const shown = ({ id, text }: Entry): Entry => ({ id, text });

/** Field by field, so that nothing new leaks by being forgotten here. */
export function publicItem(item: Item): PublicItem {
  const common = {
    id: item.id,
    fingerprint: item.fingerprint,
    template: item.template,
    topic: item.topic,
    level: item.level,
    interaction: item.interaction,
    stem: item.stem,
    ...(item.picture ? { picture: { svg: item.picture.svg, alt: item.picture.alt } } : {}),
    difficulty: item.difficulty,
  };
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice":
      return { ...common, options: item.options.map(shown) };
    case "numeric":
      return { ...common, unit: item.unit, decimals: item.decimals };
    case "ordering":
      return { ...common, options: item.entries.map(shown) };
    case "matching":
      return { ...common, left: item.left.map(shown), right: item.right.map(shown) };
  }
}
