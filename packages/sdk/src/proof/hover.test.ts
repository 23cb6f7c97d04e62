// What an editor shows over a client made from parts: what a call does, and the unit of a field.
import { join } from "node:path";
import ts from "typescript";
import { beforeAll, describe, expect, it } from "vitest";
import { home } from "./bundle.test-support.js";

const program = `import { exposureLoss, filterChoice, offlineWith } from "@sunfathom/sdk/offline/parts";
const boat = offlineWith([filterChoice, exposureLoss]);
const choice = await boat.calculations.filterChoice({ water_type: "IB", depth_m: 12 });
console.log(choice.filter_loss_stops.likely);
`;
const file = join(home, "program.ts");

/** The services that an editor asks, for that program beside this package. */
function editor(): ts.LanguageService {
  const text = (path: string) => (path === file ? program : ts.sys.readFile(path));
  const options: ts.CompilerOptions = {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    customConditions: ["source"],
    lib: ["lib.es2022.d.ts", "lib.dom.d.ts"],
    strict: true,
    types: [],
  };
  return ts.createLanguageService({
    getScriptFileNames: () => [file],
    getScriptVersion: () => "1",
    getScriptSnapshot: (path) => {
      const content = text(path);
      return content === undefined ? undefined : ts.ScriptSnapshot.fromString(content);
    },
    getCurrentDirectory: () => home,
    getCompilationSettings: () => options,
    getDefaultLibFileName: ts.getDefaultLibFilePath,
    fileExists: (path) => path === file || ts.sys.fileExists(path),
    readFile: text,
    readDirectory: ts.sys.readDirectory,
    directoryExists: ts.sys.directoryExists,
    getDirectories: ts.sys.getDirectories,
  });
}

let services: ts.LanguageService;
beforeAll(() => {
  services = editor();
});

/** What is shown over the last place where a word stands in the program. */
function shownOver(word: string): string {
  const info = services.getQuickInfoAtPosition(file, program.lastIndexOf(word));
  if (info === undefined) throw new Error(`Nothing is shown over ${word}.`);
  return ts.displayPartsToString(info.displayParts) + ts.displayPartsToString(info.documentation);
}

describe("an editor", () => {
  it("finds no mistake in the program", () => {
    const found = [...services.getSemanticDiagnostics(file), ...services.getSyntacticDiagnostics(file)];
    expect(found.map(({ messageText }) => messageText)).toEqual([]);
  });

  it("shows what a calculation does, and the types that go in and come out", () => {
    const shown = shownOver("filterChoice(");
    expect(shown).toContain("Which filter to mount on the lens.");
    expect(shown).toContain("scene: Scene");
    expect(shown).toContain("Call<FilterChoiceAnswer>");
  });

  it("shows the range and unit of a field", () => {
    expect(shownOver("depth_m")).toMatch(/Depth.*\b0\.1 to 100 m\b/s);
  });

  it("offers the chosen calculations, and no others", () => {
    const at = program.lastIndexOf("filterChoice(");
    const offered = services.getCompletionsAtPosition(file, at, undefined)?.entries.map(({ name }) => name);
    expect(offered).toEqual(["exposureLoss", "filterChoice"]);
  });
});
