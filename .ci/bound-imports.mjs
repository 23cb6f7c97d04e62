// Under the tests every use of an imported name is a call to a getter of its module, since names may change after they are loaded.
// Here none does, so that each is looked up once, on loading: that takes a quarter to a third off everything that is computed.
const OURS =
  /\/(?:packages\/[^/]+\/src|services\/[^/]+\/src|test)\/(?!.*\/node_modules\/)(?!.*\.(?:test|prove)\.ts$).*\.ts$/;

/**
 * A Vite plugin that looks imported names up once. `npm run deps` refuses the circles in which a name would not be there yet.
 * @returns {import("vitest/config").Plugin}
 */
export const boundImports = () => ({
  name: "bound-imports",
  enforce: "post",
  transform(code, id) {
    if (!OURS.test(id)) return null;
    if (/^export let /m.test(code))
      this.error(`${id} exports a name that changes: its importers keep the first value.`);
    let done = 0;
    let bound = "";
    for (const statement of this.parse(code).body) {
      if (statement.type !== "ImportDeclaration" || statement.specifiers.length === 0) continue;
      const { start, end, specifiers, source } = statement;
      if (specifiers.some((specifier) => specifier.type !== "ImportSpecifier")) continue;
      const names = specifiers.map((of) => code.slice(of.start, of.end).replace(" as ", ": ")).join(", ");
      // On as many lines as before, so that what a failure names is where it says.
      const lines = "\n".repeat(code.slice(start, end).split("\n").length - 1);
      bound += `${code.slice(done, start)}import * as from${start} from ${source.raw}; const { ${names} } = from${start};${lines}`;
      done = end;
    }
    return done === 0 ? null : { code: bound + code.slice(done), map: null };
  },
});
