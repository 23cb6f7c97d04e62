import { expect, it } from "vitest";
import * as answers from "./index.js";

it("exports these, and nothing else", () => {
  expect(Object.keys(answers).sort()).toEqual([
    "answer",
    "calculations",
    "checkRequest",
    "member",
    "modelVersion",
    "nearest",
    "operations",
    "problem",
    "readReference",
    "references",
    "shapeOf",
    "toBytes",
    "toJson",
  ]);
});
