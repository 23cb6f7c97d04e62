import { OUTER_REEF_MORNING, REEF_IN_THE_SHALLOWS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { filterChoice } from "../filter-choice/filter-choice.js";
import { chosenOver } from "./mounted.js";

const best = filterChoice(OUTER_REEF_MORNING);
const over = (filter_kind: "red" | "magenta" | "green", filter_density: number) =>
  chosenOver({ ...OUTER_REEF_MORNING, filter_kind, filter_density });

describe("a filter that is on the lens", () => {
  it("stays where changing it is not worth it, and what would be better is named", () => {
    const { filter, mounted } = over("red", (best.filter_density ?? 0) - 0.1);
    expect(filter).toMatchObject({ filter_kind: "red" });
    expect(mounted).toMatchObject({ kept: true, better: { kind: "red", density: best.filter_density } });
    expect(over("red", best.filter_density ?? 0).mounted).not.toHaveProperty("better");
  });

  it("goes for a better one, or for none, by its name", () => {
    const { filter, mounted } = over("green", 0.6);
    expect(filter.filter_density).toBe(best.filter_density);
    expect(mounted).toEqual({ filter: { kind: "green", density: 0.6 }, kept: false });
    const shallow = chosenOver({ ...REEF_IN_THE_SHALLOWS, filter_kind: "red", filter_density: 0.8 });
    expect(shallow.filter.filter_kind).toBe("none");
    expect(shallow.mounted).toMatchObject({ filter: { kind: "red", density: 0.8 }, kept: false });
  });

  it("is nothing where the scene has none", () => {
    expect(chosenOver(OUTER_REEF_MORNING).mounted).toBeUndefined();
  });
});
