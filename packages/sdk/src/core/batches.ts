import type { AnswerOf, SceneOf } from "../generated/api.js";
import type { BatchSummary, Brief, Language, TextUnits } from "../generated/types.js";
import { SunfathomError } from "./errors.js";
import type { FieldsOf, Picked } from "./fields.js";
import type { ProblemError } from "./response-errors.js";
import type { CallOptions } from "./types.js";

/** Name of a calculation. */
export type BatchName = keyof AnswerOf;

/** What a batch says for every scene that does not say it itself. */
interface ForAll {
  language?: Language | undefined;
  units?: TextUnits | undefined;
  expect_model_version?: string | undefined;
}

/** Scenes one by one. */
export interface BatchOfItems<Name extends BatchName> extends ForAll {
  items: readonly { [One in Name]: { id: string; operation: One; scene: SceneOf[One] } }[Name][];
}

/** One scene, and what differs. */
export interface BatchOfVaried<Name extends BatchName> extends ForAll {
  operation: Name;
  /** What all have in common. */
  scene: Readonly<Record<string, unknown>>;
  /** Each entry names fields with their values; those of one entry go together. The last entry runs fastest. */
  vary: readonly Readonly<Record<string, readonly unknown[]>>[];
}

/** Many scenes: `BatchRequest` of the description. */
export type Batch<Name extends BatchName> = BatchOfItems<Name> | BatchOfVaried<Name>;

/** Whose line it is. */
interface Whose {
  /** The item's id; of a scene that `vary` made, its places in `vary`. */
  id: string;
  /** Of a scene that `vary` made: for each entry of `vary`, the place of its value. */
  at?: number[];
}

/** What came of one scene: an answer, or why there is none. */
export type BatchItemResult<Answer> =
  | (Whose & { answer: Answer; problem?: never })
  | (Whose & { problem: ProblemError; answer?: never });

/** What comes back, one scene after the other; when it is done, how the batch ended. */
export type BatchResults<Answer> = AsyncGenerator<BatchItemResult<Answer>, BatchSummary, void>;

/**
 * A batch ended before all its scenes were answered: ten minutes were over, or the service stopped. Ask for those that are left again.
 * @example
 * if (error instanceof BatchEndedError) console.error(`${error.summary.left} scenes are left`);
 */
export class BatchEndedError extends SunfathomError {
  override readonly name: string = "BatchEndedError";
  constructor(
    /** How it ended. */
    readonly summary: BatchSummary,
  ) {
    super(`${summary.left} of ${summary.items} scenes are left.`);
  }
}

/** Carries a batch out. The service and the offline mode each have one. */
export type RunBatch = (
  batch: object,
  options?: CallOptions & { fields?: readonly string[] | "brief" | undefined },
) => BatchResults<never>;

/** Many scenes in one call. */
export interface Batches {
  /**
   * Answers many scenes, as they are ready and in any order. A scene that is wrong has its `problem` and keeps no other from its answer.
   * Leave the loop, or abort, and the work stops.
   * @param batch `items` one by one, or one `scene` with what differs in `vary`
   * @returns what to loop over; it throws a `SunfathomError`: of what is wrong with the batch itself, or where it was cut
   * @example
   * const batch = { operation: "filter-choice", scene: { water_type: "IB" }, vary: [{ depth_m: [5, 10, 20] }] } as const;
   * for await (const { id, answer, problem } of client.batches.run(batch)) {
   *   console.log(id, answer?.filter_kind ?? problem?.message);
   * }
   */
  run<Name extends BatchName>(batch: Batch<Name>, options?: CallOptions): BatchResults<AnswerOf[Name]>;
  run<Name extends BatchName, const Names extends FieldsOf<AnswerOf[Name]>>(
    batch: Batch<Name>,
    options: CallOptions & { fields: readonly Names[] },
  ): BatchResults<Picked<AnswerOf[Name], Names | "cautions">>;
  run<Name extends BatchName>(
    batch: Batch<Name>,
    options: CallOptions & { fields: "brief" },
  ): BatchResults<Brief>;
}
