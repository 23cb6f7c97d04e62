// Stands in for the file that threads run: a thread that takes memory without end, as one in a loop that it should not have.
import { parentPort, threadId } from "node:worker_threads";

parentPort?.postMessage({ loaded: threadId });

/** @param {{ task: { scene: { eats: boolean } } }} order */
export default function work({ task }) {
  const eaten = [];
  while (task.scene.eats) eaten.push(Array.from({ length: 10_000 }, (_, n) => ({ n })));
  return { outcome: { status: "ok", bytes: new Uint8Array(1) }, thread: threadId, heapBytes: eaten.length };
}
