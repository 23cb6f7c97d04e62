// Writes what follows from the names of the operations (packages/contract/src/operation-names.ts), so that a new one is entered
// there and nowhere else: lists and exports of planner, contract, words and answers, and the parts of the client's offline mode. Run before
// every build (see setup.mjs); none of it is committed, since it follows from the sources.
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const packages = fileURLToPath(new URL("../packages", import.meta.url));
const mark = "// Written by .ci/write-operations.mjs; not committed.\n";

const listed = readFileSync(join(packages, "contract/src/operation-names.ts"), "utf8");
const calculations = namesIn("calculationNames");
const references = namesIn("referenceNames");

/** @param {string} list */
function namesIn(list) {
  const [, text = ""] = new RegExp(`const ${list} = \\[([^\\]]*)\\]`).exec(listed) ?? [];
  const names = [...text.matchAll(/"([a-z-]+)"/g)].map(([, name = ""]) => name);
  if (names.length === 0) throw new Error(`operation-names.ts has no ${list} that can be read here.`);
  return names;
}

const pascal = (/** @type {string} */ name) => name.replace(/(?:^|-)(.)/g, (_, first) => first.toUpperCase());
const camel = (/** @type {string} */ name) => name.replace(/-(.)/g, (_, first) => first.toUpperCase());
/** @param {string[]} names @param {(name: string) => string} line */
const lines = (names, line) => names.map(line).join("");

/** @param {string} file within packages @param {string} text */
function write(file, text) {
  const path = join(packages, file);
  mkdirSync(dirname(path), { recursive: true });
  if (!existsSync(path) || readFileSync(path, "utf8") !== mark + text) writeFileSync(path, mark + text);
}

write(
  "planner/src/generated/calculations.ts",
  lines(calculations, (name) => `export { ${camel(name)} } from "../${name}/${name}.js";\n`),
);
write(
  "planner/src/generated/results.ts",
  lines(calculations, (name) => `export type * from "../result/${name}.js";\n`),
);

write(
  "contract/src/generated/calculation-answers.ts",
  `${lines(calculations, (name) => `import * as ${camel(name)} from "../result/${name}.js";\n`)}
export const calculationAnswers = {
${lines(calculations, (name) => `  ...${camel(name)},\n`)}};
`,
);
write(
  "contract/src/generated/calculation-answer-types.ts",
  lines(calculations, (name) => `export type { ${pascal(name)}Answer } from "../result/${name}.js";\n`),
);

/** @param {string} folder @param {string[]} names */
const importsOf = (folder, names) =>
  lines(
    names,
    (name) => `import { about as about${pascal(name)}, ${camel(name)} } from "../${folder}/${name}.js";\n`,
  );
/** Calculations that answer some scenes with more than a page needs for most: `${name}With` takes what does. */
const wider = new Set(
  calculations.filter((name) => existsSync(join(packages, `answers/src/operations/wider/${name}.ts`))),
);
/** What such a file exports, by the name that it has among others. @param {string} name */
const widerNames = (name) => `mounts as mounts${pascal(name)}, textsOf as textsOf${pascal(name)}`;
const widerImports = [...wider]
  .map(
    (name) =>
      `import { ${camel(name)}With } from "../operations/calculations/${name}.js";\nimport { ${widerNames(name)} } from "../operations/wider/${name}.js";\n`,
  )
  .join("");
/** @param {string} name */
const whole = (name) => (wider.has(name) ? `${camel(name)}With(mounts${pascal(name)})` : camel(name));
/** @param {string} name */
const wordsOf = (name) => (wider.has(name) ? `textsOf${pascal(name)}(words)` : `words["${name}"]`);
const listOf = (/** @type {string[]} */ names) => `[${names.map(camel).join(", ")}] as const`;
/** @param {string[]} names */
const aboutsOf = (names) => `{\n${lines(names, (name) => `  "${name}": about${pascal(name)},\n`)}}`;

write(
  "words/src/generated/words.ts",
  `import type {\n${lines(calculations, (name) => `  ${pascal(name)}Texts,\n`)}} from "../calculation-texts.js";

/** The texts of all calculations in one language. */
export interface Words {
${lines(calculations, (name) => `  readonly "${name}": ${pascal(name)}Texts;\n`)}}
`,
);
const [, tags = ""] =
  /const languages = \[([^\]]*)\]/.exec(
    readFileSync(join(packages, "contract/src/scene/languages.ts"), "utf8"),
  ) ?? [];
for (const [, tag = ""] of tags.matchAll(/"([a-z]+)"/g)) {
  write(
    `words/src/generated/${tag}.ts`,
    `import type { Words } from "./words.js";
${lines(calculations, (name) => `import { ${camel(name)} } from "../${tag}/${name}.js";\n`)}
${lines(calculations, (name) => `export { ${camel(name)} } from "../${tag}/${name}.js";\n`)}
/** The texts of all calculations, by their names. */
export const ${tag}: Words = {
${lines(calculations, (name) => `  "${name}": ${camel(name)},\n`)}};
`,
  );
}

