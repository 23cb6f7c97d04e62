import type { Findings } from "./findings.js";

/** Adds to `findings` all that is wrong with `value`, which stands at `pointer`. */
export type Check = (value: unknown, pointer: string, findings: Findings) => void;
