import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const CONVERTER = "@citolab/qti-convert@0.3.52";

/**
 * A package of QTI 2.1 as one of QTI 3.0, converted by a tool from the registry. It is no dependency, as one of its own is not
 * open source.
 * @param {Uint8Array} zip
 */
export function intoVersion3(zip) {
  const folder = mkdtempSync(join(tmpdir(), "qti-"));
  try {
    writeFileSync(join(folder, "quiz.zip"), zip);
    execFileSync("npx", ["--yes", "-p", CONVERTER, "qti-convert-pkg", "quiz.zip"], {
      cwd: folder,
      stdio: "ignore",
    });
    return readFileSync(join(folder, "quiz-qti3.zip"));
  } finally {
    rmSync(folder, { recursive: true });
  }
}
