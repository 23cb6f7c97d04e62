import type { Reference } from "@sunfathom/answers";
import { reference } from "@sunfathom/contract";
import { schemaOf } from "../../openapi/components.js";
import { etagHeaders, problemResponses } from "../../openapi/responses.js";

/** What the description says of reading reference data. */
export function referenceRead({ id, summary, description, answer }: Reference): object {
  return {
    operationId: id,
    tags: ["Reference data"],
    summary,
    description,
    response: {
      200: {
        description: schemaOf(answer).description,
        headers: etagHeaders,
        content: { "application/json": { schema: { $ref: reference(answer) } } },
      },
      304: { type: "null", description: "You already have the answer.", headers: etagHeaders },
      ...problemResponses(["invalid_query"]),
    },
  };
}
