// Guards that a summary tells the figures and filters that it comes with. The sentences are read in the approved pages.
import { expect, it } from "vitest";
import { summary } from "./summary.js";
import { take } from "./take.js";

const red = { kind: "red", density: 0.6 } as const;

it("the filter is named, in a close call the other one too", () => {
  expect(summary.mount({ filter: red })).toMatch(/\bred\b.*\b0\.6\b/);
  expect(summary.carry({ filter: red, from_m: 5, to_m: 15 })).toMatch(/\bred\b.*\b0\.6\b.*5 to 15 m/);
  expect(summary.close_filter({ filter: { kind: "none" }, probability: 0.45 })).not.toMatch(
    /density|undefined/,
  );
  // "No filter would do as well" says the opposite.
  expect(summary.close_filter({ filter: { kind: "none" }, probability: 0.45 })).not.toMatch(/\bno filter\b/i);
  expect(summary.close_lamps({ plan: "lamps_off", filter: red, probability: 0.45 })).toMatch(
    /\bred\b.*\b0\.6\b/,
  );
});

it("settings are told from one end to the other, or once where the dial does not move", () => {
  const from = { depth_m: 5, iso: 200, f_number: 5.6 };
  const once = summary.expose({ from });
  expect(once).toContain("ISO 200 at f/5.6");
  // Dials have thirds of a stop.
  expect(summary.expose({ from, to: { depth_m: 18, iso: 205, f_number: 5.5 } })).toBe(once);
  expect(summary.expose({ from, to: { depth_m: 18, iso: 800, f_number: 2.8 } })).toMatch(
    /5 m.*ISO 200 at f\/5\.6.*18 m.*ISO 800 at f\/2\.8/,
  );
});

it("more white balances are counted", () => {
  const said = [0, 1, 2, 3].map((again) => summary.balance({ again }));
  expect(new Set(said)).toHaveLength(4);
  expect(said[3]).toContain("3");
});

it("what to take is named, and what it is for in a sentence", () => {
  expect(take.lens_filter({ filter: { ...red, id: "r6" } }).what).toMatch(/^r6 .*\bred\b.*\b0\.6\b/);
  expect(take.neutral_density({ density: 0.9 }).what).toMatch(/ND.*\b0\.9\b.*\b3 stops/);
  expect(take.lamp_filters_lacking({ kind: "blue", density: 0.9 }).what).toMatch(/blue.*\b0\.9\b/);
  const all = [
    take.lamp_filters({ filter: red }),
    take.lamp({}),
    take.card({}),
    take.lens_filter({ filter: red }),
  ];
  for (const { why } of all) expect(why).toMatch(/^[A-Z].+\.$/);
});
