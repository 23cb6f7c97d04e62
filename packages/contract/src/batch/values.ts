// How much a batch may hold, and what its lines are. Plain data, without zod.

/** Scenes that a batch names one by one. */
export const mostBatchItems = 1000;
/** Scenes that one scene may become. */
export const mostVaried = 5000;
/** Entries of `vary`. */
export const mostVaryEntries = 8;

export const batchLineKinds = ["answer", "problem", "pause", "summary"] as const;

/** Why a batch ends before all is answered: ten minutes are over, or the service stops. */
export const batchEnds = ["time", "stopping"] as const;
