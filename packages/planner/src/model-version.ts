/**
 * The version of the model: year, month and count within the month. It is raised where an answer's figures change, and with a line in
 * CHANGELOG.md beside this package; test/golden holds both. Texts and new fields leave it alone.
 */
export const MODEL_VERSION = "2026.11.27";
