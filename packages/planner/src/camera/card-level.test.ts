import { daylightScene } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { cardLevelPercent, GREY_CARD, WHITE_CARD } from "./card-level.js";

const scene = daylightScene("IB", 45, 8);

describe("where a card lies on a histogram", () => {
  it("is 73 % for a white card and 38 % for a grey one in HLG (Report ITU-R BT.2408, table 1)", () => {
    const hlg = { ...scene, recording_curve: "hlg" } as const;
    expect(cardLevelPercent(hlg, WHITE_CARD)).toBeCloseTo(73, 0);
    expect(cardLevelPercent(hlg, GREY_CARD)).toBeCloseTo(38, 0);
  });

  it("is 1.099 L^0.45 - 0.099 in BT.709: 94.9 % and 40.9 % (Recommendation ITU-R BT.709, by hand)", () => {
    expect(cardLevelPercent(scene, WHITE_CARD)).toBeCloseTo(94.9, 1);
    expect(cardLevelPercent(scene, GREY_CARD)).toBeCloseTo(40.9, 1);
    expect(cardLevelPercent(scene, 0.01)).toBeCloseTo(4.5, 10);
  });

  it("is the light in a linear recording, on the line between points of a measured curve, and the maker's to say in log", () => {
    expect(cardLevelPercent({ ...scene, recording_curve: "linear" }, WHITE_CARD)).toBe(90);
    const recording_curve_points = [
      { light_share: 0, code_share: 0.1 },
      { light_share: 0.5, code_share: 0.7 },
      { light_share: 1, code_share: 1 },
    ];
    expect(cardLevelPercent({ ...scene, recording_curve_points }, WHITE_CARD)).toBeCloseTo(94, 10);
    expect(cardLevelPercent({ ...scene, recording_curve: "log" }, WHITE_CARD)).toBeUndefined();
  });
});
