import type { Operation } from "@sunfathom/answers";
import { reference } from "@sunfathom/contract";
import { fieldsParameter } from "../../http/asked/fields-asked.js";
import { fitsQuery, queryFieldsOf } from "../../http/asked/query.js";
import { acceptLanguage } from "../../openapi/accept-language.js";
import { fieldsOf, schemaOf } from "../../openapi/components.js";
import { etagHeaders, languageHeaders, postHeaders, problemResponses } from "../../openapi/responses.js";
import { withoutReference } from "../../openapi/without-reference.js";

const tags = ["Calculations"];

/** What the description says of a calculation by POST. */
export function calculationByPost(operation: Operation): object {
  return {
    operationId: operation.postId,
    tags,
    summary: operation.summary,
    description: operation.description,
    "x-safe": true,
    querystring: { type: "object", properties: { [fieldsParameter]: fields(operation) } },
    headers: {
      type: "object",
      properties: { "Accept-Language": acceptLanguage },
    },
    body: {
      content: {
        "application/json": {
          schema: { allOf: [{ $ref: reference(operation.request) }], "x-examples": exampleBodies(operation) },
        },
      },
    },
    response: {
      200: answer(operation, { ...postHeaders, ...languageHeaders }),
      ...problemResponses([
        "invalid_scene",
        "invalid_query",
        "malformed_json",
        "model_version_mismatch",
        "body_too_large",
        "unsupported_media_type",
        "outside_the_model",
      ]),
    },
  };
}

/** What the description says of its twin by GET. */
export function calculationByGet(operation: Operation): object {
  const ofScene = queryFieldsOf(operation);
  return {
    operationId: operation.getId,
    tags,
    summary: `${operation.summary}, for a scene in the query string`,
    description: `${operation.description} Same answer as by POST, to the byte. Lists and curves need POST.`,
    "x-safe": true,
    querystring: {
      type: "object",
      properties: Object.fromEntries(
        fieldsOf(operation.request)
          .filter(([name]) => fitsQuery(ofScene, name))
          .map(([name, schema]): [string, object] => [name, withoutReference(schema)])
          .concat([[fieldsParameter, fields(operation)]]),
      ),
      required: schemaOf(operation.request).required ?? [],
    },
    headers: {
      type: "object",
      properties: {
        "Accept-Language": acceptLanguage,
        "If-None-Match": { type: "string", description: "Tag of the answer that you have." },
      },
    },
    response: {
      200: answer(operation, { ...etagHeaders, ...languageHeaders }),
      304: {
        type: "null",
        description: "You already have the answer.",
        headers: { ...etagHeaders, ...languageHeaders },
      },
      ...problemResponses(["invalid_scene", "invalid_query", "model_version_mismatch", "outside_the_model"]),
    },
  };
}

/** What the description says of the parameter that asks for a part of the answer. */
function fields({ brief }: Operation): object {
  const example = ["reasons.text", ...brief].sort().join(",");
  return {
    type: "string",
    description: `Fields of the answer that you want, with commas between them and a dot before a field within another; the answer then has only these and its cautions, and not all that its schema requires. Or \`brief\`, for a \`Brief\`. The whole answer by default.`,
    examples: [example],
  };
}

function answer({ answer: component }: Operation, headers: object): object {
  return {
    // One answer has one schema whatever a parameter says: the schemas of parts stand beside it (openapi/parts.ts).
    description: `${schemaOf(component).description} With \`${fieldsParameter}\` a part of it, with the schema of \`${component}Part\`: only \`cautions\` are sure to be there. With \`${fieldsParameter}=brief\` the schema is that of \`Brief\`. \`x-fields-schemas\` refers to both.`,
    headers,
    content: { "application/json": { schema: { $ref: reference(component) } } },
  };
}

function exampleBodies({ examples }: Operation): object {
  return Object.fromEntries(examples.map(({ name, summary, scene }) => [name, { summary, value: scene }]));
}
