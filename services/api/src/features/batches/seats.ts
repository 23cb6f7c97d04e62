import type { FastifyReply, FastifyRequest } from "fastify";
import { sendRefusal } from "../../http/sent/send-problem.js";
import { siteOf } from "../../limiting/client-key.js";

/** How many batches there may be at a time, of one client and of all: each holds its scenes until its last line. */
export class Seats {
  readonly #taken = new Map<string, number>();
  #all = 0;

  constructor(private readonly limits: { batchesPerClient: number; batches: number }) {}

  /** @param wait_s until it may be worth to try again */
  take(request: FastifyRequest, reply: FastifyReply, wait_s: number): boolean {
    const client = siteOf(request.client);
    const own = this.#taken.get(client) ?? 0;
    const isFull = own >= this.limits.batchesPerClient;
    if (isFull || this.#all >= this.limits.batches) {
      const because = isFull ? "client_has_too_much_waiting" : "service_has_too_much_waiting";
      sendRefusal(reply.header("retry-after", String(wait_s)), { because, wait_s });
      return false;
    }
    this.#taken.set(client, own + 1);
    this.#all += 1;
    reply.raw.once("close", () => {
      const left = (this.#taken.get(client) ?? 1) - 1;
      if (left > 0) this.#taken.set(client, left);
      else this.#taken.delete(client);
      this.#all -= 1;
    });
    return true;
  }
}
