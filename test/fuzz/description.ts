// The API description, read the way a caller reads it: the one source of what the fuzz sends and expects.
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
  links?: Record<string, Link>;
  content?: Record<string, { schema: Schema }>;
}

/** Where fields of another operation's body come from, as `$response.body#/` and a name. */
interface Link {
  operationId: string;
  requestBody: Record<string, string>;
}

interface RawOperation {
  operationId: string;
  tags: string[];
  security?: Record<string, unknown>[];
  "x-safe"?: boolean;
  parameters?: (Parameter | { $ref: string })[];
  requestBody?: { content: Record<string, { schema: Schema; examples?: Record<string, { value: object }> }> };
  responses: Record<string, ResponseObject | { $ref: string }>;
}

export interface Operation {
  id: string;
  path: string;
  method: string;
  /** Group that it belongs to. */
  tag: string;
  /** Schema of the JSON body; undefined where it takes none. */
  body?: Schema;
  /** Name of the component that the body is. */
  bodyName?: string;
  examples: object[];
  /** Whether it takes a key. */
  takesKey: boolean;
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
      tag: raw.tags[0] ?? "",
      ...(media === undefined
        ? {}
        : { body: plain(media.schema), bodyName: media.schema.$ref?.split("/").at(-1) ?? "" }),
      examples: Object.values(media?.examples ?? {}).map(({ value }) => value),
      takesKey: (raw.security ?? []).some((scheme) => Object.keys(scheme).length > 0),
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

/** Operations that take a body, each with the one that takes it as a query where there is one. */
export const calculations = operations
  .filter(({ method, body }) => method === "POST" && body !== undefined)
  .map((post, _, posts) => ({
    post,
    get: operations.find(({ path, method }) => path === post.path && method === "GET"),
    turn: turnOf(post, posts),
  }));
export type Calculation = (typeof calculations)[number];

/** Its place among the operations that take the same body, and how many they are. */
function turnOf(post: Operation, posts: readonly Operation[]): { nth: number; of: number } {
  const alike = posts.filter(({ bodyName }) => bodyName === post.bodyName);
  return { nth: alike.indexOf(post), of: alike.length };
}

/** Whether a short run tries the `index`th field of a body here: each field is tried by one operation that takes it. */
export function isItsTurn({ turn }: Calculation, index: number): boolean {
  return index % turn.of === turn.nth;
}
