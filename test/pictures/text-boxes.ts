// Where the texts of a picture stand as a browser draws them, in the font that the pictures are measured for.
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { fontFiles } from "../../services/api/src/drawing/png.js";

interface TextBox {
  text: string;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

export interface Measured {
  width: number;
  height: number;
  boxes: TextBox[];
}

const faces = fontFiles
  .map((file, i) => {
    const bytes = readFileSync(file).toString("base64");
    return `@font-face { font-family: Inter; font-weight: ${i === 0 ? 400 : 600}; src: url(data:font/ttf;base64,${bytes}); }`;
  })
  .join("");

/** A page that has the font, and keeps it for one picture after the other. */
export async function readyToMeasure(page: Page): Promise<void> {
  await page.setContent(`<style>${faces} body { margin: 0 } svg { display: block }</style><main></main>`);
  const loaded = await page.evaluate(async () => {
    const found = await Promise.all([
      document.fonts.load("400 16px Inter"),
      document.fonts.load("600 16px Inter"),
    ]);
    return found.map((faces) => faces.length);
  });
  if (loaded.some((count) => count !== 1)) throw new Error("The browser has not loaded the font.");
}

/** Across, each text as the browser lays it out; up and down, its ink, as the same browser draws it. */
export const measure = (page: Page, svg: string): Promise<Measured> =>
  page.evaluate((markup) => {
    const main = document.querySelector("main");
    if (main === null) throw new Error("The page was not made ready.");
    main.innerHTML = markup;
    const picture = main.querySelector("svg");
    const pen = document.createElement("canvas").getContext("2d");
    if (picture === null || pen === null) throw new Error("There is no picture.");
    const { width, height } = picture.getBoundingClientRect();
    const boxes = [...picture.querySelectorAll("text")].map((text) => {
      const { fontSize, fontWeight, fontFamily } = getComputedStyle(text);
      pen.font = `${fontWeight} ${fontSize} ${fontFamily}`;
      const said = text.textContent ?? "";
      const ink = pen.measureText(said);
      const { left, right } = text.getBoundingClientRect();
      const base = text.getStartPositionOfChar(0).y;
      return {
        text: said,
        left,
        right,
        top: base - ink.actualBoundingBoxAscent,
        bottom: base + ink.actualBoundingBoxDescent,
      };
    });
    return { width, height, boxes };
  }, svg);

/** What is wrong: texts that leave the picture, and pairs that meet. */
export function faultsOf({ width, height, boxes }: Measured): string[] {
  const outside = boxes
    .filter(({ left, right, top, bottom }) => left < 0 || right > width || top < 0 || bottom > height)
    .map(({ text }) => `outside: ${text}`);
  const meeting = boxes.flatMap((one, i) =>
    boxes
      .slice(i + 1)
      .filter(
        (other) =>
          one.left < other.right &&
          other.left < one.right &&
          one.top < other.bottom &&
          other.top < one.bottom,
      )
      .map((other) => `meeting: ${one.text} / ${other.text}`),
  );
  return [...outside, ...meeting];
}
