import { member } from "@sunfathom/answers";
import {
  type ComponentName,
  type FieldError,
  type FieldErrorCode,
  type JsonSchema,
  maxErrors,
  referenced,
  wireSchemas,
} from "@sunfathom/contract";
import type { ProblemTexts, QueryErrors } from "@sunfathom/words";
import { decoded } from "./decoded.js";

/** `list` also for what means nothing without one. */
type Kind = "number" | "text" | "flag" | "list";

/** Fields of a scene, by the form that they take in a query string. */
export type QueryFields = ReadonlyMap<string, Kind>;

/**
 * The fields of what an operation takes.
 * @param request component of the contract
 * @param besideLists fields that mean nothing without a list
 */
export function queryFieldsOf({
  request,
  besideLists,
}: {
  request: ComponentName;
  besideLists: readonly string[];
}): QueryFields {
  return new Map(
    Object.entries(wireSchemas[request].properties ?? {}).map(([name, schema]) => [
      name,
      besideLists.includes(name) ? "list" : kindOf(schema),
    ]),
  );
}

function kindOf(schema: JsonSchema): Kind {
  if (schema.$ref !== undefined) {
    const components: Readonly<Record<string, JsonSchema>> = wireSchemas;
    return kindOf(components[referenced(schema.$ref)] ?? {});
  }
  if (schema.type === "number" || schema.type === "integer") return "number";
  if (schema.type === "boolean") return "flag";
  return schema.type === "string" ? "text" : "list";
}

/** Whether a query string can hold the field. */
export function fitsQuery(fields: QueryFields, name: string): boolean {
  return fields.has(name) && fields.get(name) !== "list";
}

export interface Query {
  /** The scene as far as it could be read, unknown names included: the check of the scene refuses them. */
  scene: Record<string, unknown>;
  errors: FieldError[];
}

/** A number as JSON writes it (RFC 8259, section 6). */
const jsonNumber = /^-?(0|[1-9]\d*)(\.\d+)?([eE][+-]?\d+)?$/;

const flags: ReadonlyMap<string, boolean> = new Map([
  ["true", true],
  ["false", false],
]);

/**
 * Reads a scene from a query string: the one place where text becomes numbers, and nothing does so by chance.
 * @param query without its question mark
 * @param texts for what is wrong with it
 */
export function readQuery(query: string, fields: QueryFields, texts: ProblemTexts["query"]): Query {
  // Without a prototype, so that a parameter called __proto__ is a name like any other.
  const scene: Record<string, unknown> = Object.create(null);
  const errors: FieldError[] = [];
  const seen = new Set<string>();
  const repeated = new Set<string>();
  const refuse = (name: string, code: Exclude<keyof QueryErrors, "unknown_field">) =>
    errors.push({ pointer: member("", name), code, ...texts[code]({ name }) });

  for (const pair of query.split("&")) {
    if (pair === "") continue;
    // More than are listed: that there are more is all that is told of the rest.
    if (errors.length > maxErrors) break;
    // A plus is a plus, as in the offset of a time: no field takes blanks, which forms write so.
    const split = pair.indexOf("=");
    const name = decoded(split === -1 ? pair : pair.slice(0, split));
    const value = decoded(split === -1 ? "" : pair.slice(split + 1));
    if (name === undefined || value === undefined) {
      refuse(name ?? pair.slice(0, split), "malformed_escape");
      continue;
    }
    if (seen.has(name)) {
      if (!repeated.has(name)) refuse(name, "repeated_parameter");
      repeated.add(name);
      continue;
    }
    seen.add(name);
    const kind = fields.get(name);
    if (kind === undefined) scene[name] = value;
    else if (kind === "list") refuse(name, "needs_post");
    else if (value === "") refuse(name, "empty_value");
    else if (kind === "text") scene[name] = value;
    // Any other word is left to the check of the scene, which says what is allowed.
    else if (kind === "flag") scene[name] = flags.get(value) ?? value;
    else if (jsonNumber.test(value) && Number.isFinite(Number(value))) scene[name] = Number(value);
    else refuse(name, "not_a_number");
  }
  for (const name of repeated) delete scene[name];
  return { scene, errors };
}

/** Errors for the parameters of a request that takes none of them, as many as a problem lists: a query may hold two thousand. */
export function refusedQuery(
  query: string,
  texts: ProblemTexts["query"],
  taken: QueryErrors["unknown_field"]["taken"] = "none",
): FieldError[] {
  const names = query.split("&").filter((pair) => pair !== "");
  return names.slice(0, maxErrors).map((pair) => {
    const name = decoded(pair.split("=", 1)[0] ?? "") ?? pair;
    return {
      pointer: member("", name),
      code: "unknown_field" satisfies FieldErrorCode,
      ...texts.unknown_field({ name, taken }),
    };
  });
}
