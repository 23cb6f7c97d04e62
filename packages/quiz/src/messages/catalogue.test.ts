import { describe, expect, it } from "vitest";
import { TEMPLATES } from "../templates/table.js";
import { CATALOGUES } from "./catalogue.js";
import { citation } from "./citations.js";
import { showIn } from "./show.js";

describe("the catalogue of misconceptions", () => {
  it("gives each a feedback of its own", () => {
    const texts = Object.values(CATALOGUES.en.misconceptions);
    expect(new Set(texts).size).toBe(texts.length);
  });
});

describe("numbers as shown", () => {
  it("carry their units, and feet where asked for (1 ft = 0.3048 m, exact)", () => {
    const metric = showIn("metric");
    const both = showIn("metric_and_imperial");
    expect(metric.m(12)).toBe("12 m");
    expect(both.m(12)).toBe("12 m (39 ft)");
    expect(both.m(0.8)).toBe("0.8 m (2.6 ft)");
    expect(metric.m1(3)).toBe("3.0 m");
    expect(metric.stops(1)).toBe("1 stop");
    expect(metric.stops(2.25)).toBe("2.3 stops");
    expect(metric.percent(12.4)).toBe("12 %");
    expect(metric.percent(0.789)).toBe("0.79 %");
    expect(metric.s(1 / 50)).toBe("1/50 s");
    expect(metric.f(5.6)).toBe("f/5.6");
    expect(metric.lx(3287)).toBe("3300 lx");
  });
});

it("a source that nobody knows is a mistake", () => {
  expect(() => citation(CATALOGUES.en, "hearsay")).toThrow(RangeError);
  expect(citation(CATALOGUES.en, "jerlov_1976")).toContain("Jerlov 1976");
});

it("templates have ids of their own in snake_case", () => {
  const ids = TEMPLATES.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids) expect(id).toMatch(/^[a-z]+(_[a-z]+)*$/);
});
