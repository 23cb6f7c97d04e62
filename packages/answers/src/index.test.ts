import { expect, it } from "vitest";
import * as answers from "./index.js";

it("exports these, and nothing else", () => {
  expect(Object.keys(answers).sort()).toEqual([
    "answer",
    "attenuation",
    "build",
    "checkRequest",
    "colourRecovery",
    "diveAdvice",
    "exposureLoss",
    "filterChoice",
    "filterKinds",
    "filterMounting",
    "member",
    "mixedLight",
    "modelVersion",
    "models",
    "nearest",
    "onCheckpoint",
    "operations",
    "problem",
    "readReference",
    "references",
    "shapeOf",
    "toBytes",
    "toJson",
    "waterTypes",
    "whiteBalance",
  ]);
});
