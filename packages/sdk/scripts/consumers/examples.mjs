import { cpSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { execute, freshProject } from "./project.mjs";

const examples = fileURLToPath(new URL("../../examples/", import.meta.url));

/** Runs what an example exports, and says what it gave, and what it took. */
const runner = `const [name, baseUrl] = process.argv.slice(2);
let calls = 0, bytes = 0;
const counting = async (url, init) => {
  const response = await fetch(url, init);
  calls += 1;
  bytes += (await response.clone().arrayBuffer()).byteLength;
  return response;
};
const [run] = Object.values(await import("./" + name + ".js"));
const lines = await run({ baseUrl, fetch: counting });
console.log(JSON.stringify({ calls, bytes, lines }));
`;

/**
 * An integration as small as it can be, in a clean folder, from the tarball that the service itself gives.
 * @param {string} name
 * @param {{ lines: number, says: RegExp }} wanted how many lines it gives at least, and what one of them says
 * @returns {import("../consumers.mjs").Check}
 */
function example(name, { lines, says }) {
  return {
    name: `the ${name} example, installed from the service`,
    run: async ({ folder, baseUrl }) => {
      const text = readFileSync(join(examples, `${name}.ts`), "utf8");
      const own = text.split("\n").length - 1;
      if (own >= 60) throw new Error(`${own} lines: an integration is to take fewer than 60.`);
      if (/\bas (?!const\b)|\bany\b|@ts-/.test(text)) throw new Error("It goes around the compiler.");
      const packages = ["typescript@5.5.4", "@types/node@20.19.43"];
      const place = { folder, tarball: `${baseUrl}/sdk/latest` };
      const project = await freshProject(/** @type {any} */ (place), `example-${name}`, packages);
      cpSync(join(examples, `${name}.ts`), join(project, `${name}.ts`));
      const options = [
        "--strict",
        "--exactOptionalPropertyTypes",
        "--module",
        "nodenext",
        "--target",
        "es2022",
      ];
      await execute(join(project, "node_modules/.bin/tsc"), [...options, `${name}.ts`], project);
      writeFileSync(join(project, "run.mjs"), runner);
      const before = process.cpuUsage();
      const found = JSON.parse(await execute(process.execPath, ["run.mjs", name, baseUrl], project));
      const { user, system } = process.cpuUsage(before);
      if (found.lines.length < lines || !found.lines.some((/** @type {string} */ line) => says.test(line)))
        throw new Error(found.lines.join("\n").slice(0, 2000));
      const seconds = ((user + system) / 1e6).toFixed(1);
      return `${own} lines; ${found.calls} calls, ${Math.round(found.bytes / 1000)} kB, ${seconds} s of the service's processor`;
    },
  };
}

export const exampleChecks = [
  example("booking", { lines: 45, says: /^Gannet Stair 12:00, action: (red|magenta|no filter)/ }),
  example("course", { lines: 10, says: /^0 of \d+$/ }),
  example("trips", { lines: 308, says: /^2026-12-10 13:00 Old Mole: \d+(\.\d+)? % of red left$/ }),
];

const tried = exampleChecks.length;
if (readdirSync(examples).filter((file) => file.endsWith(".ts")).length !== tried)
  throw new Error("An example is not tried.");
