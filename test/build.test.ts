// Guards the two identities: a mended text changes the build, which says what bytes answers have, and not the version of the model,
// which says what figures they have.
import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { operationsIn } from "../packages/answers/src/operations/table.js";
import { MODEL_VERSION } from "../packages/planner/src/index.js";
import { en } from "../packages/words/src/en/index.js";
import { sceneProblems } from "../packages/words/src/en/problems/index.js";

const packages = new URL("../packages/", import.meta.url).pathname;
const script = "answers/scripts/write-build.mjs";
const caution = "words/src/en/cautions.ts";

let copy: string;
beforeAll(() => {
  copy = mkdtempSync(join(tmpdir(), "build-"));
  for (const name of ["optics", "planner", "contract", "words", "answers", "quiz", "pictures"])
    cpSync(`${packages}${name}/src`, join(copy, name, "src"), { recursive: true });
  mkdirSync(join(copy, "answers/scripts"));
  cpSync(packages + script, join(copy, script));
});
afterAll(() => rmSync(copy, { recursive: true }));

/** The build of the copy as it stands. */
function build(): string | undefined {
  execFileSync(process.execPath, [join(copy, script)]);
  return /BUILD = "(\w+)"/.exec(readFileSync(join(copy, "answers/src/generated/build.ts"), "utf8"))?.[1];
}

function mend(file: string): void {
  const text = readFileSync(join(copy, file), "utf8");
  const mended = text.replace("dive plan", "plan for a dive");
  expect(mended).not.toBe(text);
  writeFileSync(join(copy, file), mended);
}

describe("a mended text", () => {
  it("changes the build, and the same sources give the same one", () => {
    const before = build();
    expect(before).toMatch(/^[\da-f]{12}$/);
    expect(build()).toBe(before);
    mend(caution);
    expect(build()).not.toBe(before);
  });

  it("is in answers, and changes neither their figures nor the version of the model", () => {
    const mended = {
      ...en,
      attenuation: {
        ...en.attenuation,
        cautions: { ...en.attenuation.cautions, not_a_dive_planner: "This plans no dive." },
      },
    };
    const [before, after] = [en, mended].map((words) => {
      const attenuation = operationsIn(words, sceneProblems).find(({ name }) => name === "attenuation");
      const replied = attenuation?.reply({ water_type: "IB", depth_m: 12 });
      if (replied?.status !== "ok") throw new Error("The scene was not answered.");
      return replied.body as { cautions: { text: string }[]; model: { version: string } };
    });
    expect(after?.cautions[0]?.text).toBe("This plans no dive.");
    expect(before?.cautions[0]?.text).not.toBe("This plans no dive.");
    expect(after?.model.version).toBe(MODEL_VERSION);
    expect({ ...after, cautions: [] }).toEqual({ ...before, cautions: [] });
  });
});
