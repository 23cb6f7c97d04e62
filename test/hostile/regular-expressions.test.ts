// Every regular expression of the project's own code, and every pattern of the description, is held against the
// complexity checker recheck (https://makenowjust-labs.github.io/recheck/): none may take more than linear time.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { checkSync } from "recheck";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Source files of the code that runs, of all packages and services. */
function sources(): string[] {
  return ["packages", "services"].flatMap((folder) =>
    readdirSync(join(root, folder)).flatMap((name) => filesIn(join(root, folder, name, "src"))),
  );
}

function filesIn(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return filesIn(path);
    return /\.ts$/.test(entry.name) && !/\.(test|test-support)\.ts$/.test(entry.name) ? [path] : [];
  });
}

interface Found {
  where: string;
  source: string;
  flags: string;
}

/** Regular expressions written in a file. */
function expressionsIn(path: string): Found[] {
  const file = ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.ES2022, true);
  const found: Found[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isRegularExpressionLiteral(node)) {
      const end = node.text.lastIndexOf("/");
      const { line } = file.getLineAndCharacterOfPosition(node.getStart());
      found.push({
        where: `${path.slice(root.length)}:${line + 1}`,
        source: node.text.slice(1, end),
        flags: node.text.slice(end + 1),
      });
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

function patternsIn(value: unknown): string[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, item]) =>
    name === "pattern" && typeof item === "string" ? [item] : patternsIn(item),
  );
}

const described = JSON.parse(readFileSync(join(root, "openapi/openapi.json"), "utf8"));
const all: Found[] = [
  ...sources().flatMap(expressionsIn),
  ...[...new Set(patternsIn(described))].map((source) => ({ where: "openapi.json", source, flags: "u" })),
];
const distinct = [...new Map(all.map((found) => [`/${found.source}/${found.flags}`, found])).values()];

describe("regular expressions", () => {
  it("are found", () => {
    expect(distinct.length).toBeGreaterThan(15);
  });

  it("would be caught if one took exponential or quadratic time", () => {
    expect(checkSync("^(a+)+$", "").status).toBe("vulnerable");
    expect(checkSync("^\\s*(identity)?\\s*$", "i").status).toBe("vulnerable");
  });

  it.each(distinct)(
    "/$source/$flags at $where takes linear time",
    ({ source, flags }) => {
      const found = checkSync(source, flags);
      expect(found.status, JSON.stringify(found).slice(0, 300)).toBe("safe");
    },
    30_000,
  );
});
