import { afterEach, describe, expect, it, vi } from "vitest";

afterEach(() => vi.resetModules());

/** Time on this thread's processor, ms, which a busy machine does not lengthen as it does time on the clock. */
function cpu_ms(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

describe("warming up", () => {
  it("takes most of the work off the first papers", async () => {
    const { itemsFor, warmUp } = await import("../index.js");
    const papers = () => {
      for (const level of ["beginner", "working", "expert"] as const)
        itemsFor({ seed: "cold or warm", level, count: 60, units: "metric", language: "en" });
    };
    let steps = 0;
    const warming = cpu_ms(() => {
      for (const _ of warmUp()) steps++;
    });
    const warm = cpu_ms(papers);
    vi.resetModules();
    const fresh = await import("../index.js");
    const cold = cpu_ms(() => {
      for (const level of ["beginner", "working", "expert"] as const)
        fresh.itemsFor({ seed: "cold or warm", level, count: 60, units: "metric", language: "en" });
    });
    console.info(
      `warm-up ${warming.toFixed(0)} ms in ${steps} steps; three papers of 60: ${cold.toFixed(0)} ms cold, ${warm.toFixed(0)} ms warm`,
    );
    expect(warm).toBeLessThan(cold / 3);
  });
});
