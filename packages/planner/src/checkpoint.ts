let watcher: (() => void) | undefined;

/**
 * Has `watch` called again and again while an answer is worked out, every few milliseconds at most. What it throws ends the
 * work and reaches whoever asked for the answer: so a caller's leaving can stop it.
 * @param watch undefined for nobody
 */
export function onCheckpoint(watch: (() => void) | undefined): void {
  watcher = watch;
}

/** Stands wherever the model is evaluated once more: for a state of the world, a depth, a filter. */
export function checkpoint(): void {
  watcher?.();
}
