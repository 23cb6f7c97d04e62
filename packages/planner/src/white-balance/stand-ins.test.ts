import { atNight, daylightScene, NIGHT_WRECK } from "@sunfathom/fixtures/scenes";
import { spectrumFrom } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { standInsIn } from "./stand-ins.js";
import { whiteBalance } from "./white-balance.js";

const SURFACE = daylightScene("IB", 45, 0.5);
const flat = spectrumFrom(() => 1);

describe("what stands in for a card", () => {
  it("is ranked by the cast that it leaves, least first", () => {
    const casts = standInsIn(SURFACE, flat).map(({ cast_left_delta_e00: cast }) => cast);
    expect(casts).toEqual([...casts].sort((a, b) => a - b));
    expect(casts).toHaveLength(4);
  });

  it("leaves the most on skin and sand, which are red against blue, and a slate hardly any (spectra: Cooksey et al. 2017, Asner)", () => {
    const ranked = standInsIn(SURFACE, flat).map(({ stand_in }) => stand_in);
    expect(new Set(ranked.slice(2))).toEqual(new Set(["pale_sand", "hand"]));
    const hand = standInsIn(SURFACE, flat).find(({ stand_in }) => stand_in === "hand");
    expect(hand?.least_cast_delta_e00).toBeLessThanOrEqual(hand?.cast_left_delta_e00 ?? 0);
    expect(hand?.most_cast_delta_e00).toBeGreaterThanOrEqual(hand?.cast_left_delta_e00 ?? 0);
  });

  it("is told with every balance on a card, in daylight and by lamps, with where the card lies", () => {
    for (const scene of [daylightScene("IB", 45, 8), NIGHT_WRECK]) {
      const answer = whiteBalance(scene);
      expect(answer.stand_ins).toHaveLength(4);
      expect(answer.white_card_level_percent).toBeCloseTo(94.9, 1);
      expect(answer.card_notes.map(({ code }) => code)).toEqual(
        expect.arrayContaining(["without_card", "card_level"]),
      );
    }
    expect(
      whiteBalance({ ...daylightScene("IB", 45, 8), white_balance_mode: "auto" }).stand_ins,
    ).toBeUndefined();
  });

  it("balances on something near where the subject is out of reach", () => {
    const codes = (subject_in_reach?: boolean) =>
      whiteBalance({
        ...daylightScene("IB", 45, 8),
        ...(subject_in_reach === undefined ? {} : { subject_in_reach }),
      }).procedure.map(({ code }) => code);
    expect(codes(false)).toContain("balance_near");
    expect(codes(false)).not.toContain("card_upright");
    expect(codes(true)).toEqual(codes());
    expect(atNight(SURFACE).daylight_basis).toBe("none");
  });
});
