import { references } from "@sunfathom/answers";
import { reference } from "@sunfathom/contract";
import { expect, it } from "vitest";
import { schemaOf } from "../../openapi/components.js";
import { referenceRead } from "./description.js";

it.each(references)(
  "$name is described with what it holds, its tag, and that the caller may have it",
  (one) => {
    expect(referenceRead(one)).toMatchObject({
      operationId: one.id,
      tags: ["Reference data"],
      summary: one.summary,
      description: one.description,
      response: {
        200: {
          description: schemaOf(one.answer).description,
          headers: { ETag: { type: "string" } },
          content: { "application/json": { schema: { $ref: reference(one.answer) } } },
        },
        // RFC 9110, section 15.4.5: no content, and the tag that a 200 would have had.
        304: {
          type: "null",
          description: expect.stringMatching(/\.$/),
          headers: { ETag: { type: "string" } },
        },
        400: { content: { "application/problem+json": { examples: { invalid_query: {} } } } },
      },
    });
  },
);
