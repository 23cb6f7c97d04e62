// Asks the service, and holds whatever it answers against the description.

import { Ajv2020 } from "ajv/dist/2020.js";
import type { FastifyInstance } from "fastify";
import { buildApp } from "../../services/api/src/build-app.test-support.js";
import type { Limits } from "../../services/api/src/config/limits.js";
import { defaultQuizSettings } from "../../services/api/src/config/quiz-settings.js";
import { document, type Operation, operations, type ResponseObject, type Schema } from "./description.js";

/** The key that operations take. */
export const key = "a-key-of-these-tests-alone";

/** As many at a time as a test sends ahead. */
const manyBatches = { batchesPerClient: 64, batches: 1024 };

/**
 * The service, with a limit on requests that no test meets. Examples that hold another answer's content get it.
 * @param others limits that a test is about
 */
export async function startApp(others: Partial<Limits> = {}): Promise<FastifyInstance> {
  const limits = { costPerWindow: 1e9, ...manyBatches, ...others };
  const quiz = { ...defaultQuizSettings, instructorKey: key };
  const app = await buildApp({ limits, quiz });
  await app.ready();
  for (const source of operations) {
    for (const { operationId, requestBody } of Object.values(source.responses["200"]?.links ?? {})) {
      const target = operations.find(({ id }) => id === operationId);
      if (target === undefined) throw new Error(`${source.id} links to ${operationId}, which there is not.`);
      const { body } = await ask(app, source, { body: JSON.stringify(source.examples[0]) });
      for (const example of target.examples) Object.assign(example, taken(requestBody, body));
    }
  }
  return app;
}

/** What a link says to take from an answer (OpenAPI 3.1, runtime expressions). */
function taken(requestBody: Record<string, string>, answer: unknown): object {
  return Object.fromEntries(
    Object.entries(requestBody).map(([name, expression]) => {
      const [, field] = /^\$response\.body#\/(\w+)$/.exec(expression) ?? [];
      if (field === undefined) throw new Error(`${expression} is an expression that is not known here.`);
      return [name, (answer as Record<string, unknown>)[field]];
    }),
  );
}

export interface Answer {
  status: number;
  headers: Record<string, unknown>;
  text: string;
  body: unknown;
}

export interface Problem {
  code: string;
  detail: string;
  request_id: string;
  errors?: { pointer: string; code: string }[];
}

// An independent reader of JSON Schema. An answer holds nothing that its description does not name.
const ajv = new Ajv2020({ strict: false, allErrors: true, validateFormats: false });
ajv.addSchema(closed(document) as object, "description");

function closed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(closed);
  if (typeof value !== "object" || value === null) return value;
  const copy = Object.fromEntries(Object.entries(value).map(([name, item]) => [name, closed(item)]));
  // An object of which no name is described may have any.
  const names = Object.keys(copy["properties"] ?? {});
  if (copy["type"] === "object" && names.length > 0) copy["additionalProperties"] ??= false;
  return copy;
}

/** Sends a request and checks status, media type, headers and body of the answer. @returns it, checked */
export async function ask(
  app: FastifyInstance,
  operation: Operation,
  request: { query?: string; body?: string; headers?: Record<string, string> },
): Promise<Answer> {
  const { query, body, headers = {} } = request;
  const response = await app.inject({
    method: operation.method as "GET" | "POST",
    url: query === undefined || query === "" ? operation.path : `${operation.path}?${query}`,
    headers: {
      ...(body === undefined ? {} : { "content-type": "application/json" }),
      ...(operation.takesKey ? { authorization: `Bearer ${key}` } : {}),
      ...headers,
    },
    ...(body === undefined ? {} : { payload: body }),
  });
  const text = response.payload;
  const answer: Answer = {
    status: response.statusCode,
    headers: response.headers,
    text,
    body: text === "" || isFile(response.headers) ? undefined : contentOf(response.headers, text),
  };
  check(operation, answer);
  return answer;
}

const isLines = (headers: Record<string, unknown>): boolean =>
  String(headers["content-type"]).startsWith("application/jsonl");

/** JSON, or the lines of a stream, each of them JSON. */
export function contentOf(headers: Record<string, unknown>, text: string): unknown {
  if (!isLines(headers)) return JSON.parse(text);
  if (!text.endsWith("\n")) throw new Error(`The last line is cut: ${text.slice(-200)}`);
  return text
    .slice(0, -1)
    .split("\n")
    .map((line) => JSON.parse(line));
}

