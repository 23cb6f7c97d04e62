import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { cpus, loadavg, release, totalmem } from "node:os";
import { modelVersion } from "@sunfathom/answers";
import { canPin } from "./process.mjs";

const manifest = JSON.parse(readFileSync(new URL("../package.json", import.meta.url), "utf8"));
/** Versions are pinned exactly. */
const versionOf = (/** @type {string} */ name) => manifest.devDependencies[name];

/** What the figures depend on besides the code. */
export function environment() {
  const python = spawnSync(
    "python3",
    ["-c", "import numpy, sys; print(sys.version.split()[0], numpy.__version__)"],
    {
      encoding: "utf8",
    },
  );
  const [pythonVersion = "none", numpyVersion = "none"] =
    python.status === 0 ? python.stdout.trim().split(" ") : [];
  return {
    date: new Date().toISOString().slice(0, 16),
    processor: cpus()[0]?.model ?? "unknown",
    cores: cpus().length,
    memory_GB: Math.round(totalmem() / 1e9),
    kernel: release(),
    node: process.version,
    python: pythonVersion,
    numpy: numpyVersion,
    ml_matrix: versionOf("ml-matrix"),
    fastify: versionOf("fastify"),
    autocannon: versionOf("autocannon"),
    pinned: canPin,
    load_before: Number((loadavg()[0] ?? 0).toFixed(2)),
    model: modelVersion,
  };
}
