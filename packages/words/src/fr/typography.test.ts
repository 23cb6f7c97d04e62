// French typography: a narrow no-break space (U+202F) before a colon, a semicolon, an exclamation or a question mark and between
// a number and its unit, and the curved apostrophe. Rules of the Imprimerie nationale's Lexique, from memory; CLDR has the same
// space before its units. Before a colon, too, where some set a full no-break space: one habit for all.
import { readdirSync, readFileSync } from "node:fs";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const folder = new URL(".", import.meta.url);
const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter(
  (name) => name.endsWith(".ts") && !name.endsWith(".test.ts"),
);

/** The pieces of text in a file, what a template puts in left out as a figure. */
function textsIn(name: string): string[] {
  const source = ts.createSourceFile(name, readFileSync(new URL(name, folder), "utf8"), 99, true);
  const texts: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return;
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) texts.push(node.text);
    if (ts.isTemplateExpression(node))
      texts.push([node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join("0"));
    ts.forEachChild(node, visit);
  };
  visit(source);
  return texts;
}

const wrong =
  /[^\u202f]: |[^\u202f][;!?](?!\S)|[^\u202f]»|«[^\u202f]|\d[ \u00a0](?:mm?|cm|nm|K|s|lm|lx|ISO|IL|bits|kB)(?![\p{L}’])|[A-Za-zé]'[a-zéêàœ]/u;

describe("French texts", () => {
  it.each(files)("of %s are set as French is", (name) => {
    expect(textsIn(name).filter((text) => wrong.test(text))).toEqual([]);
  });

  it.each(["Attention: ici", "Attention : ici", "là; ici", "quoi ?", "12 m", "l'eau", "« ici »"])(
    "would be found in: %s",
    (text) => expect(text).toMatch(wrong),
  );
});
