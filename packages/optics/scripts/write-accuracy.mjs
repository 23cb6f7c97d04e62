// Writes accuracy/README.md and its plots from the built package. Run after a build: node packages/optics/scripts/write-accuracy.mjs
// `--check` writes nothing and fails when a file differs from what the model gives.
import { writeOrCheck } from "./accuracy/files.mjs";
import { accuracyFiles } from "./accuracy/page.mjs";

writeOrCheck(new URL("../accuracy/", import.meta.url), accuracyFiles());
