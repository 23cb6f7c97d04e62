// The bill of materials says what it has to: https://cyclonedx.org/docs/1.6/json/. What the locks and manifests say is the source.
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { Ajv } from "ajv";
import { beforeAll, expect, it } from "vitest";

interface Component {
  type: string;
  name: string;
  version: string;
  purl: string;
  licenses?: object[];
  hashes?: { alg: string; content: string }[];
}
interface Bill {
  bomFormat: string;
  specVersion: string;
  metadata: { component: Component };
  components: Component[];
  dependencies: { ref: string; dependsOn: string[] }[];
}

const root = new URL("../", import.meta.url);
let bill: Bill;
beforeAll(() => {
  const { stdout, status, stderr } = spawnSync(process.execPath, [".ci/sbom.mjs"], {
    cwd: fileURLToPath(root),
    encoding: "utf8",
    maxBuffer: 64 * 1024 * 1024,
  });
  expect([status, stderr]).toEqual([0, ""]);
  bill = JSON.parse(stdout);
});

it("names all that the service asks for, and the renderer that it gives to browsers", () => {
  expect(bill).toMatchObject({ bomFormat: "CycloneDX", specVersion: "1.6" });
  expect(bill.metadata.component).toMatchObject({ type: "application", name: "@sunfathom/api" });
  const manifest = JSON.parse(readFileSync(new URL("services/api/package.json", root), "utf8"));
  const names = bill.components.map(({ name }) => name);
  expect(names).toEqual(expect.arrayContaining([...Object.keys(manifest.dependencies), "openapi-explorer"]));
  for (const name of ["vitest", "@redocly/cli", "typescript"]) expect(names).not.toContain(name);
});

it("gives a licence to each, and a hash to each that comes from a registry", () => {
  expect(bill.components.length).toBeGreaterThan(50);
  for (const { name, licenses, hashes } of bill.components) {
    expect([name, licenses?.length]).toEqual([name, 1]);
    if (!name.startsWith("@sunfathom/")) expect(hashes?.[0]?.content, name).toMatch(/^[0-9a-f]{128}$/);
  }
});

it("leads from each to components that it has", () => {
  const refs = new Set([bill.metadata.component, ...bill.components].map(({ purl }) => purl));
  expect(refs.size).toBe(bill.components.length + 1);
  for (const { ref, dependsOn } of bill.dependencies)
    for (const one of [ref, ...dependsOn]) expect(refs).toContain(one);
});

// The schema that the standard's makers publish (ECMA-424, CycloneDX 1.6), from their own package, with those that it refers to.
it("keeps the published schema", () => {
  const manifest = createRequire(import.meta.url).resolve("@cyclonedx/cyclonedx-library/package.json");
  const published = (name: string): object =>
    JSON.parse(
      readFileSync(new URL(`res/schema/${name}.SNAPSHOT.schema.json`, `file://${manifest}`), "utf8"),
    );
  const ajv = new Ajv({
    strict: false,
    allErrors: true,
    // For addresses, mail and times: the bill has none of them.
    validateFormats: false,
    schemas: {
      "http://cyclonedx.org/schema/spdx.SNAPSHOT.schema.json": published("spdx"),
      "http://cyclonedx.org/schema/jsf-0.82.SNAPSHOT.schema.json": published("jsf-0.82"),
    },
  });
  const keeps = ajv.compile(published("bom-1.6"));
  expect([keeps(bill), keeps.errors]).toEqual([true, null]);
  const [first, ...others] = bill.components;
  expect(keeps({ ...bill, components: [{ ...first, type: "part" }, ...others] })).toBe(false);
  expect(keeps({ ...bill, specVersion: 1.6 })).toBe(false);
});
