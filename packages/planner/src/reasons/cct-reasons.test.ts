import { expect, it } from "vitest";
import { cctReasons } from "./cct-reasons.js";

const near = { depth_m: 2, duv: 0.01, cct_K: 6000 };

it("nothing is said where every depth has a colour temperature", () => {
  expect(cctReasons([near, { ...near, depth_m: 3 }])).toEqual([]);
  expect(cctReasons([])).toEqual([]);
});

// CIE, from memory: no correlated colour temperature beyond a distance of 0.05 from the locus.
it.each([
  [0.06, "cct_without_meaning", { depth_m: 5, duv: 0.06 }],
  [-0.06, "cct_without_meaning", { depth_m: 5, duv: -0.06 }],
  [0.05, "cct_beyond_locus", { depth_m: 5 }],
  [0.01, "cct_beyond_locus", { depth_m: 5 }],
])("the first depth without one, at %s from the locus, is told as %s", (duv, code, parameters) => {
  const reasons = cctReasons([near, { depth_m: 5, duv }, { depth_m: 9, duv: 0.2 }]);
  expect(reasons).toHaveLength(1);
  expect([reasons[0].code, reasons[0].basis]).toEqual([code, "computed"]);
  expect(reasons[0].parameters).toEqual(parameters);
});
