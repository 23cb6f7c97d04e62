// Guards that warming up gives way: to requests after each piece of work, and to the end of the process at once.
import { expect, it } from "vitest";
import { warmQuiz } from "./warm-quiz.js";

it("does nothing where the process has better things to do", async () => {
  let asked = 0;
  await warmQuiz(() => {
    asked += 1;
    return true;
  });
  expect(asked).toBe(1);
});

it("goes on piece by piece until it is told to stop, and lets others have their turn in between", async () => {
  let pieces = 0;
  let turns = 0;
  let isWarming = true;
  const others = () => {
    turns += 1;
    if (isWarming) setImmediate(others);
  };
  setImmediate(others);
  const turnsAt: number[] = [];
  await warmQuiz(() => {
    turnsAt.push(turns);
    pieces += 1;
    return pieces > 40;
  });
  isWarming = false;
  expect(pieces).toBe(41);
  // Without a rest there would be no turn at all in between.
  expect(new Set(turnsAt).size).toBeGreaterThan(20);
});

// A timer never ends early by more than the millisecond that it is rounded to, however busy the machine is.
it("rests after a long piece for as long as that took, which keeps no process alive", async () => {
  const piece_ms = 30;
  const keepingAlive = () => process.getActiveResourcesInfo().filter((name) => name === "Timeout").length;
  const before = keepingAlive();
  const askedAt: number[] = [];
  const warming = warmQuiz(() => {
    askedAt.push(performance.now());
    if (askedAt.length > 1) return true;
    while (performance.now() < (askedAt[0] ?? 0) + piece_ms);
    return false;
  });
  const resting = performance.now();
  expect(keepingAlive()).toBe(before);
  await warming;
  expect(askedAt).toHaveLength(2);
  expect((askedAt[1] ?? 0) - resting).toBeGreaterThanOrEqual(piece_ms - 1);
});
