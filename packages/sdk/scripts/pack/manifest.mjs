/**
 * The manifest that is published, made from the one of the workspace.
 * @param {{ name: string, version: string, description: string, license: string }} manifest
 */
export function publishedManifest({ name, version, description, license }) {
  return {
    name,
    version,
    description,
    license,
    type: "module",
    sideEffects: false,
    engines: { node: ">=20" },
    exports: {
      ".": { types: "./dist/index.d.ts", default: "./dist/index.js" },
      "./offline": { types: "./dist/offline/index.d.ts", default: "./dist/offline.js" },
      "./offline/parts": { types: "./dist/offline/parts.d.ts", default: "./dist/offline-parts.js" },
      "./package.json": "./package.json",
    },
    // For readers of manifests that know no exports.
    main: "./dist/index.js",
    types: "./dist/index.d.ts",
    files: ["dist", "NOTICE.txt", "PROVENANCE.json"],
    publishConfig: { access: "public", provenance: true },
  };
}
