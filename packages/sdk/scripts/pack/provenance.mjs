import { readFileSync } from "node:fs";
import { readDescription } from "../generate/description.mjs";

/**
 * What a package was made from.
 * @param {{ name: string, version: string, devDependencies: Record<string, string> }} manifest
 * @param {import("esbuild").Metafile} metafile
 */
export function provenance(manifest, metafile) {
  const { document, sha256 } = readDescription();
  return {
    package: `${manifest.name}@${manifest.version}`,
    description: { version: document.info.version, sha256 },
    generator: `@hey-api/openapi-ts@${manifest.devDependencies["@hey-api/openapi-ts"]}`,
    offline_includes: foreignPackages(metafile),
  };
}

/**
 * Packages from outside the workspace whose code the offline entry holds, each with version and licence.
 * @param {import("esbuild").Metafile} metafile
 */
function foreignPackages({ outputs }) {
  const files = Object.values(outputs).flatMap(({ inputs }) =>
    Object.entries(inputs).flatMap(([file, { bytesInOutput }]) => (bytesInOutput > 0 ? [file] : [])),
  );
  const folders = files.flatMap((file) => {
    const folder = /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(file)?.[0];
    return folder === undefined ? [] : [folder];
  });
  return [...new Set(folders)].map((folder) => {
    const { name, version, license } = JSON.parse(readFileSync(`${folder}/package.json`, "utf8"));
    return { name, version, license };
  });
}
