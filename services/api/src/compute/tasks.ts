import type { BatchPlan, OperationName } from "@sunfathom/answers";
import type { ComponentName, Language, Problem } from "@sunfathom/contract";
import type { Item, itemsAgain, Packing, PaperRequest, QuizRefusal } from "@sunfathom/quiz";
import type { Slice, SliceDone } from "../features/batches/slice.js";
import type { Look, PictureName } from "../features/pictures/look.js";
import type { TripForm } from "../features/trips/trip-form.js";
import type { JsonRead } from "../http/asked/json-text.js";

/** What checks a body: a calculation, the component of the contract that it must keep, a plan for a trip, or what makes a plan of a batch. */
export type Reader =
  | { operation: OperationName }
  /** By the name of the plan. */
  | { trip: string }
  | { component: ComponentName }
  | { batch: true };

/** What a thread can be asked to work out. All of it can be copied between threads. */
export type Task =
  /** Finds a problem, or what is valid, and so of bounded size. `language` is that of the problem where the body names none. */
  | { kind: "read"; reader: Reader; bytes: Uint8Array; language: Language }
  | { kind: "calculation"; name: OperationName; scene: unknown; language: Language }
  | { kind: "picture"; name: PictureName; scene: unknown; look: Look; language: Language }
  /** Some scenes of a batch. */
  | { kind: "batch"; slice: Slice }
  /** A file to print or to load. */
  | { kind: "sheet"; name: string; body: unknown; format: string; language: Language }
  /** What plans more than one scene at a time. */
  | ({ kind: "trip"; form: TripForm; language: Language } & Pick<TripRead, "name" | "bytes">)
  | { kind: "paper"; request: PaperRequest }
  /** The same from where its questions were found. */
  | { kind: "paper_again"; request: PaperRequest; found: Found }
  /** Its questions as the files of a package, zipped. */
  | { kind: "package"; items: readonly Item[]; packing: Packing };

export type Found = Parameters<typeof itemsAgain>[1];

/** A body that is valid, as another thread goes on with it. */
export interface TripRead {
  name: string;
  /** As JSON, with files read into what is in them. */
  bytes: Uint8Array;
  /** Of its one form: equal for bodies that have the same answer. */
  digest: string;
  /** What the answer costs, in units. */
  cost: number;
}

/** What a thread found. */
export type Outcome =
  | { status: "ok"; bytes: Uint8Array }
  /** `language` where it is another one than was asked of the thread, and `cost` of finding it out. */
  | { status: "problem"; problem: Problem; language?: Language | undefined; cost?: number }
  | { status: "read"; json: JsonRead }
  /** A batch, in place of the body that it was read from. */
  | { status: "plan"; plan: BatchPlan }
  /** A body for what plans a trip: `cost` is what it has cost to read it. */
  | { status: "trip"; trip: TripRead; language: Language | undefined; cost: number }
  | SliceDone
  | { status: "paper"; items: Item[] | undefined }
  | { status: "quiz_problem"; refusal: QuizRefusal; field: string | undefined }
  /** The caller has left. */
  | { status: "stopped"; checkpoints: number }
  /** The program is wrong. */
  | { status: "failed"; message: string };

/** A task on its way to a thread. */
export interface Order {
  task: Task;
  /** Which of the shared flags says that nobody waits for it any more. */
  slot: number;
}

/** What comes back. */
export interface Done {
  outcome: Outcome;
  thread: number;
  heapBytes: number;
}

/** What a thread says once it has loaded what it runs. */
export interface Loaded {
  /** Its id. */
  loaded: number;
}

/** What threads are given when they start. */
export interface Shared {
  /** One for each task that can run at a time: not 0 where it is to stop. */
  flags: Int32Array;
  niceness: number;
}
