import { expect, it } from "vitest";
import { summary } from "./summary.js";
import { take } from "./take.js";

const red = { kind: "red", density: 0.6 } as const;

it("the filter is named, and a close call in a line of its own", () => {
  expect(summary.mount({ filter: red })).toBe("Mount a red filter of density 0.60.");
  expect(summary.carry({ filter: red, from_m: 5, to_m: 15 })).toBe(
    "Carry a red filter of density 0.60 and use it from 5 to 15 m.",
  );
  expect(summary.close_filter({ filter: { kind: "none" }, probability: 0.45 })).toBe(
    "A close call: no filter would do about as well.",
  );
  expect(summary.close_lamps({ plan: "lamps_off", filter: red, probability: 0.45 })).toBe(
    "A close call: video lights off, with a red filter of density 0.60 on the lens, would do about as well.",
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
    "At 5 m expose with ISO 200 at f/5.6, at 18 m with ISO 800 at f/2.8.",
  );
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
  expect(take.neutral_density({ density: 0.9 }).what).toBe("an ND of density 0.9 (3 stops)");
  expect(take.lamp_filters_lacking({ kind: "blue", density: 0.9 }).what).toBe(
    "a blue lamp filter of density 0.9 for each video light",
  );
  const all = [
    take.lamp_filters({ filter: red }),
    take.lamp({}),
    take.card({}),
    take.lens_filter({ filter: red }),
  ];
  for (const { why } of all) expect(why).toMatch(/^[A-Z].+\.$/);
});
