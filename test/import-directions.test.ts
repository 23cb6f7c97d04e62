// The import-direction check must catch what it is there for, so made-up workspaces break each of its rules. That this repository
// breaks none is `npm run deps`, in `npm run check`.
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { cruise } from "dependency-cruiser";
import extractOptions from "dependency-cruiser/config-utl/extract-depcruise-options";
import { afterEach, beforeEach, describe, expect, it } from "vitest";

const repository = join(dirname(fileURLToPath(import.meta.url)), "..");
const options = await extractOptions(join(repository, ".dependency-cruiser.cjs"));

/** The rules broken under `baseDir`, each with the file that breaks it. */
async function violations(baseDir: string): Promise<string[]> {
  const { output } = await cruise(["{packages,services}/*/src"], { ...options, baseDir });
  if (typeof output === "string") throw new Error(output);
  return output.summary.violations.map(({ rule, from }) => `${rule.name}: ${from}`).sort();
}

describe("the check of import directions", () => {
  let root: string;

  beforeEach(() => {
    root = mkdtempSync(join(tmpdir(), "import-directions-"));
    for (const folder of ["packages/optics", "packages/planner", "packages/contract", "packages/novel"]) {
      layPackage(folder);
    }
  });

  afterEach(() => rmSync(root, { recursive: true }));

  /** Lays a package that exports its src/index.ts alone, linked as an installer links workspace packages. */
  function layPackage(folder: string) {
    const name = `@sunfathom/${folder.split("/")[1]}`;
    const exports = { ".": { source: "./src/index.ts" } };
    write(`${folder}/package.json`, JSON.stringify({ name, type: "module", exports }));
    write(`${folder}/src/index.ts`, "export interface Thing { a: number }\nexport const thing = 1;\n");
    mkdirSync(join(root, "node_modules/@sunfathom"), { recursive: true });
    symlinkSync(join(root, folder), join(root, "node_modules", name), "dir");
  }

  function write(path: string, text: string) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  }

  it.each([
    ["physics that asks for a decision", "optics", "@sunfathom/planner", ["direction-optics"]],
    ["a decision that asks for the wire contract", "planner", "@sunfathom/contract", ["direction-planner"]],
    ["a contract that asks for physics", "contract", "@sunfathom/optics", ["direction-contract"]],
    ["a package the table does not know", "novel", "@sunfathom/optics", ["direction-of-a-new-package"]],
    ["a path into another package's src", "planner", "../../optics/src/index.js", ["by-package-name"]],
    ["a path into another package's dist", "planner", "../../optics/dist/index.js", ["by-package-name"]],
    [
      "what another package does not export",
      "planner",
      "@sunfathom/optics/src/index.ts",
      ["no-unresolvable"],
    ],
    ["a module that is not there", "planner", "./nowhere.js", ["no-unresolvable"]],
    ["the file system, from the model", "optics", "node:fs", ["pure-packages-touch-no-node"]],
  ])("reports %s", async (_what, from, specifier, rules) => {
    write("packages/optics/dist/index.js", "export const thing = 1;\n");
    write(`packages/${from}/src/guilty.ts`, `export * from "${specifier}";\n`);
    expect(await violations(root)).toEqual(rules.map((rule) => `${rule}: packages/${from}/src/guilty.ts`));
  });

  it("reports a forbidden import of a type alone", async () => {
    write("packages/optics/src/guilty.ts", 'export type { Thing } from "@sunfathom/planner";\n');
    expect(await violations(root)).toEqual(["direction-optics: packages/optics/src/guilty.ts"]);
  });

  it("reports a feature of the service that knows another one, and lets them share what lies outside", async () => {
    layPackage("services/api");
    const features = "services/api/src/features";
    write(`${features}/shared.ts`, "export const shared = 1;\n");
    write(`${features}/trips/routes.ts`, 'export { shared } from "../shared.js";\nexport const trips = 1;\n');
    write(`${features}/quiz/near.ts`, 'export { trips } from "../trips/routes.js";\n');
    write(`${features}/quiz/own.ts`, 'export { trips } from "./near.js";\n');
    expect(await violations(root)).toEqual([`features-apart: ${features}/quiz/near.ts`]);
  });

  it("reports modules that import each other", async () => {
    write("packages/optics/src/a.ts", 'export { b } from "./b.js";\nexport const a = 1;\n');
    write("packages/optics/src/b.ts", 'export { a } from "./a.js";\nexport const b = 1;\n');
    expect(await violations(root)).toEqual(["no-circular: packages/optics/src/a.ts"]);
  });

  it("opens one door from the client to the answers, from its offline entry alone", async () => {
    for (const folder of ["packages/answers", "packages/sdk"]) layPackage(folder);
    write("packages/sdk/src/offline/index.ts", 'import "@sunfathom/answers";\nimport "../index.js";\n');
    expect(await violations(root)).toEqual([]);
    write("packages/sdk/src/offline/index.ts", 'import "@sunfathom/planner";\n');
    write("packages/sdk/src/guilty.ts", 'import "@sunfathom/answers";\nimport "./offline/index.js";\n');
    expect(await violations(root)).toEqual([
      "direction-sdk-offline: packages/sdk/src/offline/index.ts",
      "direction-sdk: packages/sdk/src/guilty.ts",
      "sdk-online-without-offline: packages/sdk/src/guilty.ts",
    ]);
  });

  it("lets imports run the one way, and tests import anything", async () => {
    write("packages/planner/src/choice.ts", 'export { thing } from "@sunfathom/optics";\n');
    write("packages/optics/src/law.test.ts", 'import "@sunfathom/planner";\nimport "node:fs";\n');
    expect(await violations(root)).toEqual([]);
  });
});
