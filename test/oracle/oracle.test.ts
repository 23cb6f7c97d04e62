// The search as it is against the search as it was first written, over scenes that nothing was made to suit.

import { isProof } from "@sunfathom/fixtures/is-proof";
import { beforeAll, expect, it } from "vitest";
import { compare } from "./compare.js";
import { type Ask, loadBoth, sceneAt } from "./pairs.js";

const SCENES = isProof ? Number(process.env["ORACLE"] ?? 2000) : 60;

let fast: Ask;
let slow: Ask;
beforeAll(async () => {
  ({ fast, slow } = await loadBoth());
});

it(
  `chooses as the slow way does, over ${SCENES} scenes`,
  () => {
    const found: string[] = [];
    let [answered, dim, tosses] = [0, 0, 0];
    for (let index = 0; answered < SCENES; index++) {
      const scene = sceneAt(index);
      const [ours, theirs] = [fast(scene), slow(scene)];
      const compared = compare(ours, theirs);
      found.push(...compared.found.map((line) => `${index} ${line}`));
      if (theirs === undefined) continue;
      answered++;
      if (index % 4 === 3) dim++;
      if (compared.isToss) tosses++;
    }
    expect(found).toEqual([]);
    expect(dim).toBeGreaterThan(0.2 * SCENES);
    expect(tosses).toBeLessThan(0.02 * SCENES);
  },
  10 * 3600 * 1000,
);
