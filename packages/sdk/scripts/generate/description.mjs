import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/**
 * An API description (OpenAPI 3.1), as far as it is read here.
 * @typedef {object} Document
 * @property {{ version: string }} info
 * @property {{ name: string, description: string }[]} tags
 * @property {Record<string, Record<string, DescribedOperation>>} paths
 * @property {{ schemas: Record<string, Schema>, parameters: Record<string, Parameter> }} components
 *
 * @typedef {object} DescribedOperation
 * @property {string} operationId
 * @property {string} summary
 * @property {string} description
 * @property {string[]} tags
 * @property {boolean} [x-safe]
 * @property {string} [x-look] component that says in the query string how a file is made
 * @property {(Parameter | Reference)[]} [parameters]
 * @property {{ content: Record<string, Content> }} [requestBody]
 * @property {Record<string, { content?: Record<string, Content> }>} responses
 *
 * @typedef {{ $ref: string }} Reference
 * @typedef {{ name: string, in: string, description?: string, schema?: { enum?: string[] } }} Parameter
 * @typedef {{ schema: Reference & { format?: string }, examples?: Record<string, { summary: string, value: unknown }> }} Content
 *
 * @typedef {object} Schema
 * @property {string} [description]
 * @property {Record<string, Schema>} [properties]
 * @property {unknown[]} [enum]
 * @property {Ways[]} [x-ways] what is given in one of several ways
 * @property {string} [x-part-of] the component that this has some fields of
 *
 * @typedef {{ says: string, ways: Way[] }} Ways
 * @typedef {{ name: string, needs: string[], takes: string[], values?: Record<string, string[]> }} Way
 *
 * @typedef {{ document: Document, sha256: string, file: string }} Description
 */

/** @returns {Description} the committed description */
export function readDescription() {
  const file = fileURLToPath(new URL("../../../../openapi/openapi.json", import.meta.url));
  const text = readFileSync(file, "utf8");
  return { document: JSON.parse(text), sha256: createHash("sha256").update(text).digest("hex"), file };
}

/** @param {Reference} reference @returns {string} name of the component that it leads to */
export function componentName({ $ref }) {
  return $ref.slice($ref.lastIndexOf("/") + 1);
}

/** First line of every file that is written. */
export const mark =
  "// Generated from openapi/openapi.json by packages/sdk/scripts/generate.mjs. Do not edit.\n\n";

/**
 * A documentation comment.
 * @param {string[]} lines
 * @param {string} [indent]
 */
export function comment(lines, indent = "") {
  const safe = lines.map((line) => line.replaceAll("*/", "*\\/"));
  return `${indent}/**\n${safe.map((line) => `${indent} * ${line}`.trimEnd()).join("\n")}\n${indent} */\n`;
}
