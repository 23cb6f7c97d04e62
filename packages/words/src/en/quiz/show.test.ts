import { describe, expect, it } from "vitest";
import { showIn } from "./show.js";

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
    expect(metric.deg(41.26)).toBe("41°");
    expect(metric.deg(41.26, 1)).toBe("41.3°");
    expect([metric.number(1.5, 2), metric.fixed(1.5, 2)]).toEqual(["1.5", "1.50"]);
    expect(metric.lx(3287)).toBe("3300 lx");
  });
});
