import { mountedOn, mountsDiveAdvice as mounts, textsOfDiveAdvice as textsOf } from "@sunfathom/answers";
import { filterMounting } from "@sunfathom/words/en";

// Plans for scenes that say what their filters are mounted on. It has nothing of a plan itself, which whoever loads it has: bundlers keep
// what it shares with a page in what every page starts with.

/** English texts beside those of a plan. */
const english = { "filter-mounting": filterMounting };

export { english, mountedOn, mounts, textsOf };
