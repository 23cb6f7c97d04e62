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
export const descriptionHash = "3a22f9d1880975de6ad31187786ab26cdd422d36faa811826191db2127c93357";
