/** The files of a practice package for SCORM 1.2: page, player, pictures and manifest. Marking is inside, and so are the keys. */
import { playerTexts } from "@sunfathom/words";
import { cautionsOf } from "../cautions/cautions-of.js";
import { PLAYER_SCRIPT, PLAYER_STYLE } from "../generated/player.js";
import type { Item } from "../item/item.js";
import type { Language } from "../messages/catalogue.js";
import type { PackageFile } from "../zip/zip-files.js";
import { zipFiles } from "../zip/zip-files.js";
import { manifestOf } from "./manifest.js";
import { PLAYER_PATH, pageOf, STYLE_PATH } from "./page.js";
import { paperOf, pictureOf } from "./paper.js";

export interface PracticeOptions {
  language: Language;
  title: string;
}

const PAGE_PATH = "index.html";

function* practiceFiles(
  items: readonly Item[],
  { language, title }: PracticeOptions,
): Generator<PackageFile> {
  const say = playerTexts[language];
  const paper = paperOf(items, language, say);
  const cautions = cautionsOf(items, language).map(({ text }) => text);
  const pictures = items.flatMap((item) => {
    const path = pictureOf(item);
    return path && item.picture ? [{ path, content: item.picture.svg }] : [];
  });
  const [first] = items;
  yield {
    path: "imsmanifest.xml",
    content: manifestOf({
      identifier: `paper-${paper.id}`,
      title,
      language,
      files: [PAGE_PATH, PLAYER_PATH, STYLE_PATH, ...pictures.map(({ path }) => path)],
      description: `${say.practice} ${say.keysInside}`,
      keywords: [...new Set(items.map(({ topic }) => topic))],
      level: first?.level ?? "beginner",
      difficulty: items.reduce((sum, { difficulty }) => sum + difficulty, 0) / Math.max(1, items.length),
    }),
  };
  yield { path: PAGE_PATH, content: pageOf({ paper, language, title, cautions }) };
  yield { path: PLAYER_PATH, content: PLAYER_SCRIPT };
  yield { path: STYLE_PATH, content: PLAYER_STYLE };
  yield* pictures;
}

/** The same as a zip, in chunks as they come. */
export const practiceZip = (items: readonly Item[], options: PracticeOptions): Generator<Uint8Array> =>
  zipFiles(practiceFiles(items, options));
