// One bibliography: code, tables and /v1/models name a publication by its authors and its year, and the guide to references has it in full.
import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { cameraModels } from "../packages/planner/src/reference/camera-models.js";
import { lightModels } from "../packages/planner/src/reference/light-models.js";

const root = fileURLToPath(new URL("..", import.meta.url));
const guide = "services/api/docs/guides/9-references.md";
const read = (path: string) => readFileSync(join(root, path), "utf8");
const entries = [...read(guide).matchAll(/^- \*\*(.+?)\*\*: (.+)$/gm)].map(([, key = "", text = ""]) => ({
  key,
  text,
}));
const keys = new Set(entries.map(({ key }) => key));

/** A name, or names with an ampersand or `and` before the last, or the first `et al.`, and a year. */
const name = String.raw`\p{Lu}\p{L}+(?:-\p{Lu}\p{L}+)?`;
const citation = new RegExp(
  String.raw`((?:${name}, )*${name}(?: (?:&|and) ${name}| et al\.)?),? ((?:18|19|20)\d\d)(?!\d|-\d)`,
  "gu",
);
/** What has the same form, and is a day or a standard. */
const noAuthor = new Set(
  "January February March April May June July August September October November December Jun Schema CIE CIELAB ISO RFC".split(
    " ",
  ),
);
/** Names in texts for another's table, model or statement, by the key that they stand for. */
const short: Readonly<Record<string, string>> = {
  "Bartlett 1998": "Bartlett, Voss, Sathyendranath & Vodacek 1998",
  "Bartlett et al. 1998": "Bartlett, Voss, Sathyendranath & Vodacek 1998",
  "Cooksey et al. 2017": "Cooksey, Allen & Tsai 2017",
  "Lee 2015": "Lee et al. 2015",
  "Lee, Shang, Hu, Du, Weidemann, Hou, Lin & Lin 2015": "Lee et al. 2015",
  "Zhang 2009": "Zhang, Hu & He 2009",
};

function citedIn(text: string): string[] {
  // A comment's lines, in one.
  const plain = text.replace(/\s*\n\s*(?:\*(?!\*)|\/\/)?\s*/g, " ");
  return [...plain.matchAll(citation)].flatMap(([, authors = "", year]) => {
    const key = `${authors.replace(" and ", " & ")} ${year}`;
    const known = [key, short[key] ?? "", key.split(", ").at(-1) ?? ""].find((one) => keys.has(one));
    if (known !== undefined) return [known];
    return noAuthor.has(authors.split(/[ ,]/)[0] ?? "") ? [] : [key];
  });
}

const cited = new Map<string, string>();
const listed = execFileSync("git", ["ls-files", "packages", "services", "test", "README.md", "NOTICE"], {
  cwd: root,
  encoding: "utf8",
});
for (const path of listed.trim().split("\n")) {
  const isText = /\.(ts|mjs|md)$|^NOTICE$/.test(path) && path !== guide;
  // Sentences for people are under rules of their own, and CHANGELOGs tell the past.
  if (!isText || /generated|golden|CHANGELOG|references\.test/.test(path)) continue;
  for (const key of citedIn(read(path))) if (!cited.has(key)) cited.set(key, path);
}

describe("the bibliography", () => {
  it("has a publication once, and in the order of their keys within a part", () => {
    expect(entries.length).toBeGreaterThan(70);
    expect(keys.size).toBe(entries.length);
    for (const part of read(guide).split(/^## /m).slice(1)) {
      const own = [...part.matchAll(/^- \*\*(.+?)\*\*/gm)].map(([, key = ""]) => key);
      const plain = (key: string) =>
        key
          .normalize("NFD")
          .replace(/[^A-Za-z0-9 ]/g, "")
          .replace(/ +/g, " ");
      expect(own).toEqual([...own].sort((a, b) => plain(a).localeCompare(plain(b), "en")));
    }
  });

  it("has everything that is cited, and nothing that is not", () => {
    expect([...cited].filter(([key]) => !keys.has(key))).toEqual([]);
    expect([...keys].filter((key) => !cited.has(key))).toEqual([]);
  });

  // https://www.doi.org/doi-handbook/HTML/doi-name-syntax.html
  it("has each DOI once, in the form of a DOI, with the link that resolves it", () => {
    const found = entries.flatMap(({ text }) => [
      ...text.matchAll(/DOI \[(.+?)\]\(<?https:\/\/doi\.org\/(.+?)>?\)(?:\\\*)?\./g),
    ]);
    expect(found.length).toBeGreaterThan(20);
    for (const [, doi = "", link] of found) {
      expect(doi).toMatch(/^10\.\d{4,9}\/\S+$/);
      expect(link).toBe(doi);
    }
    expect(new Set(found.map(([, doi]) => doi)).size).toBe(found.length);
    expect(entries.filter(({ text }) => text.includes("DOI")).length).toBe(found.length);
  });

  it("has every publication that a model of /v1/models names", () => {
    const named = [...lightModels, ...cameraModels].flatMap(({ source }) => citedIn(source));
    expect(named.length).toBeGreaterThan(30);
    for (const key of named) expect(keys).toContain(key);
  });

  it("has, for every table, where its digits were copied from and under which terms", () => {
    const sources = read("packages/optics/tables/SOURCES.md");
    const copied = sources.slice(sources.indexOf("## Where the digits"), sources.indexOf("## Traps"));
    const told = [...copied.matchAll(/^\| `(\S+\.csv)` +\| (\S.*?) +\| (\S.*?) +\|$/gm)].map(
      ([, file]) => file,
    );
    const tables = readdirSync(join(root, "packages/optics/tables")).filter((file) => file.endsWith(".csv"));
    expect(told).toEqual(tables.sort());
  });
});
