import type { OperationName } from "@sunfathom/answers";
import type { ComponentName, Language, Problem } from "@sunfathom/contract";
import type { Item, itemsAgain, PackageOptions, PaperRequest, QuizRefusal } from "@sunfathom/quiz";
import type { JsonRead } from "../http/json-text.js";
import type { Look, PictureName } from "../pictures/look.js";

/** What checks a body: a calculation, or the component of the contract that it must keep. */
export type Reader = { operation: OperationName } | { component: ComponentName };

/** What a thread can be asked to work out. All of it can be copied between threads. */
export type Task =
  /** Finds a problem, or what is valid, and so of bounded size. `language` is that of the problem where the body names none. */
  | { kind: "read"; reader: Reader; bytes: Uint8Array; language: Language }
  | { kind: "calculation"; name: OperationName; scene: unknown; language: Language }
  | { kind: "picture"; name: PictureName; scene: unknown; look: Look; language: Language }
  /** A file to print or to load. */
  | { kind: "sheet"; name: string; body: unknown; format: string; language: Language }
  | { kind: "paper"; request: PaperRequest }
  /** The same from where its questions were found. */
  | { kind: "paper_again"; request: PaperRequest; found: Found }
  /** Its questions as the files of a package, zipped. */
  | { kind: "package"; items: readonly Item[]; options: PackageOptions };

export type Found = Parameters<typeof itemsAgain>[1];

/** What a thread found. */
export type Outcome =
  | { status: "ok"; bytes: Uint8Array }
  /** `language` where it is another one than was asked of the thread. */
  | { status: "problem"; problem: Problem; language?: Language | undefined }
  | { status: "read"; json: JsonRead }
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
