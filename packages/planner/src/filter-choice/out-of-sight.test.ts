// Beyond what one can see, a filter changes the colour of the haze and nothing else.

import { daylightScene } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import { visibilityOf_m } from "../light/sight.js";
import type { Finish, Scene } from "../scene/scene.js";
import { filterChoice } from "./filter-choice.js";

const codesOf = (scene: Scene) => filterChoice(scene).reasons.map(({ code }) => code);

describe("a subject beyond the visibility", () => {
  it("is told by the visibility that the scene gives (4.8 over the beam attenuation, Zaneveld & Pegau 2003)", () => {
    const { water_type: _, ...scene } = daylightScene("IB", 45, 8);
    const conditions = conditionsOf({ ...scene, visibility_m: 9, water_hue: "green" });
    expect(visibilityOf_m(conditions)).toBeCloseTo(9, 2);
  });

  it.each<Finish>(["in_camera", "basic_edit", "matched"])(
    "gets no filter after %s, and is told to come closer, with its caution",
    (finish) => {
      for (const [type, depth_m] of [
        ["7C", 2],
        ["9C", 1.5],
        ["5C", 6],
      ] as const) {
        const scene: Scene = { ...daylightScene(type, 55, depth_m), finish };
        const visibility_m = visibilityOf_m(conditionsOf(scene));
        const hidden = { ...scene, subject_distance_m: visibility_m * 1.05 };
        const { filter_kind, reasons, cautions } = filterChoice(hidden);
        expect([type, filter_kind]).toEqual([type, "none"]);
        const told = reasons.find(({ code }) => code === "subject_out_of_sight");
        expect(told?.parameters).toEqual({ distance_m: hidden.subject_distance_m, visibility_m });
        expect(cautions.map(({ code }) => code)).toContain("closer_under_control");
        expect(codesOf({ ...scene, subject_distance_m: visibility_m * 0.95 })).not.toContain(
          "subject_out_of_sight",
        );
      }
    },
  );
});
