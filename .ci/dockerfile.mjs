// Lints the Dockerfile, and fails on whatever the linter finds, warnings too. Another file can be named.
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { validate } from "dockerfile-utils";

const file = process.argv[2] ?? fileURLToPath(new URL("../services/api/Dockerfile", import.meta.url));
const findings = validate(readFileSync(file, "utf8"));

for (const { range, message } of findings)
  console.error(`[dockerfile] ${file}:${range.start.line + 1}: ${message}`);
console.log(`[dockerfile] ${findings.length} findings`);
process.exitCode = findings.length > 0 ? 1 : 0;
