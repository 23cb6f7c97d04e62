import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";

/** Says which packages a start of the built service asks for, by whichever way of loading. */
const program = `
import { createRequire, register } from "node:module";
import { MessageChannel } from "node:worker_threads";
const { port1, port2 } = new MessageChannel();
const asked = new Set();
port1.on("message", (name) => asked.add(name));
const hooks = "let port; export const initialize = (given) => { port = given; };" +
  "export const resolve = (name, context, next) => { if (!/^[./]|^file:/.test(name)) port.postMessage(name); return next(name, context); };";
register("data:text/javascript," + encodeURIComponent(hooks), { data: port2, transferList: [port2] });
const { createApp } = await import(process.argv[1]);
await (await createApp()).ready();
await new Promise((resolve) => setTimeout(resolve, 100));
for (const file of Object.keys(createRequire(process.argv[1]).cache)) asked.add(file.replace(/^.*\\/node_modules\\//, ""));
console.log([...asked].join("\\n"));
process.exit(0);
`;

it("loads neither what schemas are written and converted with, nor compilers that it has no use for", () => {
  const app = fileURLToPath(new URL("../../services/api/dist/app.js", import.meta.url));
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    ["--input-type=module", "-e", program, app],
    { encoding: "utf8" },
  );
  expect(status, stderr).toBe(0);
  const asked = stdout.split("\n");
  // It would see them: these it must load.
  expect(asked).toContain("@sunfathom/contract");
  expect(asked.some((name) => name.startsWith("find-my-way/"))).toBe(true);
  const needless = /^(zod|zod-to-json-schema|ajv|@fastify\/(ajv|fast-json-stringify)-compiler)(\/|$)/;
  expect(asked.filter((name) => needless.test(name))).toEqual([]);
});
