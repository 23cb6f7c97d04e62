// How many cases to try and from which seed. `npm test` tries a few from a fixed one; `npm run prove` tries FUZZ_RUNS from
// FUZZ_SEED, which it prints.

import { isProof } from "@sunfathom/fixtures/is-proof";
import type { Parameters } from "fast-check";

const asked = Number(process.env["FUZZ_RUNS"] ?? 2000);

export const isLong = isProof;
const seed = Number(process.env["FUZZ_SEED"] ?? (isLong ? Date.now() % 2 ** 31 : 7));
/** A test of a long run may take as long as it needs. */
export const timeout_ms = isLong ? 10 * 3600 * 1000 : 300_000;

/**
 * For fast-check: `short` runs in a short run. A failure prints seed, path and the smallest case.
 * @param nth of several like it, so that each tries other cases
 */
export function runs<T>(short: number, nth: number): Parameters<T> {
  return { seed: seed + nth, numRuns: isLong ? asked : short };
}

console.info(`contract fuzz: FUZZ_SEED=${seed} FUZZ_RUNS=${isLong ? asked : "few"}`);
