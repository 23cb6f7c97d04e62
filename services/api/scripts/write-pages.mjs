// Writes services/api/pages, from which the service shows what is written by hand: guides and changes, turned into HTML. Run
// before every start and every test (see .ci/setup.mjs); not committed, since it follows from the sources.
import { copyFileSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { marked } from "marked";

const service = fileURLToPath(new URL("..", import.meta.url));
const root = fileURLToPath(new URL("../../..", import.meta.url));
const target = `${service}pages/`;

/** @param {string} file of the repository */
const text = (file) => readFileSync(`${root}${file}`, "utf8");
/** @param {string} markdown */
const html = (markdown) => marked.parse(markdown, { async: false });

/** Guides in the order of their files' numbers; each begins with its title and a sentence that says what it is for. */
const guides = readdirSync(`${service}docs/guides`)
  .filter((file) => file.endsWith(".md"))
  .sort()
  .map((file) => {
    const markdown = readFileSync(`${service}docs/guides/${file}`, "utf8");
    const [, title, summary] = /^# (.+)\n\n(.+)\n/.exec(markdown) ?? [];
    if (title === undefined || summary === undefined)
      throw new Error(`${file} does not begin as a guide does.`);
    return { name: basename(file, ".md").replace(/^\d+-/, ""), title, summary, html: html(markdown) };
  });

const changes = `${text("openapi/CHANGELOG.md").trim()}\n\n${text("packages/planner/CHANGELOG.md").trim()}\n`;
/** On one page with it, a file of the repository leads nowhere. */
const changesAlone = changes.replace(/\[([^\]]+)\]\([^)]*\.md(?:#[^)]*)?\)/g, "$1");

/** The renderer of the reference, as its makers have packed it for browsers. */
const renderer = createRequire(import.meta.url).resolve("openapi-explorer/package.json");

mkdirSync(target, { recursive: true });
writeFileSync(
  `${target}written.json`,
  JSON.stringify({ guides, changes: { markdown: changes, html: html(changesAlone) } }),
);
copyFileSync(
  join(dirname(renderer), "dist/browser/openapi-explorer.min.js"),
  `${target}openapi-explorer.min.js`,
);
copyFileSync(join(dirname(renderer), "LICENSE"), `${target}LICENSE.txt`);
