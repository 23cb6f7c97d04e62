import { expect, it } from "vitest";
import { Budget } from "./budget.js";

/** A budget under a clock that the test sets. */
function under(cost: number, window_s: number) {
  const clock = { now_ms: 0 };
  return { clock, budget: new Budget({ cost, window_s }, () => clock.now_ms) };
}

it("gives what there is, says what is left, and refuses what is more", () => {
  const { budget } = under(10, 60);
  expect(budget.take("a", 4)).toEqual({ isTaken: true, left: 6, whole_s: 24, wait_s: 0 });
  expect(budget.take("a", 6)).toEqual({ isTaken: true, left: 0, whole_s: 60, wait_s: 0 });
  expect(budget.take("a", 1)).toEqual({ isTaken: false, left: 0, whole_s: 60, wait_s: 6 });
  expect(budget.take("b", 1).isTaken).toBe(true);
});

it("fills up steadily, to the whole and no further", () => {
  const { clock, budget } = under(10, 10);
  budget.take("a", 10);
  clock.now_ms = 2500;
  expect(budget.take("a", 3)).toMatchObject({ isTaken: false, left: 2, wait_s: 1 });
  expect(budget.take("a", 2.5).isTaken).toBe(true);
  clock.now_ms = 1e9;
  expect(budget.take("a", 0)).toMatchObject({ left: 10, whole_s: 0 });
});

it("can be used again after the time that a refusal names, and not before", () => {
  const { clock, budget } = under(60, 60);
  budget.take("a", 60);
  const { wait_s } = budget.take("a", 7);
  expect(wait_s).toBe(7);
  clock.now_ms = wait_s * 1000 - 1;
  expect(budget.take("a", 7).isTaken).toBe(false);
  clock.now_ms += 1;
  expect(budget.take("a", 7).isTaken).toBe(true);
});

it("gives all of it to what costs more than a whole budget, and only all of it", () => {
  const { clock, budget } = under(10, 10);
  expect(budget.take("a", 25)).toMatchObject({ isTaken: true, left: 0 });
  clock.now_ms = 9000;
  expect(budget.take("a", 25)).toMatchObject({ isTaken: false, wait_s: 1 });
  clock.now_ms = 10_000;
  expect(budget.take("a", 25).isTaken).toBe(true);
});

it("lets what has been spent already be owed, and gives nothing until that is made up for", () => {
  const { clock, budget } = under(10, 10);
  budget.take("a", 8);
  budget.owe("a", 7);
  expect(budget.take("a", 1)).toEqual({ isTaken: false, left: 0, whole_s: 15, wait_s: 6 });
  clock.now_ms = 5999;
  expect(budget.take("a", 1).isTaken).toBe(false);
  clock.now_ms = 6000;
  expect(budget.take("a", 1).isTaken).toBe(true);
  budget.owe("b", 3);
  expect(budget.take("b", 0).left).toBe(7);
});

it("lets nobody in twice for a clock that is set back, nor locks anybody out", () => {
  const { clock, budget } = under(10, 10);
  clock.now_ms = 3_600_000;
  budget.take("a", 10);
  clock.now_ms = 0;
  expect(budget.take("a", 1)).toMatchObject({ isTaken: false, wait_s: 1 });
  clock.now_ms = 1000;
  expect(budget.take("a", 1).isTaken).toBe(true);
});

it("remembers who has spent all while more come than it remembers", () => {
  const { clock, budget } = under(100, 100);
  for (let n = 0; n < 1000; n += 1) budget.take(`greedy ${n}`, 100);
  for (let n = 0; n < 100_000; n += 1) {
    clock.now_ms += 0.01;
    expect(budget.take(`newcomer ${n}`, 1).isTaken).toBe(true);
  }
  for (let n = 0; n < 1000; n += 1) expect(budget.take(`greedy ${n}`, 2).isTaken).toBe(false);
  expect(budget.remembered).toBeLessThanOrEqual(16_384);
});

it("forgets those that have spent the least, where nobody's budget is whole", () => {
  const { budget } = under(100, 100);
  for (let n = 0; n < 16_384; n += 1) budget.take(`n${n}`, 1 + (n % 90));
  expect(budget.remembered).toBe(16_384);
  budget.take("one more", 1);
  expect(budget.remembered).toBe(16_384 - 1024 + 1);
  for (let n = 0; n < 16_384; n += 1) {
    const spent = 1 + (n % 90);
    if (spent > 6) expect(budget.take(`n${n}`, 100 - spent + 1).isTaken).toBe(false);
  }
});

it("needs not remember whose budget is whole", () => {
  const { clock, budget } = under(100, 100);
  for (let n = 0; n < 16_384; n += 1) budget.take(`n${n}`, 1);
  clock.now_ms = 1000;
  budget.take("one more", 1);
  expect(budget.remembered).toBe(1);
});
