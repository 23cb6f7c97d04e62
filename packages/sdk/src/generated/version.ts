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
export const descriptionHash = "ac216d82a027a37f10e14599596027391c88cbed94c828e60321d4362e0ac423";
