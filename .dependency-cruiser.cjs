// Imports point one way: optics <- planner <- answers <- api, with contract beside planner, and the SDK apart.
// For each package, the workspace packages that its code may import. Tests beside the code may import anything.
const mayImport = {
  "packages/optics": [],
  "packages/planner": ["packages/optics"],
  "packages/contract": [],
  "packages/words": ["packages/contract", "packages/planner"],
  "packages/answers": ["packages/contract", "packages/planner", "packages/optics", "packages/words"],
  "packages/quiz": ["packages/planner", "packages/optics", "packages/words"],
  "packages/pictures": ["packages/planner", "packages/optics", "packages/words"],
  // For tests alone, which may import anything; what is published imports it nowhere.
  "packages/fixtures": ["packages/planner"],
  // Knows the service by its HTTP contract alone. Its offline entries have the rules below.
  "packages/sdk": [],
  "services/api": [
    "packages/answers",
    "packages/contract",
    "packages/optics",
    "packages/pictures",
    "packages/planner",
    "packages/quiz",
    "packages/words",
  ],
};

const test = "\\.(test|prove|test-support)\\.ts$";
const anyPackage = "^(packages|services)/[^/]+/";

/** The one door from the client to the answers; who only asks a service never downloads what lies behind it. */
const offline = "^packages/sdk/src/offline/";

/** @param {string[]} folders */
const inside = (folders) => `^(${folders.join("|")})/`;

const directions = Object.entries(mayImport).map(([folder, allowed]) => ({
  name: `direction-${folder.split("/")[1]}`,
  comment: `${folder} may import ${allowed.join(", ") || "no other workspace package"}.`,
  severity: "error",
  from: { path: inside([folder]), pathNot: [test, offline] },
  to: { path: anyPackage, pathNot: inside([folder, ...allowed]) },
}));

/** @type {import("dependency-cruiser").IConfiguration} */
module.exports = {
  forbidden: [
    ...directions,
    {
      name: "features-apart",
      comment: "A feature of the service knows no other one: what they share lies outside all of them.",
      severity: "error",
      from: { path: "^services/api/src/features/([^/]+)/", pathNot: test },
      to: { path: "^services/api/src/features/[^/]+/", pathNot: "^services/api/src/features/$1/" },
    },
    {
      name: "direction-sdk-offline",
      comment: "The offline entries may import packages/answers, packages/pictures and packages/words.",
      severity: "error",
      from: { path: offline, pathNot: test },
      to: {
        path: anyPackage,
        pathNot: inside(["packages/sdk", "packages/answers", "packages/pictures", "packages/words"]),
      },
    },
    {
      name: "sdk-online-without-offline",
      comment: "The online entry does not pull the offline mode in.",
      severity: "error",
      from: { path: "^packages/sdk/src/", pathNot: [test, offline] },
      to: { path: offline },
    },
    {
      name: "direction-of-a-new-package",
      comment: "A package that the table above does not know may import no other; give it a line there.",
      severity: "error",
      from: { path: "^((?:packages|services)/[^/]+)/", pathNot: [test, inside(Object.keys(mayImport))] },
      to: { path: anyPackage, pathNot: "^$1/" },
    },
    {
      name: "by-package-name",
      comment: "Another package is imported by its name, never by a path into its folders.",
      severity: "error",
      from: { path: "^((?:packages|services)/[^/]+)/", pathNot: test },
      to: { path: anyPackage, pathNot: "^$1/", dependencyTypes: ["local"] },
    },
    {
      name: "no-circular",
      comment: "Light takes one road; so do imports.",
      severity: "error",
      from: {},
      to: { circular: true },
    },
    {
      name: "no-unresolvable",
      comment: "Also what a package does not export, such as a path into its dist.",
      severity: "error",
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: "pure-packages-touch-no-node",
      comment: "The model and its answers run in a browser too: no I/O.",
      severity: "error",
      from: { path: "^packages/(optics|planner|contract|words|answers|quiz|pictures)/src/", pathNot: test },
      to: { dependencyTypes: ["core"] },
    },
  ],
  options: {
    doNotFollow: { path: ["node_modules", "^(packages|services)/[^/]+/dist/"] },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["source", "import", "types", "node", "default"],
      extensions: [".ts", ".js", ".mjs", ".cjs", ".json"],
    },
  },
};
