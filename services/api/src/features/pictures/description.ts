import { type ProblemCode, pascal, reference } from "@sunfathom/contract";
import { fitsQuery, queryFieldsOf } from "../../http/asked/query.js";
import { acceptLanguage } from "../../openapi/accept-language.js";
import { fieldsOf, schemaOf } from "../../openapi/components.js";
import {
  etagHeaders,
  type Header,
  languageHeaders,
  postHeaders,
  problemResponses,
} from "../../openapi/responses.js";
import { withoutReference } from "../../openapi/without-reference.js";
import type { Drawable } from "./draw.js";

const tags = ["Pictures"];

const look = (): [string, object][] =>
  fieldsOf("PictureLook").map(([name, schema]): [string, object] => [name, withoutReference(schema)]);

const ofScene: readonly ProblemCode[] = [
  "invalid_scene",
  "invalid_query",
  "model_version_mismatch",
  "outside_the_model",
];

/** What the description says of a picture by POST. */
export function pictureByPost({ picture, operation }: Drawable): object {
  const { summary, description, name } = picture;
  return {
    operationId: `render${pascal(name)}`,
    tags,
    summary,
    description: `${description} An SVG or a PNG that any page may show, with a title and a description that say what it says.`,
    "x-safe": true,
    "x-look": "PictureLook",
    querystring: { type: "object", properties: Object.fromEntries(look()) },
    headers: { type: "object", properties: { "Accept-Language": acceptLanguage } },
    body: {
      content: {
        "application/json": {
          schema: {
            allOf: [{ $ref: reference(operation.request) }],
            "x-examples": Object.fromEntries(
              operation.examples.map((example) => [
                example.name,
                { summary: example.summary, value: example.scene },
              ]),
            ),
          },
        },
      },
    },
    response: {
      200: drawn(summary, { ...postHeaders, ...languageHeaders }),
      ...problemResponses([...ofScene, "malformed_json", "body_too_large", "unsupported_media_type"]),
    },
  };
}

/** What the description says of its twin by GET. */
export function pictureByGet({ picture, operation }: Drawable): object {
  const scene = queryFieldsOf(operation);
  return {
    operationId: `read${pascal(picture.name)}`,
    tags,
    summary: `${picture.summary}, for a scene in the query string`,
    description: `${picture.description} Same picture as by POST, to the byte: an address that a page can name as the source of an image. Lists and curves need POST.`,
    "x-safe": true,
    "x-look": "PictureLook",
    querystring: {
      type: "object",
      properties: Object.fromEntries([
        ...fieldsOf(operation.request)
          .filter(([name]) => fitsQuery(scene, name))
          .map(([name, schema]): [string, object] => [name, withoutReference(schema)]),
        ...look(),
      ]),
      required: schemaOf(operation.request).required ?? [],
    },
    headers: {
      type: "object",
      properties: {
        "Accept-Language": acceptLanguage,
        "If-None-Match": { type: "string", description: "Tag of the picture that the caller has." },
      },
    },
    response: {
      200: drawn(picture.summary, { ...etagHeaders, ...languageHeaders }),
      304: {
        type: "null",
        description: "The caller has the picture.",
        headers: { ...etagHeaders, ...languageHeaders },
      },
      ...problemResponses(ofScene),
    },
  };
}

function drawn(summary: string, headers: Record<string, Header>): object {
  return {
    description: `The picture: ${summary.charAt(0).toLowerCase()}${summary.slice(1)}.`,
    headers: {
      ...Object.fromEntries(Object.entries(headers).filter(([name]) => !name.startsWith("RateLimit"))),
      "Cross-Origin-Resource-Policy": {
        type: "string",
        description: "`cross-origin`: pages of any origin may show the picture.",
      },
    },
    content: {
      "image/svg+xml": { schema: { type: "string" } },
      "image/png": { schema: { type: "string", format: "binary" } },
    },
  };
}
