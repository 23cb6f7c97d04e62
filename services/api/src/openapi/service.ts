import { reference } from "@sunfathom/contract";
import { schemaOf } from "./components.js";
import { etagHeaders, problemResponses, requestIdHeader } from "./responses.js";

const tags = ["Service"];

function health(operationId: string, summary: string, description: string): object {
  return {
    operationId,
    tags,
    summary,
    description,
    response: {
      200: {
        description: "It is.",
        headers: requestIdHeader,
        content: { "application/json": { schema: { $ref: reference("Health") } } },
      },
      ...problemResponses(["invalid_query"]),
    },
  };
}

export const healthLive = health("readLiveness", "Whether the process runs", "For process supervisors.");

export const healthReady = health(
  "readReadiness",
  "Whether the service answers requests",
  "For load balancers: 503 while it starts or stops.",
);

export const problemPageRead = {
  operationId: "readProblemKind",
  tags,
  summary: "What a kind of problem means",
  description: "The page that the `type` of a problem leads to. Browsers get it in HTML (`Accept`).",
  params: {
    type: "object",
    properties: {
      name: {
        type: "string",
        description: "Name of the kind, as the last part of a problem's `type`.",
        examples: ["invalid-scene"],
      },
    },
    required: ["name"],
  },
  response: {
    200: {
      description: schemaOf("ProblemPage").description,
      headers: etagHeaders,
      content: { "application/json": { schema: { $ref: reference("ProblemPage") } } },
    },
    304: { type: "null", description: "You already have the answer.", headers: etagHeaders },
    ...problemResponses(["invalid_query", "not_found"]),
  },
};
