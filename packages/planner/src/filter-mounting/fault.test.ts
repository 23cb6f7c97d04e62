// Guards how faults come to a verdict.
import { expect, it } from "vitest";
import { care, fatal, VERDICTS, weighed } from "./fault.js";
import { reason } from "./reason.js";

const slow = reason("mount_fixed_for_dive", "common_practice");
const bulges = reason("mount_front_bulges", "common_practice");

it("nothing against it fits, a doubt asks for care, and a fatal fault rules out and is told first", () => {
  expect(weighed([])).toEqual({ verdict: "fits", faults: [] });
  expect(weighed([care(slow)])).toEqual({ verdict: "fits_with_care", faults: [slow] });
  expect(weighed([fatal(bulges)])).toEqual({ verdict: "does_not_fit", faults: [bulges] });
  expect(weighed([care(slow), fatal(bulges)])).toEqual({ verdict: "does_not_fit", faults: [bulges, slow] });
});

it("verdicts go from best to worst", () => {
  expect(VERDICTS).toEqual(["fits", "fits_with_care", "does_not_fit"]);
});
