// Writes everything that is generated and committed, in the order in which one needs the other: `npm run generate`, after the names
// of operations, a schema, a description or an example has changed.
import { spawnSync } from "node:child_process";

const tsc = ["node_modules/typescript/bin/tsc", "-b"];
const steps = [
  [".ci/write-operations.mjs"],
  [...tsc, "packages/contract"],
  ["packages/contract/scripts/write-wire-schemas.mjs"],
  ["packages/answers/scripts/write-build.mjs"],
  [...tsc, "services/api"],
  ["services/api/scripts/write-pages.mjs"],
  ["services/api/dist/openapi/write-answers.js"],
  ["services/api/dist/openapi/write.js"],
  ["services/api/dist/features/pictures/write-shown.js"],
  [".ci/promises.mjs", "--write"],
  ["packages/sdk/scripts/generate.mjs"],
  [".ci/setup.mjs"],
];

for (const step of steps) {
  const { status } = spawnSync(process.execPath, step, { stdio: "inherit" });
  if (status !== 0) process.exit(status ?? 1);
}
