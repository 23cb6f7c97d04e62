// What the fuzz calls wrong is wrong by the description, as an independent reader of it finds.
import fc from "fast-check";
import { expect, it } from "vitest";
import { validatorOf } from "./ask.js";
import { calculations } from "./description.js";
import { runs, timeout_ms } from "./runs.js";
import { wrongScene } from "./wrong.js";

it.each(calculations.map(({ post }, nth) => ({ ...post, nth })))(
  "no wrong scene of $path is a right one",
  ({ body = {}, examples, nth }) => {
    const isRight = validatorOf(body);
    for (const example of examples) {
      expect(isRight(example)).toBe(true);
      fc.assert(
        fc.property(wrongScene({ ...example }, body), ({ pointer, value }) => {
          expect(isRight(JSON.parse(JSON.stringify(value))), pointer).toBe(false);
        }),
        runs(300, nth),
      );
    }
  },
  timeout_ms,
);
