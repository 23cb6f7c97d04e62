// The generator reads what a description says, and refuses what it does not know rather than guess.
import { describe, expect, it } from "vitest";
import { apiModule } from "../../scripts/generate/api-module.mjs";
import type { DescribedOperation, Description } from "../../scripts/generate/description.mjs";
import { methodsOf } from "../../scripts/generate/operations.mjs";

const json = (name: string) => ({ "application/json": { schema: { $ref: `#/components/schemas/${name}` } } });
const ok = { "200": { content: json("Answer") } };

/** An operation of which a test says only what matters to it. */
function operation(operationId: string, more: Partial<DescribedOperation> = {}): DescribedOperation {
  return { operationId, summary: "S", description: "D.", tags: ["Shop data"], responses: ok, ...more };
}

function description(paths: Description["document"]["paths"]): Description {
  const schemas = { Answer: {}, Scene: { properties: { expect_model_version: {}, depth_m: {} } }, Site: {} };
  const parameters = { depth_m: { name: "depth_m", in: "query" } };
  const tags = [{ name: "Shop data", description: "What a shop keeps." }];
  const document = { info: { version: "9.9.9" }, tags, paths, components: { schemas, parameters } };
  return { document, sha256: "0", file: "openapi.json" };
}

const body = { content: json("Scene") };

describe("a method of the client", () => {
  it("is named after its operation and grouped by its tag", () => {
    const [method] = methodsOf(description({ "/v1/sites": { get: operation("listSites") } }));
    expect(method).toMatchObject({ group: "shop", name: "sites", method: "GET", path: "/v1/sites" });
    const [create] = methodsOf(description({ "/v1/sites": { post: operation("createSite") } }));
    expect(create?.name).toBe("createSite");
  });

  it.each([
    ["get", {}, true],
    ["head", {}, true],
    ["put", {}, true],
    ["delete", {}, true],
    ["post", { "x-safe": true }, true],
    ["post", {}, false],
    ["post", { "x-safe": false }, false],
    ["patch", {}, false],
  ])("is repeated only where the method is idempotent or marked safe: %s %o", (verb, mark, repeatable) => {
    const [method] = methodsOf(description({ "/v1/x": { [verb]: operation("doX", mark) } }));
    expect(method?.repeatable).toBe(repeatable);
  });

  it("takes GET and POST of one calculation together", () => {
    const parameters = [{ $ref: "#/components/parameters/depth_m" }, { name: "If-None-Match", in: "header" }];
    const methods = methodsOf(
      description({
        "/v1/x": {
          get: operation("readX", { "x-safe": true, parameters }),
          post: operation("computeX", { "x-safe": true, requestBody: body }),
        },
      }),
    );
    expect(methods).toHaveLength(1);
    expect(methods[0]).toMatchObject({ name: "x", method: "POST", query: ["depth_m"], versioned: true });
  });

  it("keeps GET and POST apart where one of them changes something", () => {
    const paths = { "/v1/sites": { get: operation("listSites"), post: operation("createSite") } };
    expect(methodsOf(description(paths)).map(({ name }) => name)).toEqual(["sites", "createSite"]);
  });

  it("asks for a version of the model only where the body has the field", () => {
    const site = { content: json("Site") };
    const [method] = methodsOf(description({ "/v1/x": { put: operation("putX", { requestBody: site }) } }));
    expect(method).toMatchObject({ versioned: false, body: "Site" });
  });

  it("takes what stands in the path first, then the body", () => {
    const parameters = [{ name: "site_id", in: "path", description: "Your id." }];
    const put = operation("replaceSite", { parameters, requestBody: { content: json("Site") } });
    const text = apiModule(description({ "/v1/sites/{site_id}": { put } }));
    expect(text).toContain("replaceSite(site_id: string, site: Site, options?: CallOptions): Call<Answer>");
    expect(text).toContain('{ method: "PUT", path: "/v1/sites/{site_id}" }');
    expect(text).toContain("@param site_id Your id.");
  });
});

it("hands on the bytes of an answer that is a file", () => {
  const zip = { schema: { $ref: "", type: "string", format: "binary" } };
  const pack = operation("packSites", { responses: { "200": { content: { "application/zip": zip } } } });
  const text = apiModule(description({ "/v1/sites": { post: pack } }));
  expect(text).toContain("packSites(options?: CallOptions): Call<ArrayBuffer>");
  expect(text).toContain('{ method: "POST", path: "/v1/sites", once: true, file: "application/zip" }');
  expect(text).not.toContain("  ArrayBuffer,");
});

describe("what the generator refuses", () => {
  it.each<[string, Record<string, DescribedOperation>, RegExp]>([
    [
      "an answer that is not JSON",
      { get: operation("readX", { responses: { "200": {} } }) },
      /readX.*its answer/,
    ],
    [
      "a body that is not a component",
      { post: operation("computeX", { requestBody: { content: {} } }) },
      /computeX.*its body/,
    ],
    [
      "a query that has no twin",
      { get: operation("listX", { parameters: [{ $ref: "#/components/parameters/depth_m" }] }) },
      /listX.*query/,
    ],
    ["two methods of one name", { get: operation("readX"), put: operation("listX") }, /shop\.x/],
    ["an operation without a tag", { get: operation("readX", { tags: [] }) }, /no tag/],
  ])("%s", (_what, operations, message) => {
    expect(() => methodsOf(description({ "/v1/x": operations }))).toThrow(message);
  });
});
