// Starting grades, applied to the recorded chart by OpenColorIO, an implementation of the Common LUT Format and of ASC CDL of its own
// (Debian: python3-pyopencolorio), against the colours that filters are judged by, compared by culori. Where it is not installed, the
// tests are skipped and say so.
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import {
  DARK_AND_GREEN,
  HARBOUR_WALL_AFTERNOON,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
} from "@sunfathom/fixtures/scenes";
import { converter, differenceCiede2000 } from "culori";
import { afterAll, describe, expect, it } from "vitest";
import { cameraState } from "../../../planner/src/camera/camera-state.js";
import { codeShare } from "../../../planner/src/camera/code-curve.js";
import { apply, type Vector3 } from "../../../planner/src/camera/matrix.js";
import { clipped, pictureMatrix } from "../../../planner/src/camera/picture.js";
import { chartSeen } from "../../../planner/src/filter-choice/merit.js";
import { startingGrade } from "../../../planner/src/grades/starting-grade.js";
import { conditionsOf } from "../../../planner/src/light/conditions.js";
import { lensFilterOf } from "../../../planner/src/light/lens-filter.js";
import { stageAt } from "../../../planner/src/light/stage.js";
import { underwater } from "../../../planner/src/light/underwater.js";
import type { Scene } from "../../../planner/src/scene/scene.js";
import { NOMINAL } from "../../../planner/src/uncertainty/nuisance.js";
import { pictures } from "../../../words/src/en/pictures.js";
import { gradeCdl, gradeClf } from "./grade-file.js";

const python = ["/usr/bin/python3", "python3"].find(
  (program) => spawnSync(program, ["-c", "import PyOpenColorIO"]).status === 0,
);
if (python === undefined)
  console.warn("OpenColorIO is not installed: starting grades are not tried with it.");

const folder = mkdtempSync(join(tmpdir(), "grades-"));
afterAll(() => rmSync(folder, { recursive: true }));

const script = `
import json, sys, PyOpenColorIO as ocio
asked = json.load(sys.stdin)
processor = ocio.Config.CreateRaw().getProcessor(ocio.FileTransform(src=asked["file"])).getDefaultCPUProcessor()
print(json.dumps([processor.applyRGB(value) for value in asked["values"]]))
`;
function applied(name: string, text: string, values: readonly Vector3[]): Vector3[] {
  const file = join(folder, name);
  writeFileSync(file, text);
  const { stdout, stderr } = spawnSync(python ?? "", ["-c", script], {
    input: JSON.stringify({ file, values }),
    encoding: "utf8",
  });
  if (stdout === "") throw new Error(stderr);
  return JSON.parse(stdout);
}

/** IEC 61966-2-1, its straight part led on below zero. */
const light = (code: number): number => (code <= 0.04045 ? code / 12.92 : ((code + 0.055) / 1.055) ** 2.4);
const lab = converter("lab65");
const difference = differenceCiede2000();
const saying = { texts: pictures.grade, caution: pictures.caution, units: "metric" } as const;

/** The chart in the middle of the filmed depths: what was recorded, linear, and what becomes of it. */
function chart(scene: Scene) {
  const finish = scene.finish === "matched" ? "matched" : "basic_edit";
  const camera = cameraState(scene, NOMINAL, finish);
  const stage = stageAt(
    underwater(conditionsOf(scene), NOMINAL),
    (scene.min_depth_m + scene.max_depth_m) / 2,
  );
  const { seen, finished } = chartSeen(stage, lensFilterOf(scene, NOMINAL), camera, { finish });
  const { fromRaw } = pictureMatrix(camera.profile);
  return {
    recorded: seen.map(({ from }) => (finish === "matched" ? from : clipped(apply(fromRaw, from)))),
    predicted: seen.map(({ from }) => finished(...from)),
    codes: (value: Vector3): Vector3 => value.map((v) => codeShare(camera.curve, v)) as unknown as Vector3,
  };
}

function offBy(shown: readonly Vector3[], predicted: readonly Readonly<Vector3>[]): number {
  return Math.max(
    ...shown.map(([r, g, b], i) => {
      const [x, y, z] = predicted[i] ?? [0, 0, 0];
      return difference(lab({ mode: "lrgb", r, g, b }), lab({ mode: "xyz65", x, y, z }));
    }),
  );
}

const red = { filter_kind: "red", filter_density: 1.2 } as const;
const scenes: Readonly<Record<string, Scene>> = {
  "a reef, matched": { ...OUTER_REEF_MORNING, finish: "matched" },
  "a reef through a red filter, matched": { ...OUTER_REEF_MORNING, ...red, finish: "matched" },
  "a reef through a red filter, sliders": { ...OUTER_REEF_MORNING, ...red, finish: "basic_edit" },
  "a harbour wall, sliders": { ...HARBOUR_WALL_AFTERNOON, finish: "basic_edit" },
  "dark and green, matched, in log": {
    ...DARK_AND_GREEN,
    finish: "matched",
    recording_curve: "log",
    bits: 10,
  },
  "a wreck at night, sliders, in HLG": {
    ...NIGHT_WRECK,
    finish: "basic_edit",
    recording_curve: "hlg",
    bits: 10,
  },
  "a reef, matched, linear": {
    ...OUTER_REEF_MORNING,
    finish: "matched",
    recording_curve: "linear",
    bits: 12,
  },
};

describe.skipIf(python === undefined).each(Object.entries(scenes))("the grade of %s", (_, scene) => {
  const grade = startingGrade(scene);
  const { recorded, predicted, codes } = chart(scene);

  it("gives the colours that the merit predicts, as a process list, within a CIEDE2000 of 0.5", () => {
    const out = applied("grade.clf", gradeClf(grade, "a", saying), recorded.map(codes));
    const shown = out.map((value) => value.map(light) as unknown as Vector3);
    expect(offBy(shown, predicted)).toBeLessThan(0.5);
    // So that the test would tell: without the grade some colour is off by twice that, even where lights leave little to do.
    expect(offBy(recorded, predicted)).toBeGreaterThan(1);
  });

  it.skipIf(grade.finish === "matched")("gives them as a color decision list in linear light, too", () => {
    if (grade.finish === "matched") return;
    const out = applied("grade.cc", gradeCdl(grade, "a", saying), recorded);
    expect(offBy(out.map(clipped), predicted)).toBeLessThan(0.5);
  });
});
