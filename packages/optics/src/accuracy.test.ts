// The accuracy page tells what this model gives, not what an earlier one did.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { normalFrom } from "./random.test-support.js";

const PAGE = new URL("../accuracy/", import.meta.url);
const SCRIPTS = new URL("../scripts/accuracy/", import.meta.url);

/** The script's own parts, run here on the source instead of the build. */
const { accuracyFiles } = (await import(new URL("page.mjs", SCRIPTS).href)) as {
  accuracyFiles(): Record<string, string>;
};
const { sameText, staleFiles } = (await import(new URL("files.mjs", SCRIPTS).href)) as {
  sameText(a: string, b: string): boolean;
  staleFiles(folder: URL, files: Record<string, string>): string[];
};

describe("the accuracy page", () => {
  const files = accuracyFiles();

  it("is computed here from the source, as its imports show", async () => {
    const { normalFrom: seen } = (await import(new URL("random.mjs", SCRIPTS).href)) as {
      normalFrom: typeof normalFrom;
    };
    expect(seen).toBe(normalFrom);
  });

  it("and its plots are what scripts/write-accuracy.mjs writes from this source; if not, run it", () => {
    expect(staleFiles(PAGE, files)).toEqual([]);
  });

  it("shows each of its plots, each with a text alternative, and links to files that exist", () => {
    const page = files["README.md"] ?? "";
    const shown = [...page.matchAll(/!\[([^\]]+)\]\(([^)]+)\)/g)];
    const plots = readdirSync(PAGE).filter((name) => name.endsWith(".svg"));
    expect(shown.map(([, , file]) => file).sort()).toEqual(plots.sort());
    for (const [, alternative] of shown) expect(alternative?.length).toBeGreaterThan(60);
    for (const [, link] of page.matchAll(/[^!]\[[^\]]+\]\(([^)]+)\)/g)) {
      expect(existsSync(new URL(link ?? "", PAGE)), link).toBe(true);
    }
  });

  it("has plots that are well-formed, without a number that is none, and described for those who cannot see them", () => {
    for (const name of readdirSync(PAGE).filter((file) => file.endsWith(".svg"))) {
      const svg = readFileSync(new URL(name, PAGE), "utf8");
      expect(svg, name).not.toMatch(/NaN|Infinity|undefined/);
      expect(svg, name).toMatch(/<title id="title">.+<\/title>\n<desc id="describe">.+<\/desc>/);
      expect(svg.match(/<g[ >]/g)?.length, name).toBe(svg.match(/<\/g>/g)?.length);
    }
  });
});

describe("the comparison with the committed files", () => {
  it("allows one unit in the last place, which another engine may round the other way", () => {
    expect(sameText("M1.2,30.4 a 17 %", "M1.3,30.4 a 18 %")).toBe(true);
    expect(sameText("below 0.01 %", "below 0.01 %")).toBe(true);
  });

  it("sees a number that moved, a word that changed, a file that is missing and one that is left over", () => {
    expect(sameText("M1.2,30.4", "M1.4,30.4")).toBe(false);
    expect(sameText("type IA, 400 nm", "type IB, 400 nm")).toBe(false);
    expect(sameText("1 2", "1 2 3")).toBe(false);
    expect(staleFiles(PAGE, { "missing.svg": "" })).toContain("missing.svg");
    expect(staleFiles(PAGE, { "missing.svg": "" })).toContain("README.md");
  });
});
