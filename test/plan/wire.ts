/**
 * An answer as it comes over the wire, or a part of it: readers of plans take it as a stranger to the program would, by names alone.
 */
// biome-ignore lint/suspicious/noExplicitAny: what is under a name is what the contract says there, which other tests hold.
export type Wire = any;
