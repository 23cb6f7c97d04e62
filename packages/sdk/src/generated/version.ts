// Generated from openapi/openapi.json by packages/sdk/scripts/generate.mjs. Do not edit.

/**
 * Version of the API description that this package was generated from.
 * @example
 * console.log("made for version", descriptionVersion, "of the API");
 */
export const descriptionVersion = "0.1.0";

/**
 * SHA-256 of that description's bytes, hexadecimal.
 * @example
 * console.log(descriptionHash.slice(0, 12));
 */
export const descriptionHash = "310fe6e273f751a2046e3fbc1802e9b390dc9893e1a405597745b5ba282c6d44";
