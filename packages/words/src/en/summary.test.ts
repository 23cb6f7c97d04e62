import { expect, it } from "vitest";
import { summary } from "./summary.js";
import { take } from "./take.js";

const red = { kind: "red", density: 0.6 } as const;

it("the filter is named, with the one that it is nearly even with", () => {
  expect(summary.mount({ filter: red })).toBe("Mount a red filter of density 0.60.");
  expect(summary.carry({ filter: red, from_m: 5, to_m: 15, tie_with: { kind: "none" } })).toBe(
    "Carry a red filter of density 0.60 and use it from 5.0 to 15.0 m. It is a near tie with no filter.",
  );
});

it("settings are told from one end to the other, or once where the dial does not move", () => {
  const from = { depth_m: 5, iso: 200, f_number: 5.6 };
  expect(summary.expose({ from })).toBe("Expose with ISO 200 at f/5.6.");
  // Dials have thirds of a stop.
  expect(summary.expose({ from, to: { depth_m: 18, iso: 205, f_number: 5.5 } })).toBe(
    "Expose with ISO 200 at f/5.6.",
  );
  expect(summary.expose({ from, to: { depth_m: 18, iso: 800, f_number: 2.8 } })).toBe(
    "Expose with ISO 200 at f/5.6 at 5.0 m, ISO 800 at f/2.8 at 18.0 m.",
  );
});

it("closing down is offered where the lens goes that far", () => {
  const bright = { depth_m: 2, excess_stops: 1.5, density: 0.45 };
  expect(summary.too_bright(bright)).toBe(
    "At 2.0 m it is 1.5 stops too bright for these settings: use neutral density 0.5.",
  );
  expect(summary.too_bright({ ...bright, f_number: 16 })).toContain("close down to f/16 or use neutral");
});

it.each([
  [0, "start."],
  [1, "start and once more going down."],
  [2, "start and twice more going down."],
  [3, "start and 3 times more going down."],
])("%d more balances are counted in words", (again, end) => {
  expect(summary.balance({ again })).toBe(`Balance on a card at the ${end}`);
});

it("what to take is named, and what it is for in a sentence", () => {
  expect(take.lens_filter({ filter: { ...red, id: "r6" } }).what).toBe("r6 (a red filter of density 0.60)");
  expect(take.neutral_density({ density: 0.45 }).what).toBe("a neutral filter of density 0.5");
  expect(take.lamp_filters_lacking({ kind: "blue", density: 0.9 }).what).toBe(
    "a blue lamp filter of density 0.90 for each lamp",
  );
  const all = [take.lamp_filters({}), take.lamp({}), take.card({}), take.lens_filter({ filter: red })];
  for (const { why } of all) expect(why).toMatch(/^[A-Z].+\.$/);
});
