// A filter that a caller knows by its measured curve has no kind and no density: the contract takes one or the other.
import type { Scene } from "@sunfathom/contract";
import { describe, expect, it } from "vitest";
import type { OperationName } from "./calculations.js";
import { answer } from "./in-english.test-support.js";

/** Of a red filter: blue and green are held back. */
const CURVE = [
  { wavelength_nm: 400, transmittance: 0.15 },
  { wavelength_nm: 560, transmittance: 0.2 },
  { wavelength_nm: 610, transmittance: 0.9 },
  { wavelength_nm: 700, transmittance: 0.95 },
];
const REEF: Scene = { water_type: "IB", min_depth_m: 5, max_depth_m: 15 };

function bodyOf(name: OperationName, scene: Scene) {
  const answered = answer(name, scene);
  if (answered.status !== "ok") throw new Error(JSON.stringify(answered.problem));
  return JSON.parse(JSON.stringify(answered.body));
}
const codes = (list: { code: string }[]) => list.map(({ code }) => code);

describe("a filter that is known by its curve alone", () => {
  it.each(["filter-choice", "dive-advice"] as const)("is chosen from the kit where it serves: %s", (name) => {
    const kit = [{ id: "mine", item: "lens_filter" as const, filter_transmittance: CURVE }];
    const body = bodyOf(name, { ...REEF, kit });
    expect([body.filter_kind, body.filter_id]).toEqual(["red", "mine"]);
    expect(body).not.toHaveProperty("filter_density");
    expect(codes(body.reasons)).not.toContain("no_filter_owned");
    expect(codes(body.cautions)).toContain("filter_on_dry_land");
  });

  it.each(["exposure-loss", "white-balance", "colour-recovery"] as const)(
    "has the cautions of a filter where it is on the lens: %s",
    (name) => {
      const cautions = (change: Partial<Scene>) => codes(bodyOf(name, { ...REEF, ...change }).cautions);
      expect(cautions({ filter_transmittance: CURVE })).toContain("filter_on_dry_land");
      expect(cautions({ filter_transmittance: CURVE, filter_change_underwater: "flip" })).toContain(
        "filter_flip_practised",
      );
      expect(cautions({})).not.toContain("filter_on_dry_land");
    },
  );
});
