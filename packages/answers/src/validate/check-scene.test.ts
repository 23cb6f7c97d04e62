import { maxErrors, mountingRuleConcerns, sceneRuleConcerns } from "@sunfathom/contract";
import { describe, expect, it } from "vitest";
import { lightScene } from "../scene/light-scene.js";
import { mountingScene } from "../scene/mounting-scene.js";
import type { Check } from "./check.js";
import { list } from "./check-list.js";
import { object } from "./check-object.js";
import { type Checked, checkScene } from "./check-scene.js";
import { checkOfScene } from "./checker.js";
import { Findings } from "./findings.js";
import { wrongType } from "./wrong-type.js";

const light = {
  check: checkOfScene(lightScene.schema),
  rules: lightScene.rules,
  concerns: sceneRuleConcerns,
};
const mounting = {
  check: checkOfScene(mountingScene.schema),
  rules: mountingScene.rules,
  concerns: mountingRuleConcerns,
};

function codesOf(checked: Checked<unknown>): string[] {
  return "findings" in checked ? checked.findings.list.map(({ code, pointer }) => `${pointer} ${code}`) : [];
}

const codes = (raw: unknown) => codesOf(checkScene(light, raw, []));

describe("the whole check of a scene", () => {
  it("passes a good scene on", () => {
    const scene = { water_type: "IB", depth_m: 12 };
    expect(checkScene(light, scene, [])).toEqual({ scene });
  });

  it("reports what its schema and its rules find at once", () => {
    expect(
      codes({
        water_type: "IB",
        dep: 3,
        iso: -1,
        min_depth_m: 9,
        max_depth_m: 5,
        shutter_s: 1,
        frame_rate_fps: 25,
      }),
    ).toEqual([
      "/dep unknown_field",
      "/iso out_of_range",
      "/min_depth_m depths_in_order",
      "/shutter_s shutter_within_frame",
    ]);
  });

  it("asks no rule about fields that are not well formed, nor about what a misspelt name was meant for", () => {
    expect(codes({ water_typ: "IB", dept_m: 12 })).toEqual([
      "/water_typ unknown_field",
      "/dept_m unknown_field",
    ]);
    expect(codes({ water_type: 5, depth_m: "deep" })).toEqual([
      "/water_type wrong_type",
      "/depth_m wrong_type",
    ]);
    expect(codes({})).toEqual([" one_water_basis", " one_depth"]);
    expect(codes(null)).toEqual([" wrong_type"]);
  });

  it("asks no rule about what a field in another unit was meant for", () => {
    expect(codes({ water_type: "IB", depth_ft: 40 })).toEqual(["/depth_ft unknown_field"]);
    expect(codes({ water_type: "IB", min_depth_ft: 10, max_depth_m: 9 })).toEqual([
      "/min_depth_ft unknown_field",
    ]);
    // A field of a part of the scene, meant by another name, says nothing of the scene's own field of that name.
    expect(codes({ water_type: "IB", lamps: [{ flux_lm: 1, distance_m: 1, filter_knd: "red" }] })).toEqual([
      "/lamps/0/filter_knd unknown_field",
      " one_depth",
    ]);
    expect(
      codes({ water_type: "IB", card_samples: [{ depth_ft: 9 }, { depth: 3 }], filter_kind: "red" }),
    ).toEqual(expect.arrayContaining([" one_depth", "/filter_kind lens_filter_pair"]));
    expect(codes({ depth_ft: 40 })).toEqual(["/depth_ft unknown_field", " one_water_basis"]);
  });

  const strangers = (count: number) =>
    Object.fromEntries(Array.from({ length: count }, (_, index) => [`z${index}`, index]));
  function findingsIn(raw: unknown) {
    const checked = checkScene(light, raw, []);
    if (!("findings" in checked)) throw new Error("The scene passed.");
    return checked.findings;
  }

  it("lists a stated number of errors, and knows whether there are more", () => {
    expect(findingsIn({ ...strangers(maxErrors), water_type: "IB", depth_m: 5 })).toMatchObject({
      more: false,
    });
    const { list, more } = findingsIn({ ...strangers(80), water_type: "IB", depth_m: 5 });
    expect(list).toHaveLength(maxErrors);
    expect(more).toBe(true);
  });

  const longList = Array.from({ length: 19_000 }, () => ({ id: "a" }));
  // A rule that met such a value would throw, or look at each entry.
  it.each([48, 49, 50, 51, 80])("shows no rule a value that is not well formed behind %i errors", (count) => {
    for (const kit of [{}, 7, [null], longList, [{ id: {} }, { id: {} }]]) {
      const scene = { ...strangers(count), kit, lamps: {}, kd_samples: 5, card_samples: [3], local_time: [] };
      const codes = findingsIn(scene).list.map(({ code }) => code);
      expect(codes).toHaveLength(maxErrors);
      expect(codes).not.toContain("kit_ids_unique");
    }
  });

  it("looks no further once more is wrong than is listed", () => {
    let looked = 0;
    const wrong: Check = (_, pointer, findings) => {
      looked += 1;
      findings.add(() => wrongType(1, pointer, { type: "text" }));
    };
    const findings = new Findings();
    list({ type: "array", items: {} }, () => wrong)(longList, "", findings);
    expect(looked).toBe(maxErrors + 1);
    object({ type: "object", properties: { z1: {} } }, () => wrong)(strangers(9), "", findings);
    expect(looked).toBe(maxErrors + 1);
  });
});

describe("the whole check of a mounting scene", () => {
  const scene = { port_kind: "flat", lens_kind: "wide", field_of_view_deg: 90 };
  const found = (raw: unknown) => codesOf(checkScene(mounting, raw, []));

  it("passes a good scene on", () => {
    expect(checkScene(mounting, scene, [])).toEqual({ scene });
  });

  it("knows its own fields, not those of another kind", () => {
    expect(found({ ...scene, water_type: "IB", dome_radius: 3 })).toEqual([
      "/water_type unknown_field",
      "/dome_radius unknown_field",
    ]);
  });

  it("asks for what it needs, and its rules about the rest", () => {
    expect(found({})).toEqual(["/port_kind missing_field", "/lens_kind missing_field", " lens_field_given"]);
    expect(found({ ...scene, dome_radius_mm: 100, rear_opening_width_mm: 30 })).toEqual([
      "/dome_radius_mm dome_radius_with_dome",
      "/rear_opening_width_mm rear_opening_whole",
    ]);
  });
});
