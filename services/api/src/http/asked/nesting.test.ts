// Guards how deep a body may be: RFC 8259, section 9, leaves the limit to the reader, section 7 says what is a string.
import { expect, it } from "vitest";
import { isDeep } from "./nesting.js";

it.each([
  ["1", 0],
  ["[]", 1],
  ['{"a":[{}]}', 3],
  ["[[],[],{}]", 2],
  [`[${"[],".repeat(100)}{}]`, 2],
  ['"[[["', 0],
  [String.raw`["\"[[", "\\", []]`, 2],
  [String.raw`{"\\\"{":[]}`, 2],
])("%s is %i deep", (text, depth) => {
  expect(() => JSON.parse(text)).not.toThrow();
  expect(isDeep(text, depth)).toBe(false);
  if (depth > 0) expect(isDeep(text, depth - 1)).toBe(true);
});
