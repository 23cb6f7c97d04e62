// The file that each thread runs. Threads run the built packages, also under the tests, which build them first.
import { setPriority } from "node:os";
import { getHeapStatistics } from "node:v8";
import { parentPort, threadId, workerData } from "node:worker_threads";
import { checkpoint, checkRequest, onCheckpoint, toBytes } from "@sunfathom/answers";
import { itemsAgain, itemsFor, QuizProblem, zipOf } from "@sunfathom/quiz";
import { move, transferableSymbol, valueSymbol } from "piscina";
import { planOf, workOn } from "../features/batches/work.js";
import { draw } from "../features/pictures/draw.js";
import { sheetOf } from "../features/sheets/index.js";
import { planTrip, readTrip } from "../features/trips/index.js";
import { readJson } from "../http/asked/json-text.js";
import { languageIn } from "../http/asked/language.js";
import { operationIn, tongueOf } from "../tongues.js";
import type { Done, Loaded, Order, Outcome, Shared, Task } from "./tasks.js";

class Stopped extends Error {}

const { flags, niceness } = workerData as Shared;
lowerPriority();
parentPort?.postMessage({ loaded: threadId } satisfies Loaded);

/** Linux gives each thread a priority of its own; elsewhere the whole process would get this one. */
function lowerPriority(): void {
  if (process.platform !== "linux" || niceness === 0) return;
  try {
    setPriority(0, niceness);
  } catch {
    // Where the system does not allow it, threads compete as equals.
  }
}

/** Works out one task, of what is drawn as a promise. Never throws: where it does not return, the thread has died. */
export default function work({ task, slot }: Order): unknown {
  let checkpoints = 0;
  onCheckpoint(() => {
    checkpoints += 1;
    if (Atomics.load(flags, slot) !== 0) throw new Stopped();
  });
  let outcome: Outcome;
  try {
    outcome = outcomeOf(task);
  } catch (error) {
    if (error instanceof Stopped) outcome = { status: "stopped", checkpoints };
    else if (error instanceof QuizProblem) {
      const { refusal, field } = error;
      outcome = { status: "quiz_problem", refusal, field };
    } else
      outcome = { status: "failed", message: error instanceof Error ? (error.stack ?? "") : String(error) };
  } finally {
    onCheckpoint(undefined);
  }
  const done: Done = { outcome, thread: threadId, heapBytes: getHeapStatistics().used_heap_size };
  const handed = "bytes" in outcome ? moved(done, outcome.bytes) : done;
  return task.kind === "sheet" || task.kind === "picture" ? aTurnLater(handed) : handed;
}

/** What makes PDFs and pixels lets go of them a turn of the loop later, and a thread that is asked again at once takes no turn of its own. */
const aTurnLater = (handed: unknown): Promise<unknown> =>
  new Promise((resolve) => setImmediate(() => resolve(handed)));

function outcomeOf(task: Task): Outcome {
  if (task.kind === "paper") return { status: "paper", items: itemsFor(task.request) };
  if (task.kind === "paper_again") return { status: "paper", items: itemsAgain(task.request, task.found) };
  if (task.kind === "package")
    return { status: "ok", bytes: Uint8Array.from(Buffer.concat([...zipOf(task.items, task.packing)])) };
  if (task.kind === "read") return read(task);
  if (task.kind === "batch") return workOn(task.slice, (error) => error instanceof Stopped);
  if (task.kind === "picture") return draw(task);
  if (task.kind === "sheet") return sheetOf(task);
  if (task.kind === "trip") return planTrip(task);
  const answered = operationIn(tongueOf(task.language), task.name).reply(task.scene);
  if (answered.status === "problem") return answered;
  // A copy of its own, since it is given away.
  return { status: "ok", bytes: Uint8Array.from(toBytes(answered)) };
}

/** Checks what a body says here, so that nothing but what is valid is copied between threads. */
function read({ bytes, reader, language }: Extract<Task, { kind: "read" }>): Outcome {
  const json = readJson(bytes);
  if (json.status !== "value") return { status: "read", json };
  checkpoint();
  const asked = languageIn(json.value);
  const tongue = tongueOf(asked ?? language);
  if ("batch" in reader) {
    const planned = planOf(json.value, tongue);
    return "problem" in planned
      ? { status: "problem", problem: planned.problem, language: asked }
      : { status: "plan", plan: planned.plan };
  }
  if ("trip" in reader) return readTrip(reader.trip, json.value, { tongue, asked });
  const checked =
    "operation" in reader
      ? operationIn(tongue, reader.operation).prepare(json.value)
      : checkRequest(reader.component, json.value, tongue.problems);
  if ("problem" in checked) return { status: "problem", problem: checked.problem, language: asked };
  return { status: "read", json };
}

/** Hands over the bytes in place of a copy. */
function moved(done: Done, bytes: Uint8Array): ReturnType<typeof move> {
  return move({
    get [transferableSymbol]() {
      return bytes.buffer as ArrayBuffer;
    },
    get [valueSymbol]() {
      return done;
    },
  });
}
