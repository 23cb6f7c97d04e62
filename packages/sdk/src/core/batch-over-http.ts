import type { BatchLine } from "../generated/types.js";
import { whole } from "./attempt.js";
import { BatchEndedError, type BatchResults, type RunBatch } from "./batches.js";
import { ConnectionError } from "./errors.js";
import { isProblem, problemError } from "./problem.js";
import { contentOf, errorOf } from "./reply.js";
import type { Settings } from "./settings.js";
import { outgoingCall } from "./transport.js";

const operation = {
  method: "POST",
  path: "/v1/batches",
  versioned: true,
  selects: true,
  file: "application/jsonl",
};

/** Carries batches out over HTTP. What fails before the first line is asked for again, as other calls are. */
export const batchesOverHttp = (settings: Settings): RunBatch =>
  async function* (batch, options = {}): BatchResults<never> {
    const { reply } = await outgoingCall(settings, operation, { body: batch }, options).ask(
      async (opened) => {
        if (opened.response.ok) return opened;
        throw errorOf(await whole(opened, false));
      },
    );
    const { guard, rewind, end } = reply;
    const { status, headers, body } = reply.response;
    const reader = body?.getReader();
    const decoder = new TextDecoder();
    let rest = "";
    try {
      for (;;) {
        const piece = await guard(async () => reader?.read());
        rewind();
        if (!piece?.value) throw new ConnectionError("The batch was cut.");
        const texts = (rest + decoder.decode(piece.value, { stream: true })).split("\n");
        rest = texts.pop() ?? "";
        for (const text of texts) {
          const { kind, problem, summary, ...line } = contentOf(
            { status, headers, text },
            undefined,
          ) as BatchLine;
          if (kind === "answer") yield line as never;
          if (isProblem(problem))
            yield { ...line, problem: problemError(problem, responseOf(problem)) } as never;
          if (summary?.left) throw new BatchEndedError(summary);
          if (summary) return summary;
        }
      }
    } finally {
      end();
    }
  };

/** What a call for the scene alone would have said beside its body. */
const responseOf = ({
  status,
  request_id: requestId,
}: object & { status?: number; request_id?: string }) => ({
  status: status ?? 0,
  requestId,
});
