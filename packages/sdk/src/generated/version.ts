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
export const descriptionHash = "3bfd9172faf424234d7c4a7157c1e49578ec521d2aa43d30fa498997c882995b";
