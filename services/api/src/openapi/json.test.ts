import { expect, it } from "vitest";
import { isObject } from "./json.js";

// RFC 8259, section 1: JSON has objects, arrays, strings, numbers, true, false and null.
it.each([{}, { length: 1 }, Object.create(null)])("%j is an object", (value) => {
  expect(isObject(value)).toBe(true);
});

it.each([[], [{}], null, "text", 0, true, undefined])("%j is none", (value) => {
  expect(isObject(value as null)).toBe(false);
});
