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
