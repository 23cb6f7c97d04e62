import { maxErrors } from "@sunfathom/contract";
import { expect, it } from "vitest";
import { queryFieldsOf } from "../../http/asked/query.js";
import { tongueOf } from "../../tongues.js";
import { readLook } from "./look-asked.js";

const { problems } = tongueOf("en");
const ofScene = queryFieldsOf({ request: "Scene", besideLists: [] });

it("finds what was meant of as many names as a problem lists, and of no more", () => {
  // Each is one letter off, and a URL holds hundreds.
  const names = Array.from({ length: 400 }, (_, n) => `forma${String.fromCharCode(0x4e00 + n)}`);
  const { errors } = readLook(
    names.map((name) => `${encodeURIComponent(name)}=svg`).join("&"),
    problems,
    ofScene,
  );
  expect(errors.length).toBe(maxErrors);
  expect(new Set(errors.map(({ did_you_mean }) => did_you_mean))).toEqual(new Set(["format"]));
});
