// The golden figures of all calculations but plans, and of the reference data.
import { afterAll, it } from "vitest";
import { readReference, references } from "../../packages/answers/src/index.js";
import { holdGolden, keepScenes } from "./hold.js";
import { recorded } from "./recorded.js";

const hold = holdGolden({ isOurs: (name) => name !== "dive-advice", version: "version" });

it("keeps the figures of the reference data", () => {
  const now = references.map((reference) => [
    reference.name,
    recorded({ status: "ok", body: readReference(reference) }),
  ]);
  hold("reference", Object.fromEntries(now));
});

afterAll(keepScenes);
