import type { BatchScene } from "@sunfathom/answers";
import type { Language } from "@sunfathom/contract";

/** Scenes of a batch that a thread works on before others have their turn. */
export interface Slice {
  scenes: readonly BatchScene[];
  language: Language;
  /** The query that asks for some fields of each answer. */
  query: string;
  requestId: string;
  /** What has been paid for: no scene is begun that would cost more. */
  allowance: number;
}

/** What came of it. */
export interface SliceDone {
  status: "batch";
  /** A line for each scene that was come to, from the first on. */
  bytes: Uint8Array;
  answers: number;
  problems: number;
  cost: number;
  /** What the next scene costs, where the allowance did not reach for it. */
  next: number | undefined;
  /** Failures of the program, for the log. */
  failures: readonly string[];
}
