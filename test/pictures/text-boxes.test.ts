// No text of a picture meets another or leaves the picture, as Chromium lays them out: one dive in English here; six that differ, in
// every language, by day and at night, in metres and feet, in `npm run prove -- text-boxes`.
import {
  BRIGHT_REEF,
  DARK_AND_GREEN,
  HARBOUR_WALL_AFTERNOON,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  REEF_IN_THE_SHALLOWS,
} from "@sunfathom/fixtures/scenes";
import { pictures as german } from "@sunfathom/words/de";
import { pictures as english } from "@sunfathom/words/en";
import { pictures as spanish } from "@sunfathom/words/es";
import { pictures as french } from "@sunfathom/words/fr";
import { type Browser, chromium as engine, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { pictures } from "../../packages/pictures/src/index.js";
import { chromium, launchOptions } from "../scorm/browser.js";
import { faultsOf, measure, readyToMeasure } from "./text-boxes.js";

const all = process.env["PROVE"] === "on";
const scenes = all
  ? {
      BRIGHT_REEF,
      DARK_AND_GREEN,
      HARBOUR_WALL_AFTERNOON,
      NIGHT_WRECK,
      OUTER_REEF_MORNING,
      REEF_IN_THE_SHALLOWS,
    }
  : { OUTER_REEF_MORNING };
const languages = all ? { english, german, spanish, french } : { english };
const unitsOf = all ? (["metric", "imperial"] as const) : (["metric"] as const);
const WIDTHS_PX = [360, 1200];

let browser: Browser;
let page: Page;
beforeAll(async () => {
  if (chromium === undefined) return;
  browser = await engine.launch(launchOptions);
  page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  await readyToMeasure(page);
}, 60_000);
afterAll(() => browser?.close());

describe.skipIf(chromium === undefined)("texts of pictures, in Chromium", () => {
  it.each(pictures)("$name: none meets another or leaves the picture", async ({ drawing }) => {
    for (const [scene, taken] of Object.entries(scenes)) {
      const draw = drawing(taken);
      for (const [language, texts] of Object.entries(languages))
        for (const width_px of WIDTHS_PX)
          for (const units of unitsOf) {
            const measured = await measure(page, draw({ width_px, theme: "light", units }, texts));
            expect(measured.width).toBe(width_px);
            expect(measured.boxes.length).toBeGreaterThan(10);
            expect.soft(faultsOf(measured), `${scene}, ${language}, ${width_px} px, ${units}`).toEqual([]);
          }
    }
  });

  it("a text that is moved onto another is found", async () => {
    const svg = pictures[0].drawing(OUTER_REEF_MORNING)({ width_px: 360, theme: "light" }, english);
    const [first = ""] = svg.match(/<text[^>]*>[^<]*<\/text>/) ?? [];
    const measured = await measure(page, svg.replace(first, `${first}${first.replace(/ x="/, ' x="1')}`));
    expect(faultsOf(measured).length).toBeGreaterThan(0);
  });
});