write(
  "answers/src/generated/calculations.ts",
  `import type { Words } from "@sunfathom/words";
import type { Refused } from "../operations/outcome.js";
import type { Refusal, Unanswered } from "../problem/refusal.js";
import { lightSceneWith } from "../scene/light-scene.js";
import { mountedOn } from "../scene/mounted-on.js";
${importsOf("operations/calculations", calculations)}${widerImports}
export const calculations = ${listOf(calculations)};
const scenes = lightSceneWith(mountedOn);
/** All calculations, in the words of one language, and with what becomes of a refusal. */
export const calculationsIn = <R extends Refused | Unanswered>(words: Words, refuse: (refusal: Refusal) => R) =>
  [
${lines(calculations, (name) => `    ${whole(name)}.in(${wordsOf(name)}, refuse, scenes),\n`)}  ] as const;
export const abouts = ${aboutsOf(calculations)} as const;
`,
);
write(
  "answers/src/generated/reference.ts",
  `${importsOf("reference/data", references)}
export const referenceData = ${listOf(references)};
export const aboutData = ${aboutsOf(references)} as const;
`,
);
write(
  "answers/src/generated/parts.ts",
  lines(calculations, (name) => `export { ${camel(name)} } from "../operations/calculations/${name}.js";\n`) +
    [...wider]
      .map(
        (name) =>
          `export { ${camel(name)}With } from "../operations/calculations/${name}.js";\nexport { ${widerNames(name)} } from "../operations/wider/${name}.js";\n`,
      )
      .join("") +
    lines(references, (name) => `export { ${camel(name)} } from "../reference/data/${name}.js";\n`),
);

/** What the descriptor of an operation says of it in short. @param {string} file */
function summaryIn(file) {
  const [, summary] = /\bsummary: "([^"]+)"/.exec(readFileSync(join(packages, file), "utf8")) ?? [];
  if (summary === undefined) throw new Error(`${file} has no summary that can be read here.`);
  return summary;
}

/** A file for each part, so that a bundler leaves out those that nobody asks for. */
const parts = [
  ...calculations.map((name) => ({
    name,
    group: "calculations",
    summary: summaryIn(`answers/src/operations/calculations/${name}.ts`),
  })),
  ...references.map((name) => ({
    name,
    group: "reference",
    summary: summaryIn(`answers/src/reference/data/${name}.ts`),
  })),
];
/** What answers scenes that are none of the plain ones, loaded where one comes. @param {string} name */
function widerOf(name) {
  const file = `answers/src/operations/calculations/${name}.ts`;
  if (!calculations.includes(name)) return "";
  if (!readFileSync(join(packages, file), "utf8").includes("taking(lightScene)")) return "";
  if (!wider.has(name))
    return `,
  wider: widened(calculation, texts, (words) => (words as Words)["${name}"])`;
  return `,
  wider: async () => {
    const { english, mountedOn, mounts, textsOf } = await import("../../wider/${name}.js");
    const all = ${camel(name)}With(mounts);
    const scenes = lightSceneWith(mountedOn);
    return {
      source: all.in(textsOf({ "${name}": texts, ...english }), unsaid, scenes),
      saidIn: (words) => all.in(textsOf(words as Words), unsaid, scenes),
    };
  }`;
}
for (const { name, group, summary } of parts) {
  const own = camel(name);
  write(
    `sdk/src/offline/generated/parts/${name}.ts`,
    `${
      group === "calculations"
        ? `import { ${own} as calculation${wider.has(name) ? `, ${own}With` : ""}${wider.has(name) ? ", lightSceneWith" : ""}, unsaid } from "@sunfathom/answers";
import type { Words } from "@sunfathom/words";
import { ${own} as texts } from "@sunfathom/words/en";
`
        : `import { ${own} as source } from "@sunfathom/answers";
`
    }import type { OfflinePart } from "../../part.js";
${widerOf(name).includes("widened") ? 'import { widened } from "../../wider-scenes.js";\n' : ""}
/**
 * ${summary}: \`${group}.${own}\`.
 * @example const client = offlineWith([${own}]);
 */
export const ${own}: OfflinePart<"${own}"> = {
  name: "${own}",
  group: "${group}",
  ${
    group === "calculations"
      ? `source: calculation.in(texts, unsaid),
  saidIn: (words) => calculation.in((words as Words)["${name}"], unsaid)${widerOf(name)}`
      : "source"
  },
};
`,
  );
}
const partNames = parts.map(({ name }) => name).sort();
write(
  "sdk/src/offline/generated/parts.ts",
  lines(partNames, (name) => `export { ${camel(name)} } from "./parts/${name}.js";\n`),
);
// By name, not as one namespace: that would tie all parts together in the published files, also for pages that ask for one.
write(
  "sdk/src/offline/generated/every-part.ts",
  `import type { OfflineName, OfflinePart } from "../part.js";
${lines(partNames, (name) => `import { ${camel(name)} } from "./parts/${name}.js";\n`)}
/** All that can be computed without a service. A method of the client that has no part here is an error of the compiler. */
export const everyPart: { readonly [Name in OfflineName]: OfflinePart<Name> } = {
${lines(partNames, (name) => `  ${camel(name)},\n`)}};
`,
);

// What is no longer an operation leaves no part behind.
const folder = join(packages, "sdk/src/offline/generated/parts");
for (const file of readdirSync(folder)) {
  if (!partNames.includes(basename(file, ".ts"))) rmSync(join(folder, file));
}
