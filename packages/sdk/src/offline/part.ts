import type { Calculations, Reference } from "../generated/api.js";

/** Name of what can be computed without a service: the method of a client that asks for it. */
export type OfflineName = keyof Calculations | keyof Reference;

/** An answer, or why there is none, before that is put into words. */
type Reply = { status: "ok"; body: object } | { status: "refused"; refusal: object };

/** Where a service has a part, and who answers here. */
interface Source {
  readonly path: string;
  readonly reply: (body: unknown) => Reply;
}

/** What a client without a service can be made from: one calculation, or one table of reference data. */
export interface OfflinePart<Name extends OfflineName = OfflineName> {
  /** Its method. */
  readonly name: Name;
  /** The group of the client that the method is in. */
  readonly group: "calculations" | "reference";
  /** Where a service has it, and who answers here, in English. */
  readonly source: Source;
  /** The same with the texts of another language; reference data have none. */
  readonly saidIn?: (words: object) => Source;
}
