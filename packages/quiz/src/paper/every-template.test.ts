// Every template at every level, drawn from seeds of its own, asked for again by another route, in
// English and in Spanish: 2 seeds each, 40 in
// `every-template.prove.ts`.

import { isProof } from "@sunfathom/fixtures/is-proof";
import { describe, expect, it } from "vitest";
import { TEMPLATES } from "../templates/table.js";
import { itemsFor } from "./items-for.js";
import { readBackFromSpanish } from "./read-back.test-support.js";
import { expectSameKey } from "./same-key.test-support.js";

const SEEDS = isProof ? 40 : 2;

describe.each(TEMPLATES.map(({ id, levels }) => [id, levels] as const))("%s", (template, levels) => {
  it.each(levels)(
    "has the keys that another route finds at level %s",
    (level) => {
      let asked = 0;
      for (let seed = 0; seed < SEEDS; seed++) {
        const request = { seed: `key ${seed}`, level, count: 2, templates: [template] };
        const [english, spanish] = (["en", "es"] as const).map((language) =>
          itemsFor({ ...request, units: "metric", language }),
        );
        for (const item of [...(english ?? []), ...(spanish ?? []).map(readBackFromSpanish)]) {
          expectSameKey(item);
          asked++;
        }
      }
      expect(asked).toBe(2 * 2 * SEEDS);
    },
    600_000,
  );
});
