import { OUTER_REEF_MORNING } from "@sunfathom/fixtures/scenes";
import { redInPost as figuresOf } from "@sunfathom/planner";
import { pictures as words } from "@sunfathom/words/en";
import { formatHex } from "culori";
import { decode } from "fast-png";
import { expect, it } from "vitest";
import { randomFrom } from "../raster/random.js";
import { redInPost } from "./red-in-post.js";

const svg = redInPost.drawing(OUTER_REEF_MORNING)({ width_px: 800, theme: "light" }, words);
const images = [...svg.matchAll(/href="data:image\/png;base64,([^"]+)"/g)].map(([, base64 = ""]) =>
  decode(Buffer.from(base64, "base64")),
);

it("shows the truth and four ways, each square as culori writes its colour for a screen", () => {
  const { truth, ways } = figuresOf(OUTER_REEF_MORNING, randomFrom(JSON.stringify(OUTER_REEF_MORNING)));
  const shown = [truth, ...ways.map(({ squares }) => squares)];
  expect(images).toHaveLength(shown.length);
  // In the order of reading: without a filter at either settings, then with it.
  const [bare, brighter, darker, filtered] = images.slice(1);
  for (const [image, place] of [
    [images[0], 0],
    [bare, 1],
    [darker, 2],
    [brighter, 3],
    [filtered, 4],
  ] as const) {
    const squares = shown[place] ?? [];
    const { width = 0, height = 0, data = [] } = image ?? {};
    const enlarged = Math.sqrt((width * height) / squares.length);
    const columns = width / enlarged;
    for (const at of [0, 7, columns - 1, squares.length - 1]) {
      const [row, column] = [Math.floor(at / columns), at % columns];
      const first = 3 * (row * enlarged * width + column * enlarged);
      const bytes = Array.from(data.slice(first, first + 3));
      const [r = 0, g = 0, b = 0] = squares[at] ?? [];
      expect(`#${bytes.map((byte) => byte.toString(16).padStart(2, "0")).join("")}`).toBe(
        formatHex({ mode: "lrgb", r, g, b }),
      );
    }
  }
});

it("draws other noise for another scene, and the same for the same", () => {
  const again = redInPost.drawing({ ...OUTER_REEF_MORNING })({ width_px: 800, theme: "light" }, words);
  expect(again).toBe(svg);
  const numbers = (seed: string) => Array.from({ length: 4 }, randomFrom(seed));
  expect(numbers("one")).not.toEqual(numbers("other"));
  for (const number of numbers("any")) expect(number).toBeLessThan(1);
});
