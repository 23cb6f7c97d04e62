import {
  redInPost as figuresOf,
  RED_SQUARES,
  type RedInPost,
  type RedWay,
  TRUE_SQUARES,
} from "@sunfathom/planner";
import type { PictureTexts, RedInPostTexts } from "@sunfathom/words";
import { type Look, type LookAsked, lookOf } from "../look.js";
import type { Picture } from "../picture.js";
import { randomFrom } from "../raster/random.js";
import { squaresAt } from "../raster/squares.js";
import { type Block, gap, page, paragraph, stacked } from "../svg/page.js";

/** Height of a picture over its width. */
const SHAPE = (RED_SQUARES.red_rows + RED_SQUARES.white_rows) / RED_SQUARES.columns;

/** Squares over so much width. */
function tile(
  colours: RedWay["squares"],
  columns: number,
  { x, width }: { x: number; width: number },
): Block {
  const height = width * SHAPE;
  return { height, at: (y) => [squaresAt({ colours, columns, x, y, width, height })] };
}

/** The patch as it is, with how to read what follows. */
function truth(look: Look, { truth: colours }: RedInPost, texts: RedInPostTexts): Block {
  const { size, margin, width, colours: ink } = look;
  const beside = width > 620;
  const inner = width - 2 * margin;
  const side = beside ? (inner - size) / 2 : inner;
  const image = tile(colours, TRUE_SQUARES.columns, {
    x: margin,
    width: beside ? Math.min(side, 420) : side,
  });
  const x = beside ? margin + Math.min(side, 420) + size : margin;
  const said = stacked([
    paragraph({
      text: texts.truth,
      size,
      weight: "semibold",
      fill: ink.text,
      x,
      width: width - margin - x,
    }),
    paragraph({ text: texts.reading, size, fill: ink.text, x, width: width - margin - x }),
  ]);
  if (!beside) return stacked([image, gap(0.4 * size), said]);
  return {
    height: Math.max(image.height, said.height),
    at: (y) => [...image.at(y), ...said.at(y + Math.max(0, (image.height - said.height) / 2))],
  };
}

/** One picture with what there is to say of it. */
function picture(look: Look, way: RedWay, texts: RedInPostTexts, place: { x: number; width: number }): Block {
  const { size, small, colours } = look;
  return stacked([
    tile(way.squares, RED_SQUARES.columns, place),
    gap(0.2 * size),
    paragraph({
      text: way.is_clipped ? texts.clipped : texts.quality[way.quality],
      size,
      weight: "semibold",
      fill: colours.text,
      ...place,
    }),
    paragraph({ text: texts.caption(way), size: small, fill: colours.text, ...place }),
  ]);
}

/** Two blocks side by side. */
const beside = (left: Block, right: Block): Block => ({
  height: Math.max(left.height, right.height),
  at: (y) => [...left.at(y), ...right.at(y)],
});

/** The red patch, four ways, from figures. */
function drawRedInPost(figures: RedInPost, asked: LookAsked, words: PictureTexts): string {
  const texts = words.red_in_post;
  const look = lookOf(asked);
  const { size, headline, small, margin, width, colours } = look;
  const inner = { x: margin, width: width - 2 * margin };
  const title = texts.headline(figures, look.units);
  const between = Math.max(12, width / 40);
  const half = (width - 2 * margin - between) / 2;
  const left = { x: margin, width: half };
  const right = { x: margin + half + between, width: half };
  const note = (text: string) => paragraph({ text, size: small, fill: colours.quiet, ...inner });
  const head = (text: string, place = inner) =>
    paragraph({ text, size, weight: "semibold", fill: colours.text, ...place });
  const [bare, darker, brighter, filtered] = figures.ways;
  return page(look, { title, description: `${texts.description(figures, look.units)} ${words.caution}` }, [
    paragraph({ text: title, size: headline, weight: "semibold", fill: colours.text, ...inner }),
    gap(0.4 * size),
    paragraph({ text: texts.why[figures.verdict], size, fill: colours.text, ...inner }),
    gap(0.8 * size),
    truth(look, figures, texts),
    gap(size),
    beside(
      paragraph({ text: texts.settings_for(bare), size: small, fill: colours.quiet, ...left }),
      paragraph({ text: texts.settings_for(filtered), size: small, fill: colours.quiet, ...right }),
    ),
    gap(0.6 * size),
    head(texts.without),
    gap(0.2 * size),
    beside(picture(look, bare, texts, left), picture(look, brighter, texts, right)),
    gap(size),
    head(texts.filtered(figures)),
    gap(0.2 * size),
    beside(picture(look, darker, texts, left), picture(look, filtered, texts, right)),
    gap(0.8 * size),
    note(texts.squares(figures)),
    note(words.caution),
  ]);
}

export const redInPost: Picture<"red-in-post"> = {
  name: "red-in-post",
  of: "filter-choice",
  summary: "Why not add red afterwards",
  description:
    "A red patch and a white card in the middle of the filmed depths, recorded without and with the filter that is advised there, at the settings that suit either, and pushed afterwards until red, white and black are right: with the noise and the code values that each recording has.",
  cost: () => 40,
  drawing: (scene) => {
    const figures = figuresOf(scene, randomFrom(JSON.stringify(scene)));
    return (asked, words) => drawRedInPost(figures, asked, words);
  },
};
