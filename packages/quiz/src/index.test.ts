import { expect, it } from "vitest";
import * as quiz from "./index.js";

it("the public surface is this and no more", () => {
  expect(Object.keys(quiz).sort()).toEqual([
    "CATALOGUES",
    "LEVELS",
    "LONGEST_OPEN_DAYS",
    "MOST_ITEMS",
    "PACKAGE_FORMATS",
    "QuizProblem",
    "RELEASES",
    "TEMPLATES",
    "TOPICS",
    "cautionsOf",
    "checkKeyring",
    "checkResponses",
    "closingOf",
    "grade",
    "gradePaper",
    "isBlank",
    "itemsAgain",
    "itemsFor",
    "openPaper",
    "packageFiles",
    "packageZip",
    "practiceZip",
    "publicItem",
    "sealPaper",
    "warmUp",
    "zipOf",
  ]);
});
