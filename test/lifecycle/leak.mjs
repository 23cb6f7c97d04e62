// Loaded before the service, makes it keep 2 MB for ever, 20 times a second: by the clock, so that a fast machine is not
// drowned and a busy one still shows it.
const kept = [];
setInterval(() => kept.push(new Array(2 ** 18).fill(kept.length)), 50).unref();
