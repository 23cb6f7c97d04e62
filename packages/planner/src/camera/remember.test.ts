import { describe, expect, it } from "vitest";
import { remember, rememberFor } from "./remember.js";

describe("a function that remembers", () => {
  function counted(limit: number) {
    const asked: number[] = [];
    const square = remember(
      (n: number) => {
        asked.push(n);
        return { square: n * n };
      },
      (n) => `${Math.abs(n)}`,
      limit,
    );
    return { asked, square };
  }

  it("computes once for what its key holds alike, and gives the same result", () => {
    const { asked, square } = counted(4);
    expect(square(3)).toEqual({ square: 9 });
    expect(square(3)).toBe(square(-3));
    expect(square(4)).toEqual({ square: 16 });
    expect(asked).toEqual([3, 4]);
  });

  it("forgets the oldest first, and no more than it must", () => {
    const { asked, square } = counted(2);
    for (const n of [1, 2, 3]) square(n);
    square(2);
    square(3);
    expect(asked).toEqual([1, 2, 3]);
    square(1);
    expect(asked).toEqual([1, 2, 3, 1]);
    square(3);
    expect(asked).toEqual([1, 2, 3, 1]);
    square(2);
    expect(asked).toEqual([1, 2, 3, 1, 2]);
  });
});

it("what is remembered for an object is found by that object alone, were another one like it in all", () => {
  const asked: object[] = [];
  const sizeOf = rememberFor((list: readonly number[]) => {
    asked.push(list);
    return list.length > 1 ? list.length : undefined;
  });
  const [one, like] = [
    [1, 2],
    [1, 2],
  ];
  expect([sizeOf(one), sizeOf(one), sizeOf(like)]).toEqual([2, 2, 2]);
  expect(asked).toEqual([one, like]);
  // No result at all is a result, too.
  const single = [7];
  expect([sizeOf(single), sizeOf(single)]).toEqual([undefined, undefined]);
  expect(asked).toHaveLength(3);
});
