// Written by scripts/write-model-version.mjs; not committed.

/** Identifies the tables and formulas behind an answer: the start of a SHA-256 over their sources. */
export const MODEL_VERSION = "b4b99650300f";
