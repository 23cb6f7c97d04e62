// Stands in for the file that threads run: a thread that dies on demand, as one that is out of memory would.
import { parentPort, threadId } from "node:worker_threads";

parentPort?.postMessage({ loaded: threadId });

/** @param {{ task: { scene: { dies: boolean } } }} order */
export default function work({ task }) {
  if (task.scene.dies) process.exit(3);
  return { outcome: { status: "ok", bytes: new Uint8Array(1) }, thread: threadId, heapBytes: 1 };
}
