import { atNight, daylightScene, REEF_WITH_LAMPS, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import type { Scene } from "../scene/scene.js";
import { mixedLight } from "./mixed-light.js";

const asked = (stops: number, distance_m: number, scene: Scene = REEF_WITH_LAMPS) =>
  mixedLight({ ...scene, wanted_lead_stops: stops, wanted_lead_distance_m: distance_m });
const first = (...question: Parameters<typeof asked>) => asked(...question).depths[0];

describe("how many lumens lead", () => {
  it("are those that the question the other way round leads with", () => {
    const { lumens_needed_lm } = first(3, 0.6);
    const flux_lm = (lumens_needed_lm?.likely ?? 0) / 2;
    const lit = { ...REEF_WITH_LAMPS, lamps: [{ ...TWO_LAMPS, flux_lm, distance_m: 0.6 }] };
    const { green_lamp_over_daylight_stops: green } = mixedLight(lit).depths[0];
    expect(green?.likely).toBeCloseTo(3, 6);
    // Low and high are where the same doubts lie, the other way up.
    expect((lumens_needed_lm?.high ?? 0) / (lumens_needed_lm?.likely ?? 1)).toBeCloseTo(
      2 ** (3 - (green?.low ?? 0)),
      6,
    );
  });

  it("double with each stop, and more than quadruple with twice the distance (law of distance, and water)", () => {
    const likely = (stops: number, distance_m: number) =>
      first(stops, distance_m).lumens_needed_lm?.likely ?? 0;
    expect(likely(4, 0.8) / likely(3, 0.8)).toBeCloseTo(2, 8);
    expect(likely(3, 3.2) / likely(3, 1.6)).toBeGreaterThan(4);
  });

  it("are told for a usual lamp where none is given, with the light cautions", () => {
    const answer = asked(2, 0.8, daylightScene("IB", 50, 12));
    const [{ lumens_needed_lm, lumens_verdict, own_lamps_lead_from_m }] = answer.depths;
    expect(lumens_needed_lm?.likely).toBeGreaterThan(1000);
    expect(lumens_verdict).not.toBe("enough");
    expect(own_lamps_lead_from_m).toBeUndefined();
    expect(answer.cautions.map(({ code }) => code)).toContain("lamps_not_into_eyes");
  });

  it("are had, from closer, only with stronger lights, or not at all", () => {
    expect(first(-4, 0.8).lumens_verdict).toBe("enough");
    const closer = first(0, 0.8);
    expect(closer.lumens_verdict).toBe("closer");
    const near = {
      ...REEF_WITH_LAMPS,
      lamps: [{ ...TWO_LAMPS, distance_m: closer.own_lamps_lead_from_m ?? 0 }],
    };
    expect(mixedLight(near).depths[0].green_lamp_over_daylight_stops?.likely).toBeGreaterThanOrEqual(0);
    const weak = { ...REEF_WITH_LAMPS, lamps: [{ ...TWO_LAMPS, flux_lm: 100 }] };
    expect(first(1, 0.5, weak).lumens_verdict).toBe("stronger");
    expect(first(10, 3, weak).lumens_verdict).toBe("out_of_reach");
    // Where no lights that divers carry give it, what these give is a judgement.
    const basis = (...question: Parameters<typeof asked>) =>
      asked(...question).reasons.find(({ code }) => code === "to_lead")?.basis;
    expect([basis(-4, 0.8), basis(0, 0.8)]).toEqual(["computed", "computed"]);
    expect([basis(1, 0.5, weak), basis(10, 3, weak)]).toEqual(["judgement", "judgement"]);
  });

  it("are not told where nobody asks, or nothing is to be led", () => {
    expect(mixedLight(REEF_WITH_LAMPS).depths[0]).not.toHaveProperty("lumens_needed_lm");
    expect(first(3, 0.8, atNight(REEF_WITH_LAMPS))).not.toHaveProperty("lumens_needed_lm");
  });
});
