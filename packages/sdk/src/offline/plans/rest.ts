import type { Seldom } from "../rest.js";

/** What only some plans need, and no other calculation. The packer puts it in this place, with its own copy of what it shares. */
export const made: Seldom = {};
