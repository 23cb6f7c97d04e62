import type { ComponentName, Problem } from "@sunfathom/contract";
import type { Outcome, Reader } from "../../compute/tasks.js";
import type { Tongue } from "../../tongues.js";

/** A body that keeps its schema and its rules, in its one form. */
interface ReadySheet {
  status: "ready";
  canonical: string;
  /** In its one form. */
  scene: object;
  cost: number;
  make: () => Outcome;
}

/** What makes a file to print or to load from a body. */
export interface SheetOperation {
  /** Last part of its path. */
  name: string;
  operationId: string;
  summary: string;
  description: string;
  /** Component that says in the query string what it comes in. */
  look: ComponentName;
  /** Media types by format, the default first. */
  types: Readonly<Record<string, string>>;
  /** What else than the body decides the bytes, by format. */
  makers: Readonly<Record<string, string>>;
  /** Component that the body keeps. */
  request: ComponentName;
  reader: Reader;
  examples: Readonly<Record<string, { summary: string; value: object }>>;
  prepare: (
    tongue: Tongue,
    body: unknown,
    format: string,
  ) => ReadySheet | { status: "problem"; problem: Problem };
}
