import { reference } from "@sunfathom/contract";
import { acceptLanguage } from "../../openapi/accept-language.js";
import { schemaOf } from "../../openapi/components.js";
import { languageHeaders, postHeaders, problemResponses } from "../../openapi/responses.js";
import type { TripForm } from "./trip-form.js";
import type { TripOperation } from "./trip-operation.js";

const told: Readonly<Record<TripForm, string>> = {
  "application/json": "",
  "text/calendar": "The same as a calendar (RFC 5545).",
  "text/vtt": "The same as captions (WebVTT).",
};

/** What the description says of what plans more than one scene at a time. */
export function tripByPost({
  operationId,
  summary,
  description,
  request,
  answer,
  examples,
  forms,
}: TripOperation): object {
  return {
    operationId,
    tags: ["Trips"],
    summary,
    description,
    "x-safe": true,
    // Open to change while we learn how it is used: see the guide on changes.
    "x-preview": true,
    headers: { type: "object", properties: { "Accept-Language": acceptLanguage } },
    body: {
      content: {
        "application/json": { schema: { allOf: [{ $ref: reference(request) }], "x-examples": examples } },
      },
    },
    response: {
      200: {
        description: schemaOf(answer).description,
        headers: { ...postHeaders, ...languageHeaders },
        content: Object.fromEntries(
          forms.map((form) => [
            form,
            {
              schema:
                form === "application/json"
                  ? { $ref: reference(answer) }
                  : { type: "string", description: told[form] },
            },
          ]),
        ),
      },
      ...problemResponses([
        "invalid_request",
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
