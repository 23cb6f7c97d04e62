import { type FastifyReply, type FastifyRequest, LogController } from "fastify";
import type { LineShare } from "./line-share.js";

/**
 * One line a request, when it is done: method, route, status and time. Neither bodies nor query strings nor headers,
 * which hold what callers send; of an unknown path not even the path. None for a client that has filled its share.
 */
export class OneLineLog extends LogController {
  constructor(private readonly share: LineShare) {
    super({ requestIdLogLabel: "request_id" });
  }

  override incomingRequest(): void {}

  override routeNotFound(): void {}

  override requestCompleted(
    error: Error | null | undefined,
    request: FastifyRequest,
    reply: FastifyReply,
  ): void {
    const line = {
      method: request.method,
      route: request.routeOptions.url ?? "none",
      status: reply.statusCode,
      ms: Math.round(reply.elapsedTime * 10) / 10,
    };
    // Only of what runs behind an answer, such as counting it: what fails before has a line of its own.
    if (error) request.log.error({ ...line, err: error }, "request failed after its answer");
    else if (this.share.take(request.client)) request.log.info(line, "request");
  }
}
