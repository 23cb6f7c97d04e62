import { daylightScene, NIGHT_WRECK } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import type { Scene } from "../scene/scene.js";
import { colourRecovery } from "./colour-recovery.js";
import { colourRedDepths } from "./red-depths.js";

const red = (scene: Scene): Scene => ({ ...scene, filter_kind: "red", filter_density: 0.9 });

describe("where red ends, without its spread", () => {
  it("is what the answer calls likely, behind the filter in use", () => {
    const scene = red(daylightScene("IB", 50, 5));
    const answer = colourRecovery(scene);
    const { acceptable_m, gone_m } = colourRedDepths(scene) ?? {};
    expect(acceptable_m).toBeCloseTo(answer.red_acceptable_to_with_filter_depth_m?.likely ?? 0, 9);
    expect(gone_m).toBeCloseTo(answer.red_gone_from_with_filter_depth_m?.likely ?? 0, 9);
  });

  it("is nowhere without daylight", () => {
    expect(colourRedDepths(NIGHT_WRECK)).toBeUndefined();
  });
});
