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
export const descriptionHash = "571160467666d148d46979b4cf81f4d899869fe9a02b567b183a03ee6145b1f0";
