// Loaded before the service, makes it keep 50 MB a second for ever: by the clock, so that a fast machine is not drowned
// and a busy one still shows it.
const kept = [];
const begun_ms = performance.now();
setInterval(() => {
  while (kept.length * 2 < 0.05 * (performance.now() - begun_ms))
    kept.push(new Array(2 ** 18).fill(kept.length));
}, 50).unref();
