import type { Operation } from "@sunfathom/answers";
import { reference, wireSchemas } from "@sunfathom/contract";
import { problems } from "@sunfathom/words/en/problems";
import { describe, expect, it } from "vitest";
import { queryFieldsOf, readQuery } from "../../http/asked/query.js";
import { schemaOf } from "../../openapi/components.js";
import { operations } from "../../operations.js";
import { calculationByGet, calculationByPost } from "./description.js";

interface Content {
  "application/json": { schema: object };
}
interface Response {
  description: string;
  type?: string;
  headers: object;
  content: Content;
}
interface Described {
  operationId: string;
  tags: string[];
  summary: string;
  description: string;
  "x-safe": boolean;
  response: Record<string, Response>;
}
interface ByPost extends Described {
  querystring: { properties: Record<string, object> };
  body: { content: { "application/json": { schema: { allOf: object[]; "x-examples": Examples } } } };
}
interface ByGet extends Described {
  querystring: { type: string; properties: Record<string, object>; required: string[] };
  headers: { type: string; properties: Record<string, { type: string; description: string }> };
}
type Examples = Record<string, { summary: string; value: object }>;

const post = (operation: Operation) => calculationByPost(operation) as ByPost;
const get = (operation: Operation) => calculationByGet(operation) as ByGet;

describe.each(operations)("$name", (operation) => {
  it("is one calculation by two methods: the same answer under two ids, with both safe", () => {
    const [one, other] = [post(operation), get(operation)];
    expect([one.operationId, other.operationId]).toEqual([operation.postId, operation.getId]);
    expect(one.summary).toBe(operation.summary);
    expect(other.summary).toMatch(/^\S.+ in the query string$/);
    expect(other.summary.startsWith(operation.summary)).toBe(true);
    expect(one.description).toBe(operation.description);
    expect(other.description.startsWith(operation.description)).toBe(true);
    expect(other.description).toContain("Same answer");
    for (const { tags, response, ...described } of [one, other]) {
      expect(tags).toEqual(["Calculations"]);
      expect(described["x-safe"]).toBe(true);
      const told = response["200"]?.description;
      expect(told?.startsWith(`${schemaOf(operation.answer).description} With \`fields\``)).toBe(true);
      expect(told).toContain("only `cautions` are sure to be there");
      expect(told).toContain("that of `Brief`");
      expect(response["200"]?.content).toEqual({
        "application/json": { schema: { $ref: reference(operation.answer) } },
      });
    }
  });

  it("takes by POST a scene, with examples that it answers", () => {
    const { schema } = post(operation).body.content["application/json"];
    expect(schema.allOf).toEqual([{ $ref: reference(operation.request) }]);
    const examples = Object.values(schema["x-examples"]);
    expect(Object.keys(schema["x-examples"])).toEqual(operation.examples.map(({ name }) => name));
    for (const { summary, value } of examples) {
      expect(summary).toMatch(/\S/);
      expect(operation.prepare(value).status).toBe("ready");
    }
  });

  it("takes by GET every field that a query string holds, and no other", () => {
    const { querystring } = get(operation);
    expect(querystring.type).toBe("object");
    const fields = queryFieldsOf(operation);
    const asked = Object.keys(wireSchemas[operation.request].properties ?? {});
    // What the reader of query strings itself refuses for its form.
    const refused = asked.filter((name) =>
      readQuery(`${name}=1`, fields, problems.query).errors.some(({ code }) => code === "needs_post"),
    );
    expect(refused.length).toBeGreaterThan(0);
    expect(Object.keys(querystring.properties)).toEqual([
      ...asked.filter((name) => !refused.includes(name)),
      "fields",
    ]);
    expect(Object.keys(post(operation).querystring.properties)).toEqual(["fields"]);
    for (const schema of Object.values(querystring.properties)) expect(schema).not.toHaveProperty("$ref");
    expect(Object.keys(querystring.properties)).toEqual(expect.arrayContaining(querystring.required));
    expect(querystring.required).toEqual(wireSchemas[operation.request].required ?? []);
  });

  // RFC 9110, section 13.1.2 and 15.4.5: a 304 has no content, and the tag that the 200 would have had.
  it("by GET may be asked with a tag, and says that the caller has the answer", () => {
    const { headers, response } = get(operation);
    expect(headers.type).toBe("object");
    expect(Object.keys(headers.properties)).toEqual(["Accept-Language", "If-None-Match"]);
    expect(headers.properties["If-None-Match"]).toMatchObject({ type: "string" });
    expect(headers.properties["If-None-Match"]?.description).toMatch(/^Tag .+\.$/);
    expect(response["304"]).toMatchObject({ type: "null", description: expect.stringMatching(/\.$/) });
    for (const status of ["200", "304"]) expect(response[status]?.headers).toHaveProperty("ETag");
    expect(post(operation).response["200"]?.headers).toHaveProperty("ETag");
    expect(post(operation).response).not.toHaveProperty("304");
  });

  // What each can be refused for: a body only by POST.
  it("has the problems of its method", () => {
    const problems = ({ response }: Described) =>
      Object.values(response).flatMap(({ content }) =>
        Object.keys(
          (content as unknown as Record<string, { examples?: object }>)?.["application/problem+json"]
            ?.examples ?? {},
        ),
      );
    const [byPost, byGet] = [problems(post(operation)), problems(get(operation))];
    const bodys = ["malformed_json", "body_too_large", "unsupported_media_type"];
    const scenes = ["invalid_scene", "invalid_query", "model_version_mismatch", "outside_the_model"];
    expect(byPost).toEqual(expect.arrayContaining([...bodys, ...scenes]));
    expect(byGet).toEqual(expect.arrayContaining(scenes));
    for (const code of bodys) expect(byGet).not.toContain(code);
  });
});
