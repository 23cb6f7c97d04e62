// Asks the service, and holds whatever it answers against the description.

import { Ajv2020 } from "ajv/dist/2020.js";
import type { FastifyInstance } from "fastify";
import { createApp } from "../../services/api/src/app.js";
import { defaultLimits } from "../../services/api/src/limits.js";
import { document, type Operation, type ResponseObject, type Schema } from "./description.js";

/** The service, with a limit on requests that no test meets. */
export async function startApp(): Promise<FastifyInstance> {
  const app = await createApp(undefined, {
    ...defaultLimits,
    requestsPerWindow: 1e9,
    maxEventLoopDelay_ms: 0,
  });
  await app.ready();
  return app;
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
  if (copy["type"] === "object" && "properties" in copy) copy["additionalProperties"] ??= false;
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
    url: query === undefined ? operation.path : `${operation.path}?${query}`,
    headers: body === undefined ? headers : { "content-type": "application/json", ...headers },
    ...(body === undefined ? {} : { payload: body }),
  });
  const text = response.payload;
  const answer: Answer = {
    status: response.statusCode,
    headers: response.headers,
    text,
    body: text === "" ? undefined : JSON.parse(text),
  };
  check(operation, answer);
  return answer;
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
  if (headers["content-type"] !== `${media}; charset=utf-8`)
    throw failed(`the type is ${headers["content-type"]}`);
  if (Number(headers["content-length"]) !== Buffer.byteLength(text))
    throw failed("another length than it says");
  const schema = described.content?.[media]?.schema ?? {};
  const validate = validatorOf(schema);
  if (!validate(body)) throw failed(ajv.errorsText(validate.errors));
}

const validators = new Map<Schema, ReturnType<typeof ajv.compile>>();

function validatorOf(schema: Schema): ReturnType<typeof ajv.compile> {
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
