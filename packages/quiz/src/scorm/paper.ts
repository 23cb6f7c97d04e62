/** A paper as a practice package holds it: what its player shows and marks. Plain data, written into the page. */
import type { PlayerTexts } from "@sunfathom/words";
import { ownCautions } from "../cautions/cautions-of.js";
import type { GradeWords } from "../grade/grade-with.js";
import type { Item } from "../item/item.js";
import { CATALOGUES, type Language } from "../messages/catalogue.js";
import { hash32 } from "../random/draw.js";

export interface PracticeItem {
  item: Item;
  /** Path of the picture's file, where there is one. */
  picture?: string;
  /** What to take care of, beyond what goes for the whole paper. */
  cautions: readonly string[];
  /** The solution's sources in a sentence. */
  sources: string;
}

export interface Paper {
  /** The same for the same questions: what a platform kept of another paper is not taken for this one's. */
  id: string;
  items: readonly PracticeItem[];
  words: GradeWords;
  say: PlayerTexts;
}

/** A name for these questions in this order. */
const paperId = (items: readonly Item[]): string =>
  hash32(items.map(({ fingerprint }) => fingerprint).join())
    .toString(16)
    .padStart(8, "0");

export const pictureOf = ({ id, picture }: Item): string | undefined =>
  picture ? `pictures/${id}.svg` : undefined;

/** The picture is a file of its own. */
const withoutSvg = (item: Item): Item =>
  item.picture ? { ...item, picture: { svg: "", alt: item.picture.alt } } : item;

export function paperOf(items: readonly Item[], language: Language, say: PlayerTexts): Paper {
  const { common, thousands } = CATALOGUES[language];
  const { right, wrongNumber, partlyRight, blank, missed } = common;
  return {
    id: paperId(items),
    items: items.map((item) => {
      const picture = pictureOf(item);
      return {
        item: withoutSvg(item),
        ...(picture === undefined ? {} : { picture }),
        cautions: ownCautions(item, language).map(({ text }) => text),
        sources: common.sources({ sources: item.solution.sources }),
      };
    }),
    words: { right, wrongNumber, partlyRight, blank, missed, thousands },
    say,
  };
}
