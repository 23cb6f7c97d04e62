import { batchExamples, mostBatchItems, mostVaried, reference } from "@sunfathom/contract";
import { fieldsParameter } from "../../http/asked/fields-asked.js";
import { acceptLanguage } from "../../openapi/accept-language.js";
import { commonHeaders, type Header, languageHeaders, problemResponses } from "../../openapi/responses.js";

const notKept: Record<string, Header> = {
  "Cache-Control": { type: "string", description: "Not to be cached." },
};

/** What the description says of many scenes in one call. */
export const batchByPost = {
  operationId: "runBatch",
  tags: ["Batches"],
  summary: "Many scenes in one call",
  description: `Up to ${mostBatchItems} scenes, each with its calculation, or one scene with what differs (\`vary\`), up to ${mostVaried} of them. The answer is a stream of JSON lines: one object a line, each an answer or a problem with its \`id\`, as they are ready and in any order. A scene that is wrong has a problem in its own line and keeps no other from its answer; only what is wrong with the batch itself refuses it. Each answer is that of the operation alone, to the byte. Your budget paces a batch and does not refuse it: where it is spent, lines come as it fills up again, and \`pause\` keeps the connection open. The last line is the \`summary\`; without it the stream was cut. A batch takes ten minutes at most, and a body of 4 MB; a scene of it has 256 kB at most, as alone. Hang up, and the work stops.`,
  "x-safe": true,
  querystring: {
    type: "object",
    properties: {
      [fieldsParameter]: {
        type: "string",
        description:
          "Fields of each answer that you want, with commas between them, as the calculations take them: every calculation of the batch must have them. Or `brief`.",
        examples: ["brief"],
      },
    },
  },
  headers: { type: "object", properties: { "Accept-Language": acceptLanguage } },
  body: {
    content: {
      "application/json": {
        schema: { allOf: [{ $ref: reference("BatchRequest") }], "x-examples": batchExamples },
      },
    },
  },
  response: {
    200: {
      description: "Lines, each one of these, with the summary last.",
      headers: { ...commonHeaders, ...notKept, ...languageHeaders },
      content: { "application/jsonl": { schema: { $ref: reference("BatchLine") } } },
    },
    ...problemResponses([
      "invalid_request",
      "invalid_query",
      "malformed_json",
      "model_version_mismatch",
      "body_too_large",
      "unsupported_media_type",
    ]),
  },
};
