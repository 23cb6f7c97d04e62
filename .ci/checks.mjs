// Runs every static check, also after one has failed, and ends by naming those that failed.
// To add a check, add its npm script here.
import { spawnSync } from "node:child_process";

const checks = [
  { script: "lint", what: "format and lint rules" },
  { script: "typecheck", what: "types of the tests" },
  { script: "deps", what: "imports point one way" },
  { script: "unused", what: "no unused code or dependency" },
  { script: "lint:openapi", what: "the API description keeps every rule of its linter" },
  { script: "promises", what: "the API description keeps what it has promised" },
  { script: "lint:dockerfile", what: "the Dockerfile keeps every rule of its linter" },
  { script: "generated:sdk", what: "the client is generated from the committed API description" },
  { script: "audit", what: "no grave advisory on what runs, where the registry can be asked" },
];

const failed = checks.filter(({ script, what }) => {
  console.log(`\n[check] ${script}: ${what}`);
  const { status } = spawnSync("npm", ["run", "--silent", script], { stdio: "inherit" });
  return status !== 0;
});

if (failed.length > 0) {
  console.error(`\n[check] failed: ${failed.map(({ script }) => script).join(", ")}`);
  process.exit(1);
}
console.log(`\n[check] all ${checks.length} static checks passed`);
