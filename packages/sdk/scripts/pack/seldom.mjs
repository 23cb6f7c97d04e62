import { join } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { seldomInPlans, seldomNeeded } from "./seldom-needed.mjs";

const packages = fileURLToPath(new URL("../../../", import.meta.url));
/** @param {string} name */
const offline = (name) => join(packages, `sdk/src/offline/${name}.ts`);
/** What all scenes' calculations may ask for, and what plans alone may. */
const general = { names: seldomNeeded, all: offline("rest"), by: offline("seldom"), each: "seldomEach" };
const ofPlans = {
  names: seldomInPlans,
  all: offline("plans/rest"),
  by: offline("seldom-in-plans"),
  each: "seldomEachInPlans",
};
/** Asks for a module as it was written, where another stands in its place. */
const asWritten = "?as-written";

/**
 * Sets apart what only some scenes need, so that pages load it behind what they start with: in the place of each such module stands one
 * that asks for it, and one module has them all.
 * @param {ts.Program} program
 * @returns {import("esbuild").Plugin}
 */
export function seldomApart(program) {
  const apart = [general, ofPlans].flatMap((list) => apartIn(list, program));
  requireUnique(apart.flatMap(({ made }) => made));
  return {
    name: "seldom",
    setup(build) {
      build.onLoad({ filter: /\.ts$/ }, ({ path, suffix }) => {
        if (suffix !== "") return undefined;
        if (path === general.all)
          return { contents: allOf(apart.filter(({ list }) => list === general)), loader: "ts" };
        const absent = apart.find(({ file }) => file === path);
        return absent && { contents: standIn(absent), loader: "ts" };
      });
    },
  };
}

/**
 * Puts in its place what only some plans need. What it calls is packed with it as it was written.
 * @param {ts.Program} program of all that is packed
 * @returns {import("esbuild").Plugin}
 */
export function seldomOfPlans(program) {
  const apart = apartIn(ofPlans, program);
  return {
    name: "seldom-of-plans",
    setup(build) {
      build.onLoad({ filter: /\.ts$/ }, ({ path }) =>
        path === ofPlans.all ? { contents: allOf(apart), loader: "ts" } : undefined,
      );
    },
  };
}

/** @param {typeof general} list @param {ts.Program} program @returns {Apart[]} */
const apartIn = (list, program) =>
  list.names.map((name) => {
    const file = join(packages, name);
    return { file, made: exportsOf(program, file), list };
  });

/** @typedef {{ key: string, name: string, codes?: string[] }} Made a function, or a catalogue of functions by their codes */

/** @typedef {{ file: string, made: Made[], list: typeof general }} Apart a module that is set apart */

/** @param {Apart} module */
function standIn({ file, made, list: { by, each } }) {
  if (by === ofPlans.by && made.some(({ codes }) => codes === undefined))
    throw new Error(`${file}: only catalogues can wait for plans.`);
  const lines = made.map(({ key, name, codes }) =>
    codes
      ? `export const ${name} = /* @__PURE__ */ ${each}("${key}", ${JSON.stringify(codes)});`
      : `export const ${name} = /* @__PURE__ */ seldom("${key}");`,
  );
  const single = made.some(({ codes }) => codes === undefined) ? ["seldom"] : [];
  const used = [...single, ...(made.some(({ codes }) => codes) ? [each] : [])].join(", ");
  return [`import { ${used} } from ${JSON.stringify(by)};`, ...lines].join("\n");
}

/** @param {Apart[]} all */
function allOf(all) {
  const imports = all.map(({ file }, i) => `import * as m${i} from ${JSON.stringify(file + asWritten)};`);
  const entries = all.flatMap(({ made }, i) => made.map(({ key, name }) => `"${key}": m${i}.${name}`));
  return `${imports.join("\n")}\nexport const made = { ${entries.join(", ")} };\n`;
}

/** What a module exports beside types. @param {ts.Program} program @param {string} file @returns {Made[]} */
function exportsOf(program, file) {
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(file);
  const symbol = source && checker.getSymbolAtLocation(source);
  if (source === undefined || symbol === undefined)
    throw new Error(`No part of the offline mode has ${file}.`);
  const values = checker
    .getExportsOfModule(symbol)
    .filter(({ flags }) => (flags & ts.SymbolFlags.Value) !== 0);
  const [owner = ""] = file.slice(packages.length).split("/");
  return values.map((value) => {
    const made = { key: `${owner}.${value.name}`, name: value.name };
    const type = checker.getTypeOfSymbolAtLocation(value, source);
    if (type.getCallSignatures().length > 0) return made;
    const parts = type.getProperties();
    const isCatalogue = parts.every(
      (part) => checker.getTypeOfSymbolAtLocation(part, source).getCallSignatures().length > 0,
    );
    if (isCatalogue && parts.length > 0) return { ...made, codes: parts.map(({ name }) => name) };
    throw new Error(`${file}: ${value.name} is no function, nor a catalogue of functions, and cannot wait.`);
  });
}

/** @param {Made[]} made */
function requireUnique(made) {
  const keys = made.map(({ key }) => key);
  const twice = keys.find((key, i) => keys.indexOf(key) !== i);
  if (twice !== undefined) throw new Error(`Two modules that only some scenes need make ${twice}.`);
}