/**
 * How files begin. A zip: PKWARE's APPNOTE, section 4.3.7. A PNG: a byte that is no text, then its name (W3C PNG, section 5.2). A PDF:
 * ISO 32000-2, section 7.5.2. XML: its declaration (XML 1.0, section 2.8), which a picture goes without.
 */
const BEGINNINGS: Readonly<Record<string, RegExp>> = {
  "application/zip": /^PK[^ -~]{2}/,
  "application/pdf": /^%PDF-1\./,
  "application/xml": /^<\?xml version="1\.0"/,
  "text/xml": /^<\?xml version="1\.0"/,
  "image/svg+xml": /^<svg[^>]*>.*<\/svg>$/s,
  "image/png": /^.PNG\r\n/s,
};

/** What stands in a text where a number was not one, and what may hold any letters: pixels in base 64. */
const NO_NUMBER = /.{0,80}(?:\bNaN|NaN\b|\bInfinity\b|\bundefined\b).{0,40}/;
const PIXELS = /"data:[^"]*"/g;

function isFile(headers: Record<string, unknown>): boolean {
  return Object.keys(BEGINNINGS).some((type) => String(headers["content-type"]).startsWith(type));
}

/** @throws Error that says in what the answer does not keep the description */
export function check(operation: Operation, { status, headers, body, text }: Answer): void {
  const failed = (what: string) =>
    new Error(`${operation.id} answers ${status}: ${what}\n${text.slice(0, 600)}`);
  if (status >= 500) throw failed("a failure of the service");
  const described: ResponseObject | undefined = operation.responses[status];
  if (described === undefined) throw failed("a status that is not described");
  // Some operations are not counted: their answers, and so their problems, tell no limit.
  const counted = operation.responses["200"]?.headers?.["RateLimit"] !== undefined;
  const mandatory = Object.keys(described.headers ?? {}).filter(
    (name) => !/^(retry-after|accept)/i.test(name) && (counted || !name.startsWith("RateLimit")),
  );
  for (const name of mandatory) {
    if (headers[name.toLowerCase()] === undefined) throw failed(`the header ${name} is missing`);
  }
  const [media] = Object.keys(described.content ?? {});
  if (media === undefined) {
    if (text !== "") throw failed("a body where none is described");
    return;
  }
  if (isFile(headers)) {
    const type = String(headers["content-type"]).replace("; charset=utf-8", "");
    if (!(type in (described.content ?? {}))) throw failed(`the type is ${type}`);
    if (!BEGINNINGS[type]?.test(text)) throw failed(`no ${type}`);
    const [odd] = /xml/.test(type) ? (NO_NUMBER.exec(text.replace(PIXELS, "")) ?? []) : [];
    if (odd !== undefined) throw failed(`it holds ${odd}`);
    return;
  }
  // JSON needs no charset (RFC 8259, section 11).
  if (String(headers["content-type"]).replace("; charset=utf-8", "") !== media)
    throw failed(`the type is ${headers["content-type"]}`);
  const validate = validatorOf(described.content?.[media]?.schema ?? {});
  const hold = (value: unknown) => {
    if (!validate(value)) throw failed(ajv.errorsText(validate.errors));
  };
  if (isLines(headers)) {
    const lines = body as { kind: string; summary?: { items: number; left: number } }[];
    lines.forEach(hold);
    const ended = lines.filter(({ kind }) => kind === "summary");
    if (ended.length !== 1 || ended[0] !== lines.at(-1)) throw failed("the summary is not the last line");
    const told = lines.filter(({ kind }) => kind === "answer" || kind === "problem").length;
    const { items = 0, left = 0 } = ended[0]?.summary ?? {};
    if (told + left !== items) throw failed("the summary counts other lines");
    return;
  }
  if (Number(headers["content-length"]) !== Buffer.byteLength(text))
    throw failed("another length than it says");
  hold(body);
}

const validators = new Map<Schema, ReturnType<typeof ajv.compile>>();

/** Holds values to a schema of the description; an object has no field that the schema does not name. */
export function validatorOf(schema: Schema): ReturnType<typeof ajv.compile> {
  const known = validators.get(schema);
  if (known !== undefined) return known;
  const validate = ajv.compile(closed(absolute(schema)) as object);
  validators.set(schema, validate);
  return validate;
}

/** References of a schema that stands alone lead into the description. */
function absolute(value: unknown): unknown {
  return JSON.parse(JSON.stringify(value).replaceAll('"#/components', '"description#/components'));
}
