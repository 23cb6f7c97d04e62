import { describe, expect, it } from "vitest";
import { ownSceneRules as sceneRules } from "../../../../contract/src/rules/all-with-mounting.js";
import { mountingRules } from "../../../../contract/src/rules/mounting.js";
import { mountingCases } from "../../../../contract/src/rules/mounting-cases.test-support.js";
import { sceneCases } from "../../../../contract/src/rules/scene-cases.test-support.js";
import { waterBases } from "../../../../contract/src/scene/water-bases.js";
import type { FieldText } from "../../problems/texts.js";
import { mountingRuleMeanings, mountingRuleTexts } from "./mounting-rules.js";
import { sceneRuleMeanings, sceneRuleTexts } from "./scene-rules.js";

type Say = Readonly<Record<string, (parameters: never) => FieldText>>;
const says: Say = { ...sceneRuleTexts, ...mountingRuleTexts };
const cases: Readonly<Record<string, { refuses: [scene: never, pointers: string[]][] }>> = {
  ...(sceneCases as object),
  ...(mountingCases as object),
};
const rules = [...sceneRules, ...mountingRules];

const textsOf = (code: string, scene: object) => {
  const rule = rules.find((one) => one.code === code);
  const found = rule?.violations(scene as never) ?? [];
  return found.map(({ parameters }) => says[code]?.(parameters as never));
};

describe("the rules between fields", () => {
  it("have a text and a meaning each, and nothing else has", () => {
    const codes = rules.map(({ code }) => code);
    expect(Object.keys(says).sort()).toEqual([...codes].sort());
    expect(Object.keys({ ...sceneRuleMeanings(), ...mountingRuleMeanings() })).toEqual(codes);
  });

  it.each(rules.map(({ code }) => code))("%s says what is wrong and what is allowed", (code) => {
    const refuses = cases[code]?.refuses ?? [];
    expect(refuses.length).toBeGreaterThan(0);
    for (const [scene] of refuses) {
      for (const text of textsOf(code, scene)) {
        expect(text?.message).toMatch(/^\S.+\.$/);
        expect(text?.allowed).toMatch(/^\S.{3}/);
        expect(`${text?.message} ${text?.allowed}`).not.toMatch(/undefined|\[object/);
      }
    }
  });

  it("tell a default from what the caller stated", () => {
    const [byDefault] = textsOf("iso_within_limits", { iso: 12800 });
    const [stated] = textsOf("iso_within_limits", { iso: 12800, max_iso: 6400 });
    expect(byDefault?.message).toMatch(/12800.*\bmax_iso\b.*6400/);
    expect(byDefault?.allowed).toMatch(/\b100\b.*\b6400\b.*\bmin_iso\b.*\bmax_iso\b/);
    expect(stated?.message).toMatch(/12800.*\bmax_iso\b.*6400/);
    expect(stated?.message).not.toBe(byDefault?.message);
  });

  it("list the ways to describe the water where a scene has none", () => {
    const [text] = textsOf("one_water_basis", { depth_m: 5 });
    for (const { field } of waterBases) expect(text?.allowed).toMatch(new RegExp(`\\b${field} \\(`));
  });
});
