// What is said in the summary, and what brings each sentence: the words themselves are approved as pages.
import { describe, expect, it } from "vitest";
import {
  BRIGHT_REEF,
  DARK_AND_GREEN,
  daylightScene,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  REEF_WITH_LAMPS,
} from "../../../../test/support/scenes.js";
import { LAMP_PLANS_EN, SUMMARY_EN as SAY } from "../messages/plan-en.js";
import { decided, FLIPPED } from "./decided.test-support.js";
import { balancesDown, endOf, startOf } from "./legs.js";
import { summaryOf } from "./summary.js";

const SHALLOW = { ...daylightScene("IB", 45, 1.5), max_f_number: 22 };

describe("the summary", () => {
  it("names the filter to mount, with the one that it is nearly even with, or that there is none", () => {
    const reef = decided(OUTER_REEF_MORNING);
    const name = reef.filterName;
    const clear = { ...reef, filter: { ...reef.filter, verdict: "clear" as const } };
    const tied = { ...reef, filter: { ...reef.filter, verdict: "near_tie" as const }, runnerUpName: "Rival" };
    expect(summaryOf(clear).startsWith(`${SAY.mount({ name })} Expose`)).toBe(true);
    expect(summaryOf(tied)).toContain(SAY.mount({ name, tie_with: "Rival" }));
    expect(summaryOf(clear)).not.toContain("near tie");
    expect(summaryOf(decided(SHALLOW)).startsWith(SAY.no_filter())).toBe(true);
  });

  it("names where a filter that is changed is used", () => {
    const flipped = decided(FLIPPED);
    const { filterName: name, filter } = flipped;
    const where = { from_m: filter.serves_min_depth_m ?? 0, to_m: filter.serves_max_depth_m ?? 0 };
    expect(where.from_m).toBeGreaterThan(1);
    expect(summaryOf(flipped)).toContain(SAY.carry({ name, ...where }));
    const tied = { ...flipped, filter: { ...filter, verdict: "near_tie" as const }, runnerUpName: "Rival" };
    expect(summaryOf(tied)).toContain(SAY.carry({ name, ...where, tie_with: "Rival" }));
  });

  it("exposes from one end to the other, or once where both are dialled alike, or lamps make the light", () => {
    const reef = decided(OUTER_REEF_MORNING);
    const [first, last] = [startOf(reef.legs), endOf(reef.legs)];
    expect(summaryOf(reef)).toContain(SAY.expose_from_to({ from: first, to: last }));
    expect(summaryOf({ ...reef, lampPlan: "lamps_only" })).toContain(SAY.expose(first));
    const shallow = decided(SHALLOW);
    expect(summaryOf(shallow)).toContain(SAY.expose(startOf(shallow.legs)));
  });

  it("says instead what is too bright at the start, or too dark at the end, by how much", () => {
    const bright = decided(BRIGHT_REEF);
    const { depth_m, excess_stops, neutral_density_needed, f_number_needed } = startOf(bright.legs);
    expect(summaryOf(bright)).toContain(
      SAY.too_bright({
        depth_m,
        excess_stops: excess_stops?.likely ?? Number.NaN,
        density: neutral_density_needed ?? Number.NaN,
        f_number: f_number_needed ?? Number.NaN,
      }),
    );
    const dark = decided(DARK_AND_GREEN);
    const end = endOf(dark.legs);
    expect(summaryOf(dark)).toContain(
      SAY.too_dark({ depth_m: 14, shortfall_stops: end.shortfall_stops?.likely ?? Number.NaN }),
    );
    for (const said of [summaryOf(bright), summaryOf(dark)]) expect(said).not.toContain("Expose with");
  });

  it("counts how often to balance again going down, and leaves a balance to lamps to what is said of them", () => {
    const reef = decided(OUTER_REEF_MORNING);
    const again = balancesDown(reef.legs).length - 1;
    expect(again).toBeGreaterThan(0);
    expect(summaryOf(reef)).toContain(SAY.balance({ again }));
    expect(summaryOf(decided(SHALLOW))).toContain(SAY.balance({ again: 0 }));
    const night = decided(NIGHT_WRECK);
    expect(summaryOf(night)).toBe(
      [SAY.no_filter(), SAY.expose(startOf(night.legs)), LAMP_PLANS_EN.lamps_only].join(" "),
    );
  });

  it("ends with the lamps, where there are any", () => {
    expect(summaryOf(decided(REEF_WITH_LAMPS)).endsWith(LAMP_PLANS_EN.lamps_off)).toBe(true);
    expect(summaryOf(decided(SHALLOW))).toMatch(/\S$/);
  });
});
