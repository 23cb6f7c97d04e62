import { calculationNames, referenceNames } from "@sunfathom/contract";
import { expect, it } from "vitest";
import * as answers from "./index.js";

/** Each under a name of its own, for those who compute one alone. */
const computed = [...calculationNames, ...referenceNames].map((name) =>
  name.replace(/-(.)/g, (_, first: string) => first.toUpperCase()),
);

it("exports these, and nothing else", () => {
  expect(Object.keys(answers).sort()).toEqual(
    [
      ...computed,
      "checkBatchHere",
      "planBatch",
      "sayBatchRefusal",
      "sceneAt",
      "brief",
      "build",
      "checkRequest",
      "checkpoint",
      "member",
      "modelVersion",
      "diveAdviceWith",
      "mountsDiveAdvice",
      "textsOfDiveAdvice",
      "nearest",
      "onCheckpoint",
      "operationsIn",
      "pick",
      "problem",
      "readReference",
      "readable",
      "references",
      "said",
      "sayRefusal",
      "selectionOf",
      "shapeOf",
      "toBytes",
      "toJson",
      "unsaid",
      "lightSceneWith",
      "clockIn",
      "lightWindowsReady",
      "checkLook",
      "kitAdviceReady",
      "tripAdviceReady",
      "diveTimelinesReady",
      "mountedOn",
    ].sort(),
  );
});
