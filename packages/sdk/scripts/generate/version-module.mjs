import { comment, mark } from "./description.mjs";

/** @param {import("./description.mjs").Description} description */
export function versionModule({ document, sha256 }) {
  return `${mark}${comment([
    "Version of the API description that this package was generated from.",
    "@example",
    'console.log("made for version", descriptionVersion, "of the API");',
  ])}export const descriptionVersion = ${JSON.stringify(document.info.version)};

${comment([
  "SHA-256 of that description's bytes, hexadecimal.",
  "@example",
  "console.log(descriptionHash.slice(0, 12));",
])}export const descriptionHash = ${JSON.stringify(sha256)};
`;
}
