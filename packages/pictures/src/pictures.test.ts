// What every picture promises, whatever it shows.
import {
  BRIGHT_REEF,
  DARK_AND_GREEN,
  HARBOUR_WALL_AFTERNOON,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  REEF_IN_THE_SHALLOWS,
} from "@sunfathom/fixtures/scenes";
import { pictures as german } from "@sunfathom/words/de";
import { pictures as words } from "@sunfathom/words/en";
import { pictures as spanish } from "@sunfathom/words/es";
import { pictures as french } from "@sunfathom/words/fr";
import { wcagContrast } from "culori";
import { beforeAll, describe, expect, it } from "vitest";
import { pictures } from "./index.js";
import { meeting, outside, readPicture } from "./texts-of.test-support.js";
import { COLOURS, DASHES, themes } from "./theme.js";

/** Six that differ: clear and green, shallow and dark, by day and at night. */
const scenes = {
  BRIGHT_REEF,
  DARK_AND_GREEN,
  HARBOUR_WALL_AFTERNOON,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  REEF_IN_THE_SHALLOWS,
};
const widths = [320, 360, 800, 1200, 1600];

describe.each(pictures)("$name", ({ drawing }) => {
  const known = new Map<object, ReturnType<typeof drawing>>();
  /** Worked out once. */
  function drawnOf(scene: Parameters<typeof drawing>[0]): ReturnType<typeof drawing> {
    const drawn = known.get(scene) ?? drawing(scene);
    known.set(scene, drawn);
    return drawn;
  }

  describe.each(Object.entries(scenes))("of %s", (_, scene) => {
    let draw: ReturnType<typeof drawing>;
    beforeAll(() => {
      draw = drawnOf(scene);
    });

    it.each(widths)("keeps its texts apart and on the page, %d px wide", (width_px) => {
      const drawn = readPicture(draw({ width_px, theme: "light" }, words));
      expect(drawn.width).toBe(width_px);
      expect(drawn.boxes.length).toBeGreaterThan(10);
      expect(outside(drawn)).toEqual([]);
      expect(meeting(drawn)).toEqual([]);
    });

    it.each(widths)("keeps them apart in feet, too, %d px wide", (width_px) => {
      const drawn = readPicture(draw({ width_px, theme: "light", units: "imperial" }, words));
      expect(outside(drawn)).toEqual([]);
      expect(meeting(drawn)).toEqual([]);
      expect([drawn.title, drawn.description].join(" ")).toMatch(/\d ft/);
      expect(drawn.boxes.filter(({ text }) => /\d m\b/.test(text))).toEqual([]);
    });

    it("can be read on a phone: no text below 12 px, and at most 40 kB", () => {
      const svg = draw({ width_px: 360, theme: "light" }, words);
      expect(Math.min(...readPicture(svg).boxes.map(({ size }) => size))).toBeGreaterThanOrEqual(12);
      expect(
        Math.max(...widths.map((width_px) => draw({ width_px, theme: "dark" }, words).length)),
      ).toBeLessThan(40_000);
    });

    it("says in words what it shows, and carries the caution where everybody sees it", () => {
      const drawn = readPicture(draw({ width_px: 800, theme: "light" }, words));
      expect(drawn.title.length).toBeGreaterThan(15);
      expect(drawn.description.length).toBeGreaterThan(100);
      expect(drawn.description).toContain(words.caution);
      expect(drawn.boxes.map(({ text }) => text).join(" ")).toContain(words.caution);
    });

    it("is the same each time", () => {
      const asked = { width_px: 800, theme: "light" } as const;
      expect(drawing(scene)(asked, words)).toBe(draw(asked, words));
    });
  });

  describe.each(Object.entries({ german, spanish, french }))("in %s", (_, texts) => {
    it.each([320, 800])("keeps its texts apart and on the page, %d px wide", (width_px) => {
      for (const scene of [OUTER_REEF_MORNING, NIGHT_WRECK]) {
        const drawn = readPicture(drawnOf(scene)({ width_px, theme: "light" }, texts));
        expect(outside(drawn)).toEqual([]);
        expect(meeting(drawn)).toEqual([]);
        expect(drawn.description).toContain(texts.caution);
      }
    });
  });

  it("lets no text become markup", () => {
    const hostile = `</text><script>alert("1")</script>&'\u0000\ud800`;
    const evil = turned(words, (text) => `${text} ${hostile}`);
    const svg = drawnOf(OUTER_REEF_MORNING)({ width_px: 800, theme: "light" }, evil);
    for (const raw of ["<script", "\u0000", "\ud800"]) expect(svg).not.toContain(raw);
    expect(readPicture(svg).title).toContain(`</text><script>alert("1")</script>&'`);
  });
});

/** Texts, each turned into another: also those that are made of parameters. */
function turned<T>(texts: T, turn: (text: string) => string): T {
  if (typeof texts === "string") return turn(texts) as T;
  if (typeof texts === "function")
    return ((...given: unknown[]) => turn((texts as unknown as (...g: unknown[]) => string)(...given))) as T;
  return Object.fromEntries(
    Object.entries(texts as object).map(([name, text]) => [name, turned(text, turn)]),
  ) as T;
}

// WCAG 2.2, success criteria 1.4.3 and 1.4.11, by culori's implementation of its contrast.
describe.each(themes)("the theme %s", (theme) => {
  const { ground, text, quiet, accent, lights } = COLOURS[theme];

  it.each(Object.entries({ text, quiet, accent, ...lights }))(
    "sets %s off from the ground by 4.5 to 1",
    (_, colour) => {
      expect(wcagContrast(colour, ground)).toBeGreaterThanOrEqual(4.5);
    },
  );

  it("tells no two curves apart by colour alone", () => {
    const dashes = Object.values(DASHES).map((parts) => parts.join(" "));
    expect(new Set(dashes).size).toBe(dashes.length);
  });
});
