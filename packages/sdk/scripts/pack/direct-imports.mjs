import { fileURLToPath } from "node:url";
import ts from "typescript";

const packages = fileURLToPath(new URL("../../../", import.meta.url));

/** What the compiler knows of all that entries lead to. @param {string[]} entries */
export function programOf(entries) {
  return ts.createProgram(entries, {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    customConditions: ["source"],
    types: [],
  });
}

/**
 * Has modules import a thing from where it is made, not from its package's index. The packer puts what several entries need
 * into one file, and takes an index for something that whoever asks for a part of it needs whole.
 * @param {ts.Program} program
 * @returns {import("esbuild").Plugin}
 */
export function directImports(program) {
  const checker = program.getTypeChecker();
  return {
    name: "direct-imports",
    setup(build) {
      build.onLoad({ filter: /\.ts$/ }, ({ path }) => {
        const source = path.startsWith(packages) ? program.getSourceFile(path) : undefined;
        return source && { contents: withDirectImports(source, checker), loader: "ts" };
      });
    },
  };
}

/** @param {ts.SourceFile} source @param {ts.TypeChecker} checker @returns {string} */
function withDirectImports(source, checker) {
  const neighbours = source.statements.filter(ts.isImportDeclaration).filter(isOfNeighbour);
  // From the last to the first, so that places before stay where they are.
  return neighbours.reverse().reduce((text, statement) => {
    const direct = namesIn(statement).map((name) => directImport(name, checker));
    return text.slice(0, statement.getStart()) + direct.join(" ") + text.slice(statement.getEnd());
  }, source.text);
}

/** @param {ts.ImportDeclaration} statement */
function isOfNeighbour({ moduleSpecifier }) {
  return ts.isStringLiteral(moduleSpecifier) && moduleSpecifier.text.startsWith("@sunfathom/");
}

/** The values that a statement imports. @param {ts.ImportDeclaration} statement */
function namesIn(statement) {
  const { importClause } = statement;
  const names = importClause?.namedBindings;
  if (importClause === undefined || names === undefined || !ts.isNamedImports(names))
    throw new Error(`No names in ${statement.getText()}`);
  return importClause.isTypeOnly ? [] : names.elements.filter(({ isTypeOnly }) => !isTypeOnly);
}

/** @param {ts.ImportSpecifier} specifier @param {ts.TypeChecker} checker */
function directImport({ name }, checker) {
  const imported = checker.getSymbolAtLocation(name);
  const made = imported && checker.getAliasedSymbol(imported);
  const home = made?.declarations?.[0]?.getSourceFile().fileName;
  if (home === undefined) throw new Error(`It is not known where ${name.text} is made.`);
  return `import { ${made?.name} as ${name.text} } from ${JSON.stringify(home)};`;
}
