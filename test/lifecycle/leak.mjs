// Loaded before the service, makes its main thread keep 50 MB a second for ever once it is sent SIGUSR2: by the clock, so
// that a fast machine is not drowned and a busy one still shows it. Threads load it too, but may not listen to signals.
import { isMainThread } from "node:worker_threads";

const kept = [];

function leak() {
  const begun_ms = performance.now();
  setInterval(() => {
    while (kept.length * 2 < 0.05 * (performance.now() - begun_ms))
      kept.push(new Array(2 ** 18).fill(kept.length));
  }, 50).unref();
}

if (isMainThread) process.once("SIGUSR2", leak);
