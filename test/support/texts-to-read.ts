// The texts that people read: strings in the code of each area, and the pages of Markdown.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";

const root = fileURLToPath(new URL("../../", import.meta.url));

export interface TextToRead {
  /** File and line. */
  where: string;
  text: string;
}

/** Where texts stand, by paths of files that git keeps. */
export const areas = {
  answers: /^packages\/words\/src\/en\/(?!problems|quiz).*\.ts$/,
  problems: /^packages\/words\/src\/en\/problems\/.*\.ts$/,
  quiz: /^packages\/words\/src\/en\/quiz\/.*\.ts$|^packages\/quiz\/src\/.*\.ts$/,
  description: /^packages\/(contract|answers|planner)\/src\/.*\.ts$/,
  service: /^services\/api\/src\/.*\.ts$/,
  readme: /^README\.md$/,
  developers: /^DEVELOPERS\.md$/,
  packages: /^(packages|test)\/.*README\.md$|SOURCES\.md$/,
  guides: /^services\/api\/docs\/guides\/.*\.md$/,
  changelogs: /CHANGELOG\.md$/,
  approved: /^test\/approved\/.*\.md$|^test\/plan\/.*\.md$/,
} as const;

export type Area = keyof typeof areas;

const kept = execFileSync("git", ["ls-files"], { cwd: root, encoding: "utf8" })
  .split("\n")
  .filter((path) => path !== "" && !/\.(test|prove|test-support)\.ts$|\/generated\//.test(path));

/** All texts of an area. */
export function textsOf(area: Area): TextToRead[] {
  return kept
    .filter((path) => areas[area].test(path))
    .flatMap((path) => {
      const source = readFileSync(`${root}${path}`, "utf8");
      const found = path.endsWith(".md") ? textsOfMarkdown(source) : textsOfCode(source);
      return found.map(({ line, text }) => ({ where: `${path}:${line}`, text }));
    });
}

interface Line {
  line: number;
  text: string;
}

/** Strings of more than one word. What a template fills in stands between braces, where it is stops by its name. */
export function textsOfCode(source: string): Line[] {
  const file = ts.createSourceFile("texts.ts", source, ts.ScriptTarget.Latest, true);
  const found: Line[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) keep(node, node.text);
    else if (ts.isTemplateExpression(node)) {
      const pieces = node.templateSpans.map(
        ({ expression, literal }) =>
          `{${/stops/i.test(expression.getText(file)) ? "stops" : ""}}${literal.text}`,
      );
      keep(node, node.head.text + pieces.join(""));
    }
    ts.forEachChild(node, visit);
  };
  const keep = (node: ts.Node, text: string): void => {
    const line = file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1;
    if (/\S\s+\S/.test(text)) found.push({ line, text });
  };
  visit(file);
  return found;
}

/** Lines of Markdown without its code. */
export function textsOfMarkdown(source: string): Line[] {
  let inCode = false;
  return source.split("\n").flatMap((line, index) => {
    const fence = /^\s*```/.test(line);
    if (fence) inCode = !inCode;
    if (fence || inCode || /^ {4}\S/.test(line) || line.trim() === "") return [];
    return [{ line: index + 1, text: line.replace(/\]\([^)]*\)/g, "]") }];
  });
}
