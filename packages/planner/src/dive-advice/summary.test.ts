// What is said in the summary, and what brings each sentence.
import { describe, expect, it } from "vitest";
import {
  BRIGHT_REEF,
  DARK_AND_GREEN,
  daylightScene,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  REEF_WITH_LAMPS,
} from "../../../../test/support/scenes.js";
import { codesOf } from "../codes/coded.js";
import type { SummaryCodes } from "../codes/summary.js";
import type { ExposureAtDepth } from "../result/exposure-loss.js";
import { decided, FLIPPED } from "./decided.test-support.js";
import { balancesDown, endOf, startOf } from "./legs.js";
import { summaryOf } from "./summary.js";

const say = codesOf<SummaryCodes>();
const RIVAL = { kind: "magenta", density: 0.6, id: "rival" } as const;
const exposed = ({ depth_m, iso, f_number }: ExposureAtDepth) => ({ depth_m, iso, f_number });
const SHALLOW = { ...daylightScene("IB", 45, 1.5), max_f_number: 22 };

describe("the summary", () => {
  it("names the filter to mount, with the one that it is nearly even with, or that there is none", () => {
    const reef = decided(OUTER_REEF_MORNING);
    const filter = reef.filterNamed;
    const clear = { ...reef, filter: { ...reef.filter, verdict: "clear" as const } };
    const tied = { ...reef, filter: { ...reef.filter, verdict: "near_tie" as const }, runnerUpNamed: RIVAL };
    expect(summaryOf(clear)[0]).toEqual(say("mount", { filter }));
    expect(summaryOf(tied)[0]).toEqual(say("mount", { filter, tie_with: RIVAL }));
    expect(summaryOf(decided(SHALLOW))[0]).toEqual(say("no_filter"));
  });

  it("names where a filter that is changed is used", () => {
    const flipped = decided(FLIPPED);
    const { filterNamed, filter } = flipped;
    const where = { from_m: filter.serves_min_depth_m ?? 0, to_m: filter.serves_max_depth_m ?? 0 };
    expect(where.from_m).toBeGreaterThan(1);
    expect(summaryOf(flipped)[0]).toEqual(say("carry", { filter: filterNamed, ...where }));
    const tied = { ...flipped, filter: { ...filter, verdict: "near_tie" as const }, runnerUpNamed: RIVAL };
    expect(summaryOf(tied)[0]).toEqual(say("carry", { filter: filterNamed, ...where, tie_with: RIVAL }));
  });

  it("exposes from one end to the other, or once where lamps make the light", () => {
    const reef = decided(OUTER_REEF_MORNING);
    const [first, last] = [startOf(reef.legs), endOf(reef.legs)];
    expect(summaryOf(reef)).toContainEqual(say("expose", { from: exposed(first), to: exposed(last) }));
    expect(summaryOf({ ...reef, lampPlan: "lamps_only" })).toContainEqual(
      say("expose", { from: exposed(first) }),
    );
    const shallow = decided(SHALLOW);
    const there = exposed(startOf(shallow.legs));
    expect(summaryOf(shallow)).toContainEqual(say("expose", { from: there, to: there }));
  });

  it("says instead what is too bright at the start, or too dark at the end, by how much", () => {
    const bright = decided(BRIGHT_REEF);
    const { depth_m, excess_stops, neutral_density_needed, f_number_needed } = startOf(bright.legs);
    expect(summaryOf(bright)).toContainEqual(
      say("too_bright", {
        depth_m,
        excess_stops: excess_stops?.likely ?? Number.NaN,
        density: neutral_density_needed ?? Number.NaN,
        f_number: expect.closeTo(f_number_needed ?? Number.NaN, 9),
      }),
    );
    const dark = decided(DARK_AND_GREEN);
    const end = endOf(dark.legs);
    expect(summaryOf(dark)).toContainEqual(
      say("too_dark", { depth_m: 14, shortfall_stops: end.shortfall_stops?.likely ?? Number.NaN }),
    );
    for (const said of [summaryOf(bright), summaryOf(dark)])
      expect(said.map(({ code }) => code)).not.toContain("expose");
  });

  it("counts how often to balance again going down, and leaves a balance to lamps to what is said of them", () => {
    const reef = decided(OUTER_REEF_MORNING);
    const again = balancesDown(reef.legs).length - 1;
    expect(again).toBeGreaterThan(0);
    expect(summaryOf(reef)).toContainEqual(say("balance", { again }));
    expect(summaryOf(decided(SHALLOW))).toContainEqual(say("balance", { again: 0 }));
    const night = decided(NIGHT_WRECK);
    expect(summaryOf(night)).toEqual([
      say("no_filter"),
      say("expose", { from: exposed(startOf(night.legs)) }),
      say("lamps_only"),
    ]);
  });

  it("ends with the lamps, where there are any", () => {
    expect(summaryOf(decided(REEF_WITH_LAMPS)).at(-1)).toEqual(say("lamps_off"));
    expect(summaryOf(decided(SHALLOW)).at(-1)).toEqual(say("balance", { again: 0 }));
  });
});
