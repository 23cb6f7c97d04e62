// Writes src/cldr: of each language what its texts need of the Unicode CLDR, so that every engine says the same: what engines
// carry of it themselves is of different years. Run when a language is added or CLDR is renewed, with the folder that its
// packages were installed into:
//
//   npm install --prefix <folder> cldr-core@48.2.0 cldr-numbers-full@48.2.0 cldr-misc-full@48.2.0 cldr-units-full@48.2.0
//   node packages/words/scripts/write-cldr.mjs <folder>/node_modules
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const [, , from] = process.argv;
if (from === undefined) throw new Error("Name the folder that has the packages of CLDR.");
const read = (/** @type {string} */ file) => JSON.parse(readFileSync(join(from, file), "utf8"));

const target = fileURLToPath(new URL("../src/cldr/", import.meta.url));
const { version } = read("cldr-core/package.json");
const plurals = read("cldr-core/supplemental/plurals.json").supplemental["plurals-type-cardinal"];
const UNITS = {
  m: "length-meter",
  cm: "length-centimeter",
  mm: "length-millimeter",
  ft: "length-foot",
  in: "length-inch",
};

/** A plural rule of CLDR (UTS #35, part 3, section 5) as an expression. @param {string} rule */
function expression(rule) {
  return rule
    .split(" or ")
    .map((either) => either.split(" and ").map(relation).join(" && "))
    .join(" || ");
}

/** @param {string} text as in `i % 100 != 2..4,9` */
function relation(text) {
  const [, operand, modulus, sign, ranges = ""] =
    /^([nivfte])(?: % (\d+))? (!?=) ([\d.,]+)$/.exec(text) ?? [];
  if (operand === undefined) throw new Error(`This rule cannot be read: ${text}`);
  // Compact numbers (1c6) are not written, so the exponent is 0.
  const value = modulus === undefined ? operand : `${operand} % ${modulus}`;
  const parts = ranges.split(",").map((range) => {
    const [low, high] = range.split("..");
    return high === undefined ? `${value} === ${low}` : `(${value} >= ${low} && ${value} <= ${high})`;
  });
  const whole = parts.length === 1 ? String(parts[0]) : `(${parts.join(" || ")})`;
  return sign === "=" ? whole : `!(${whole})`;
}

/** @param {string} language */
function tableOf(language) {
  const { numbers } = read(`cldr-numbers-full/main/${language}/numbers.json`).main[language];
  const { listPatterns } = read(`cldr-misc-full/main/${language}/listPatterns.json`).main[language];
  const { short } = read(`cldr-units-full/main/${language}/units.json`).main[language].units;
  const { decimal, group } = numbers["symbols-numberSystem-latn"];
  const percent = numbers["percentFormats-numberSystem-latn"].standard.replace(/^[#,0]+/, "{0}");
  const list = (/** @type {string} */ type) => {
    const { start, middle, end, 2: two } = listPatterns[`listPattern-type-${type}`];
    return { start, middle, end, two };
  };
  const units = Object.entries(UNITS).map(([name, key]) => [name, short[key]["unitPattern-count-other"]]);
  // What is left of many are millions, which no text counts.
  const rules = Object.entries(plurals[language])
    .map(([key, rule]) => [key.replace("pluralRule-count-", ""), String(rule).split("@")[0]?.trim() ?? ""])
    .filter(([category]) => category !== "other" && category !== "many")
    .map(([category, rule = ""]) => [category, expression(rule)]);
  const table = {
    decimal,
    group,
    minimumGrouping: Number(numbers.minimumGroupingDigits),
    percent,
    and: list("standard"),
    or: list("or"),
    units: Object.fromEntries(units),
  };
  const json = JSON.stringify(table, undefined, 2)
    .replace(/[^\x20-\x7e\n]/g, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, "0")}`)
    .replace(/^\{\n/, "")
    .replace(/\n\}$/, "");
  const cases = rules.map(([category, rule]) => `${rule} ? "${category}" : `).join("");
  const operands = ["n", "i", "v"].filter((name) => new RegExp(`\\b${name}\\b`).test(cases));
  return `// Written by scripts/write-cldr.mjs from CLDR ${version}: © 1991-2025 Unicode, Inc., Unicode License V3.
import type { Cldr } from "./table.js";

export const ${language}: Cldr = {
${json},
  plural: ({ ${operands.join(", ")} }) => (${cases}"other"),
};
`;
}

mkdirSync(target, { recursive: true });
for (const language of ["en", "de", "es", "fr"]) writeFileSync(`${target}${language}.ts`, tableOf(language));
