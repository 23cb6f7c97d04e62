import { nearest } from "@sunfathom/answers";
import {
  type FieldError,
  type Problem,
  type ProblemCode,
  problemCodes,
  problemComponent,
  problemStatuses,
  reference,
} from "@sunfathom/contract";
import { problemPage, problemTitles } from "@sunfathom/words";
import { describe, expect, it } from "vitest";
import { fieldsOf, schemaOf } from "./components.js";
import { problemResponses } from "./responses.js";

interface Described {
  description: string;
  headers: Record<string, { description: string }>;
  content: Record<string, { schema: object; examples: Record<string, { value: Problem }> }>;
}

const described = (codes: readonly ProblemCode[]) => problemResponses(codes) as Record<string, Described>;
const bodyOf = (response: Described | undefined) => response?.content["application/problem+json"];
const codesOf = (response: Described | undefined) => Object.keys(bodyOf(response)?.examples ?? {});

/** Of an operation that can meet all that there is, beside what every one can. */
function all() {
  const met = Object.values(described([])).flatMap(codesOf);
  return described(problemCodes.filter((code) => !met.includes(code)));
}

describe("the problems of an operation", () => {
  it("stand under their statuses, which ascend, and each under its own alone", () => {
    const responses = all();
    const statuses = Object.keys(responses).slice(0, -1).map(Number);
    expect(statuses).toEqual([...statuses].sort((a, b) => a - b));
    for (const status of statuses)
      for (const code of codesOf(responses[status]))
        expect(problemStatuses[code as ProblemCode]).toBe(status);
    expect(Object.keys(responses).at(-1)).toBe("default");
    const listed = Object.values(responses).flatMap(codesOf);
    expect(listed.sort()).toEqual([...problemCodes].sort());
  });

  it("are its own and those that any request can meet, and no other", () => {
    const codes = Object.values(described(["token_expired"])).flatMap(codesOf);
    expect(codes).toEqual(
      expect.arrayContaining(["token_expired", "internal_error", "unavailable", "too_many_requests"]),
    );
    expect(codes).not.toContain("token_refused");
  });

  // OpenAPI 3.1, "Responses Object": default is for what is under no status of its own.
  it("are by default that no operation was reached", () => {
    const { default: otherwise } = described([]);
    expect(codesOf(otherwise)).toEqual(["not_found", "method_not_allowed"]);
    expect(otherwise?.description).toContain("did not reach this operation");
  });

  it("say which they can be: one by its schema, several by one of theirs", () => {
    for (const response of Object.values(all())) {
      const codes = codesOf(response) as ProblemCode[];
      const schemas = codes.map((code) => ({ $ref: reference(problemComponent(code)) }));
      expect(bodyOf(response)?.schema).toEqual(codes.length === 1 ? schemas[0] : { oneOf: schemas });
    }
    const { 422: several, 413: one } = all();
    const titles = codesOf(several).map((code) => problemTitles()[code as ProblemCode]);
    expect(several?.description.split(" Or: ")).toEqual(titles);
    expect(one?.description).toBe(problemTitles().body_too_large);
  });

  // RFC 9110, sections 15.5.2 and 15.5.6 (must), 15.5.16 and 10.2.3; RFC 6585, section 4.
  it.each([
    ["401", "WWW-Authenticate"],
    ["default", "Allow"],
    ["415", "Accept"],
    ["415", "Accept-Encoding"],
    ["429", "Retry-After"],
    ["503", "Retry-After"],
  ])("%s comes with %s, and others do not", (status, name) => {
    for (const [other, { headers }] of Object.entries(all())) {
      expect(headers).toHaveProperty("X-Request-Id");
      if (other === status) expect(headers[name]?.description).toMatch(/^[A-Z].+\.$/);
      else if (name !== "Retry-After") expect(headers).not.toHaveProperty(name);
    }
  });
});

describe("the example of a problem", () => {
  const examples = () =>
    Object.values(all()).flatMap((response) => Object.entries(bodyOf(response)?.examples ?? {}));

  it("has what its schema asks for, and nothing that the schema does not know", () => {
    for (const [code, { value }] of examples()) {
      const { properties = {}, required = [] } = schemaOf(problemComponent(code as ProblemCode));
      expect(Object.keys(value)).toEqual(expect.arrayContaining([...required]));
      expect(Object.keys(properties)).toEqual(expect.arrayContaining(Object.keys(value)));
      for (const [name, { const: only }] of Object.entries(properties))
        if (only !== undefined) expect(value).toHaveProperty(name, only);
      expect(value.detail).toMatch(/^\S.+\.$/);
      // RFC 4648, section 5: 12 bytes in base64url, which is what the service gives to a request without an id.
      expect(value).toHaveProperty("request_id", expect.stringMatching(/^[\w-]{16}$/));
    }
  });

  it("has errors where its problem names fields, of codes that its page explains", () => {
    const errorsOf = ({ errors = [] }: Problem): FieldError[] => errors;
    for (const [code, { value }] of examples()) {
      const { errors: explained = [] } = problemPage(code as ProblemCode);
      const codes = explained.map((meaning) => meaning.code);
      if (codes.length > 0 && value.status !== 409) expect(errorsOf(value)).toHaveLength(1);
      for (const error of errorsOf(value)) {
        if (codes.length > 0) expect(codes).toContain(error.code);
        expect(value.detail).toBe(error.message);
      }
    }
  });

  it("of a scene names a field that is no field, and the nearest that is one", () => {
    const [, { value } = { value: undefined }] = examples().find(([code]) => code === "invalid_scene") ?? [];
    const [error] = value?.errors ?? [];
    const fields = fieldsOf("Scene").map(([name]) => name);
    const wrong = error?.pointer.slice(1) ?? "";
    expect(fields).not.toContain(wrong);
    expect(error?.did_you_mean).toBe(nearest(wrong, fields));
  });
});
