import { expect, it } from "vitest";
import { pathOf, queryOf } from "./path-of.js";

// RFC 3986, section 3.4: the query begins at the first question mark and may hold further ones.
it.each([
  ["/v1/models", "/v1/models", ""],
  ["/v1/models?", "/v1/models", ""],
  ["/v1/models?a=1&b=2", "/v1/models", "a=1&b=2"],
  ["/v1/models?a=1?b=2", "/v1/models", "a=1?b=2"],
  ["?a=1", "", "a=1"],
  ["", "", ""],
])("%j has path %j and query %j", (url, path, query) => {
  expect(pathOf(url)).toBe(path);
  expect(queryOf(url)).toBe(query);
});
