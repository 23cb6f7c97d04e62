import Fastify from "fastify";
import { expect, it } from "vitest";
import { parse } from "yaml";
import { registerSwagger } from "../../plugins/swagger.js";
import { descriptionRoutes } from "./description.js";

/** A service with one path, and all that describes it. */
async function ask(url: string, headers: Record<string, string> = {}) {
  const app = Fastify();
  await registerSwagger(app);
  app.get("/v1/things", { schema: { summary: "Things" } }, () => "");
  descriptionRoutes(app);
  return app.inject({ url, headers });
}

it("the description holds the service's paths, its own left out, and has a tag", async () => {
  const reply = await ask("/openapi.json");
  expect(reply.statusCode).toBe(200);
  expect(Object.keys(reply.json().paths)).toEqual(["/v1/things"]);
  const { etag } = reply.headers;
  const again = await ask("/openapi.json", { "if-none-match": String(etag) });
  expect([again.statusCode, again.body, again.headers["etag"]]).toEqual([304, "", etag]);
});

it("is given in YAML, too, and means the same", async () => {
  const [yaml, json] = [await ask("/openapi.yaml"), await ask("/openapi.json")];
  // RFC 9512.
  expect(yaml.headers["content-type"]).toBe("application/yaml; charset=utf-8");
  expect(parse(yaml.body)).toEqual(json.json());
});

it("the description takes no query", async () => {
  const reply = await ask("/openapi.json?a=1");
  expect([reply.statusCode, reply.json().code]).toEqual([400, "invalid_query"]);
});

it("the front door leads to the documentation", async () => {
  const reply = await ask("/");
  expect([reply.statusCode, reply.headers["location"]]).toEqual([302, "/docs"]);
});
