/**
 * The advice for thirty dives, kept as pages that were read end to end as a diver and as an instructor would, by the lines of
 * approved/README.md. A change of any line shows here and is to be read again before it is let in: UPDATE_APPROVED=1 rewrites the pages.
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { planFor } from "./plan/asked.js";
import { APPROVED_SCENES } from "./support/approved-scenes.js";
import { briefText } from "./support/brief-text.js";

const PAGES = new URL("approved/", import.meta.url);
const isUpdate = process.env["UPDATE_APPROVED"] === "1";

describe("approved advice", () => {
  it.each(APPROVED_SCENES)("$page reads as it was approved", ({ page, title, scene }) => {
    const text = briefText(title, planFor(scene));
    const file = new URL(`${page}.md`, PAGES);
    if (isUpdate) writeFileSync(file, text);
    expect(text).toBe(readFileSync(file, "utf8"));
  });

  it("keeps a page for each scene and no other", () => {
    expect(readdirSync(PAGES).sort()).toEqual(
      ["README.md", ...APPROVED_SCENES.map(({ page }) => `${page}.md`)].sort(),
    );
  });
});
