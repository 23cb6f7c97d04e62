import { describe, expect, it } from "vitest";
import { flatLampNames } from "../scene/flat-lamp-names.js";
import { placeTimeNames } from "../scene/place-time-names.js";
import type { Scene } from "../scene/scene.js";
import { waterBases } from "../scene/water-bases.js";
import { ownSceneRules as sceneRules } from "./all-with-mounting.js";
import { sceneRuleConcerns } from "./concerns.js";
import { sceneCases } from "./scene-cases.test-support.js";

const base: Scene = { water_type: "IB", depth_m: 12 };

describe("the cross-field rules", () => {
  it("are all tried here, and have one code each", () => {
    expect(sceneRules.map(({ code }) => code).sort()).toEqual(Object.keys(sceneCases).sort());
  });

  it("let a plain scene pass", () => {
    expect(sceneRules.flatMap((rule) => rule.violations(base))).toEqual([]);
  });

  describe.each(sceneRules)("$code", (rule) => {
    it("lets pass what keeps it", () => {
      for (const scene of sceneCases[rule.code as keyof typeof sceneCases]?.passes ?? []) {
        expect(rule.violations(scene), JSON.stringify(scene)).toEqual([]);
      }
    });

    it("refuses what breaks it, and points to it", () => {
      const refused = sceneCases[rule.code as keyof typeof sceneCases]?.refuses ?? [];
      expect(refused.length).toBeGreaterThan(0);
      for (const [scene, pointers] of refused) {
        const violations = rule.violations(scene);
        expect(
          violations.map(({ pointer }) => pointer),
          JSON.stringify(scene),
        ).toEqual(pointers);
      }
    });
  });
});

it("the fields that rules concern are the lists of names that they go by", () => {
  const bases = waterBases.map(({ field }) => field);
  const companions = new Set(waterBases.flatMap(({ needs, takes }) => [...needs, ...takes]));
  expect(sceneRuleConcerns.one_water_basis).toEqual(bases);
  expect(new Set(sceneRuleConcerns.water_companions)).toEqual(new Set([...bases, ...companions]));
  expect(sceneRuleConcerns.place_and_time_whole).toEqual(["daylight_basis", ...placeTimeNames]);
  expect(sceneRuleConcerns.lamp_complete).toEqual(flatLampNames);
  expect(sceneRuleConcerns.lamps_once).toEqual(["lamps", ...flatLampNames]);
});

describe("limits", () => {
  it("come as what the caller stated, or as a default", () => {
    const found = (scene: Scene) => sceneRules.flatMap((rule) => rule.violations({ ...base, ...scene }));
    const low = { field: "min_iso", value: 100, stated: false };
    expect(found({ iso: 12800 })).toEqual([
      {
        pointer: "/iso",
        parameters: { value: 12800, low, high: { field: "max_iso", value: 6400, stated: false } },
      },
    ]);
    expect(found({ iso: 12800, max_iso: 8000 })[0]?.parameters).toMatchObject({
      high: { value: 8000, stated: true },
    });
  });
});
