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
      ".": entry("index", "index"),
      "./offline": entry("offline/index", "offline"),
      "./offline/batches": entry("offline/batches", "offline-batches"),
      "./offline/pictures": entry("offline/pictures", "offline-pictures"),
      "./offline/parts": entry("offline/parts", "offline-parts"),
      "./package.json": "./package.json",
    },
    // For readers of manifests that know no exports.
    main: "./dist/cjs/index.js",
    module: "./dist/index.js",
    types: "./dist/cjs/index.d.ts",
    files: ["dist", "NOTICE", "PROVENANCE.json"],
    publishConfig: { access: "public", provenance: true },
  };
}

/** @param {string} types @param {string} module */
function entry(types, module) {
  return {
    require: { types: `./dist/cjs/${types}.d.ts`, default: `./dist/cjs/${module}.js` },
    default: { types: `./dist/${types}.d.ts`, default: `./dist/${module}.js` },
  };
}
