import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { execute, freshProject } from "./project.mjs";

const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
const snippets = [...readme.matchAll(/^```ts\n([\s\S]*?)^```/gm)].map(([, code = ""]) => code);
/** What must not compile, each line for its own reason; and what must, under the strictest options. */
const mistakes = readFileSync(new URL("programs/mistakes.ts", import.meta.url), "utf8");
/** A module of CommonJS, by its ending. */
const requiring =
  'import { Sunfathom } from "@sunfathom/sdk";\nimport { OfflineSunfathom } from "@sunfathom/sdk/offline";\nexport const clients = [new Sunfathom({ baseUrl: "https://light.example.org" }), new OfflineSunfathom()];\n';
/** Scenes that must not compile, each below a part of what the compiler is to say of it. */
const wrongScenes = readFileSync(new URL("programs/wrong-scenes.ts", import.meta.url), "utf8");

/**
 * Type-checks the README's snippets and a caller's mistakes.
 * @param {string} version of the compiler
 * @param {string} resolution how modules are found
 * @returns {import("../consumers.mjs").Check}
 */
function typesIn(version, resolution) {
  return {
    name: `types in TypeScript ${version}, ${resolution}`,
    run: async (place) => {
      const packages = [`typescript@${version}`, "@types/node@20.19.43"];
      const project = await freshProject(place, `types-${version}-${resolution}`, packages);
      const files = Object.fromEntries(snippets.map((code, index) => [`snippet-${index}.ts`, code]));
      files["mistakes.ts"] = mistakes;
      files["requiring.cts"] = requiring;
      for (const [name, text] of Object.entries(files)) writeFileSync(join(project, name), text);
      const compilerOptions = {
        module: resolution === "bundler" ? "esnext" : resolution,
        moduleResolution: resolution,
        target: "es2022",
        // One project with the types of a browser, one with those of Node alone.
        ...(resolution === "bundler"
          ? { lib: ["es2022", "dom"], types: [] }
          : { lib: ["es2022"], types: ["node"] }),
        strict: true,
        exactOptionalPropertyTypes: true,
        noUncheckedIndexedAccess: true,
        noPropertyAccessFromIndexSignature: true,
        // The declarations of this package are to be right by themselves.
        skipLibCheck: false,
        noEmit: true,
      };
      writeFileSync(
        join(project, "tsconfig.json"),
        JSON.stringify({ compilerOptions, files: Object.keys(files) }),
      );
      await execute(join(project, "node_modules/.bin/tsc"), ["-p", "."], project);
      return `${Object.keys(files).length} programs as expected`;
    },
  };
}

/**
 * Holds the compiler to refusing each wrong scene, in words that a person can read.
 * @param {string} version of the compiler
 * @returns {import("../consumers.mjs").Check}
 */
function messagesOf(version) {
  return {
    name: `what TypeScript ${version} says of wrong scenes`,
    run: async (place) => {
      const project = await freshProject(place, `wrong-scenes-${version}`, [`typescript@${version}`]);
      writeFileSync(join(project, "wrong-scenes.ts"), wrongScenes);
      const options = [
        "--noEmit",
        "--strict",
        "--module",
        "nodenext",
        "--target",
        "es2022",
        "--lib",
        "es2022,dom",
      ];
      const tsc = join(project, "node_modules/.bin/tsc");
      const said = await execute(tsc, [...options, "wrong-scenes.ts"], project).then(
        () => "",
        (/** @type {Error} */ { message }) => message,
      );
      const found = said.split(/^(?=wrong-scenes\.ts\()/m).slice(1);
      const wanted = [...wrongScenes.matchAll(/^\/\/ says: (.*)$/gm)].map(([, words = ""]) => words);
      const missed = wanted.filter((words, index) => !found[index]?.includes(words));
      if (missed.length > 0 || found.length !== wanted.length) {
        throw new Error(
          `${found.length} of ${wanted.length} refused; not said: ${missed.join("; ")}\n${said}`,
        );
      }
      return `${found.length} refused, each with its reason`;
    },
  };
}

export const typeChecks = [
  typesIn("5.5.4", "nodenext"),
  typesIn("5.5.4", "bundler"),
  typesIn("7.0.2", "nodenext"),
  typesIn("7.0.2", "bundler"),
  messagesOf("5.5.4"),
  messagesOf("7.0.2"),
];
