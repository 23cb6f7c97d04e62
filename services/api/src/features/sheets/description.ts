import { type ProblemCode, reference } from "@sunfathom/contract";
import { acceptLanguage } from "../../openapi/accept-language.js";
import { fieldsOf } from "../../openapi/components.js";
import { languageHeaders, postHeaders, problemResponses } from "../../openapi/responses.js";
import { withoutReference } from "../../openapi/without-reference.js";
import type { SheetOperation } from "./sheet-operation.js";

const everyPost: readonly ProblemCode[] = [
  "invalid_query",
  "model_version_mismatch",
  "malformed_json",
  "body_too_large",
  "unsupported_media_type",
];

/** What the description says of a file that is made of a body. */
export function sheetByPost(operation: SheetOperation): object {
  const { operationId, summary, description, look, types, request, reader, examples } = operation;
  const ofBody: ProblemCode[] =
    "operation" in reader ? ["invalid_scene", "outside_the_model"] : ["invalid_request"];
  return {
    operationId,
    tags: ["Sheets"],
    summary,
    description,
    "x-safe": true,
    "x-look": look,
    querystring: {
      type: "object",
      properties: Object.fromEntries(
        fieldsOf(look).map(([name, schema]): [string, object] => [name, withoutReference(schema)]),
      ),
    },
    headers: { type: "object", properties: { "Accept-Language": acceptLanguage } },
    body: {
      content: {
        "application/json": { schema: { allOf: [{ $ref: reference(request) }], "x-examples": examples } },
      },
    },
    response: {
      200: {
        description: `${summary}.`,
        headers: {
          ...postHeaders,
          ...languageHeaders,
          "Content-Disposition": { type: "string", description: "A name to save it under." },
        },
        content: Object.fromEntries(
          Object.values(types).map((type) => [
            type,
            { schema: { type: "string", ...(type.includes("xml") ? {} : { format: "binary" }) } },
          ]),
        ),
      },
      ...problemResponses([...ofBody, ...everyPost]),
    },
  };
}
