import { setImmediate, setTimeout } from "node:timers/promises";
import { warmUp } from "@sunfathom/quiz";

/** Longest piece of work that needs no rest after it, ms. */
const short_ms = 1;

/**
 * Makes the first papers as fast as later ones, in the background: after each piece of work, which takes tens of
 * milliseconds at most, as long a rest, in which requests are answered.
 * @param isOver whether the process has better things to do, such as to end
 */
export async function warmQuiz(isOver: () => boolean): Promise<void> {
  const steps = warmUp();
  for (;;) {
    const started = performance.now();
    if (isOver() || steps.next().done) return;
    const took_ms = performance.now() - started;
    if (took_ms < short_ms) await setImmediate();
    // The rest keeps no process alive.
    else await setTimeout(took_ms, undefined, { ref: false });
  }
}
