// Writes accuracy/README.md and its plot from the built packages. Run after a build: node packages/planner/scripts/write-accuracy.mjs
// `--check` writes nothing and fails when a file differs from what the planner gives.
import { writeOrCheck } from "../../optics/scripts/accuracy/files.mjs";
import { accuracyFiles } from "./accuracy/page.mjs";

writeOrCheck(new URL("../accuracy/", import.meta.url), accuracyFiles());
