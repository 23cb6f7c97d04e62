// The API description, read as any caller reads it: the one source of what the fuzz sends and expects.
import { readFileSync } from "node:fs";

export interface Schema {
  $ref?: string;
  allOf?: Schema[];
  oneOf?: Schema[];
  type?: string;
  enum?: unknown[];
  minimum?: number;
  maximum?: number;
  minLength?: number;
  maxLength?: number;
  minItems?: number;
  maxItems?: number;
  pattern?: string;
  items?: Schema;
  properties?: Record<string, Schema>;
  required?: string[];
  additionalProperties?: boolean;
  examples?: unknown[];
}

export interface Parameter {
  name: string;
  in: string;
  schema: Schema;
}

export interface ResponseObject {
  headers?: Record<string, object>;
  content?: Record<string, { schema: Schema }>;
}

interface RawOperation {
  operationId: string;
  "x-safe"?: boolean;
  parameters?: (Parameter | { $ref: string })[];
  requestBody?: { content: Record<string, { schema: Schema; examples?: Record<string, { value: object }> }> };
  responses: Record<string, ResponseObject | { $ref: string }>;
}

export interface Operation {
  id: string;
  path: string;
  method: string;
  /** Schema of the JSON body; undefined where it takes none. */
  body?: Schema;
  /** Name of the component that the body is. */
  bodyName?: string;
  examples: object[];
  /** Query parameters. */
  parameters: Parameter[];
  responses: Record<string, ResponseObject>;
}

const file = new URL("../../openapi/openapi.json", import.meta.url);
export const document: { paths: Record<string, Record<string, RawOperation>> } = JSON.parse(
  readFileSync(file, "utf8"),
);

/** What a reference of the description leads to; anything else as it is. */
function resolved<T extends object>(value: T | { $ref: string }): T {
  if (!("$ref" in value) || typeof value.$ref !== "string") return value as T;
  let target: unknown = document;
  for (const step of value.$ref.slice(2).split("/")) target = (target as Record<string, unknown>)[step];
  if (target === undefined) throw new Error(`${value.$ref} leads nowhere.`);
  return target as T;
}

/** A schema with its reference, and the one that stands alone in `allOf`, put in its place. */
export function plain(schema: Schema): Schema {
  if (schema.$ref !== undefined) return plain(resolved<Schema>({ $ref: schema.$ref }));
  const { allOf, ...rest } = schema;
  return allOf?.length === 1 && allOf[0] !== undefined ? { ...plain(allOf[0]), ...rest } : schema;
}

export const operations: Operation[] = Object.entries(document.paths).flatMap(([path, methods]) =>
  Object.entries(methods).map(([method, raw]) => {
    const media = raw.requestBody?.content["application/json"];
    return {
      id: raw.operationId,
      path,
      method: method.toUpperCase(),
      ...(media === undefined
        ? {}
        : { body: plain(media.schema), bodyName: media.schema.$ref?.split("/").at(-1) ?? "" }),
      examples: Object.values(media?.examples ?? {}).map(({ value }) => value),
      parameters: (raw.parameters ?? [])
        .map((parameter) => resolved<Parameter>(parameter))
        .filter((parameter) => parameter.in === "query"),
      responses: Object.fromEntries(
        Object.entries(raw.responses).map(([status, response]) => [
          status,
          resolved<ResponseObject>(response),
        ]),
      ),
    };
  }),
);

/** Operations that take a scene as a body, each with the one that takes it as a query where there is one. */
export const calculations = operations
  .filter(({ method, body }) => method === "POST" && body !== undefined)
  .map((post) => ({
    post,
    get: operations.find(({ path, method }) => path === post.path && method === "GET"),
  }));
export type Calculation = (typeof calculations)[number];
