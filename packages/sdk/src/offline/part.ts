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

/** Who answers here, in English, and with the texts of another language; reference data have none. */
export interface Sources {
  readonly source: Source;
  readonly saidIn?: (words: object) => Source;
}

/** What a client without a service can be made from: one calculation, or one table of reference data. */
export interface OfflinePart<Name extends OfflineName = OfflineName> extends Sources {
  /** Its method. */
  readonly name: Name;
  /** The group of the client that the method is in. */
  readonly group: "calculations" | "reference";
  /** Who answers scenes that ask for more than most do: loaded where one is none of the plain ones. Absent where all are. */
  readonly wider?: () => Promise<Sources>;
}
