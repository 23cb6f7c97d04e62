import { expect, it } from "vitest";
import * as quiz from "./index.js";

it("the public surface is this and no more", () => {
  expect(Object.keys(quiz).sort()).toEqual([
    "CATALOGUES",
    "LEVELS",
    "MISCONCEPTIONS",
    "MOST_ITEMS",
    "QuizProblem",
    "TEMPLATES",
    "TOPICS",
    "checkKeyring",
    "grade",
    "gradePaper",
    "itemsFor",
    "openPaper",
    "packageFiles",
    "packageZip",
    "publicItem",
    "sealPaper",
    "warmUp",
  ]);
});
