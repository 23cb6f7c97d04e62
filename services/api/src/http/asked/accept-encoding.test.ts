import { expect, it } from "vitest";
import { encodingFor } from "./accept-encoding.js";

// RFC 9110, section 12.5.3: its own examples, and the rules beside them.
it.each([
  [undefined, undefined],
  ["", undefined],
  ["compress, gzip", "gzip"],
  ["*", "br"],
  ["compress;q=0.5, gzip;q=1.0", "gzip"],
  ["gzip;q=1.0, identity; q=0.5, *;q=0", "gzip"],
  ["gzip, deflate, br", "br"],
  ["br;q=0, gzip", "gzip"],
  ["br;q=0.000, gzip;q=0", undefined],
  ["*, br;q=0", "gzip"],
  ["x-gzip", "gzip"],
  ["GZIP", "gzip"],
  ["identity", undefined],
])("%s takes %s", (header, encoding) => {
  expect(encodingFor(header, ["br", "gzip"])).toBe(encoding);
});

it("gives nothing that is not offered", () => {
  expect(encodingFor("br", ["gzip"])).toBeUndefined();
});
