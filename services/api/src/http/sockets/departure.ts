import type { Server } from "node:http";
import { Server as Listener, type Socket } from "node:net";
import type { FastifyInstance } from "fastify";

/** Before the service takes no more connections, so long do answers leave open those there are: nobody has to come again. */
const gather_ms = 100;
/** A connection on which nothing was asked for so long may be closed: whoever uses it one after the other has asked by then. */
const quiet_ms = 500;
/** Somebody always asks; after so long it does not matter. */
const mostQuiet_ms = 3000;
/** How long to look for a moment in which nobody comes. */
const mostComing_ms = 1000;
/** In a longer turn of the event loop somebody may come after it has looked. */
const longestTurn_ms = 1;
const look_ms = 20;

/**
 * Ends connections so that no request is lost. Node.js would close those that are idle at once, with a request that has
 * arrived but was not read yet, and the listener, with connections that callers hold to be made: both are reset then, and
 * their callers do not know whether what they sent was done. Here the listener goes first, in a moment in which nobody
 * comes; then whatever comes on the connections that are left is answered, each with the last answer of its connection;
 * and only what has been silent is closed.
 */
export class Departure {
  readonly #servers: Server[] = [];
  readonly #sockets = new Set<Socket>();
  #arrivals = 0;

  watch(server: Server): void {
    this.#servers.push(server);
    server.on("request", () => {
      this.#arrivals += 1;
    });
    server.on("connection", (socket) => {
      this.#arrivals += 1;
      this.#sockets.add(socket);
      socket.once("close", () => this.#sockets.delete(socket));
    });
  }

  /** Resolves once no connection is left. The application must still answer. */
  async leave(app: FastifyInstance): Promise<void> {
    if (this.#sockets.size > 0) {
      app.endConnections(false);
      await pause(gather_ms);
    }
    await this.#whileNobodyComes(mostComing_ms);
    // The listener alone: an HTTP server's own way to close closes idle connections as well.
    for (const server of this.#servers) Listener.prototype.close.call(server);
    app.endConnections(true);
    await this.#quiet();
    await this.#whileNobodyComes(mostComing_ms);
    for (const server of this.#servers) server.closeIdleConnections();
    // Idle, to Node.js, is only what has asked once.
    for (const socket of this.#sockets) if (socket.bytesRead === 0) socket.destroy();
    while (this.#sockets.size > 0) await pause(look_ms);
  }

  /** Resolves right after a short turn of the event loop that read whatever had come, and nothing had. */
  async #whileNobodyComes(most_ms: number): Promise<void> {
    const end_ms = performance.now() + most_ms;
    for (let before = -1; ; before = this.#arrivals) {
      const began_ms = performance.now();
      await new Promise((resolve) => setImmediate(resolve));
      const now_ms = performance.now();
      if (now_ms > end_ms || (now_ms - began_ms < longestTurn_ms && this.#arrivals === before)) return;
    }
  }

  /** Resolves once nothing has come for a while, or nobody is left. */
  async #quiet(): Promise<void> {
    const start_ms = performance.now();
    let before = this.#arrivals;
    let since_ms = start_ms;
    while (this.#sockets.size > 0) {
      const now_ms = performance.now();
      if (this.#arrivals !== before) [before, since_ms] = [this.#arrivals, now_ms];
      if (now_ms - since_ms > quiet_ms || now_ms - start_ms > mostQuiet_ms) return;
      await pause(look_ms);
    }
  }
}

const pause = (time_ms: number) => new Promise((resolve) => setTimeout(resolve, time_ms));
