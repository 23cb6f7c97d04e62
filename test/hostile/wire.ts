// Plain sockets to a service on this machine, for requests that no client would send.
import { connect, type Socket } from "node:net";
import type { FastifyInstance } from "fastify";

export function portOf(app: FastifyInstance): number {
  const address = app.server.address();
  if (address === null || typeof address === "string") throw new Error("The service has no port.");
  return address.port;
}

export interface RawAnswer {
  /** All that came, one answer after the other. */
  text: string;
  statuses: number[];
  /** From the connection to its end. */
  time_ms: number;
}

/** Sends `parts` as they stand and reads until the connection ends. @throws Error when it does not end in `limit_ms` */
export function raw(port: number, parts: (string | Buffer)[], limit_ms = 5000): Promise<RawAnswer> {
  const started = performance.now();
  return new Promise((resolve, reject) => {
    let text = "";
    const socket: Socket = connect(port, "127.0.0.1", () => {
      for (const part of parts) socket.write(part);
    });
    const timer = setTimeout(() => {
      socket.destroy();
      reject(new Error(`The connection is open after ${limit_ms} ms; so far: ${text.slice(0, 200)}`));
    }, limit_ms);
    socket.setEncoding("latin1");
    socket.on("data", (part) => {
      text += part;
    });
    // A reset after the answer is an end like another.
    socket.on("error", () => {});
    socket.on("close", () => {
      clearTimeout(timer);
      const statuses = [...text.matchAll(/^HTTP\/1\.1 (\d{3})/gm)].map(([, status]) => Number(status));
      resolve({ text, statuses, time_ms: performance.now() - started });
    });
  });
}

/** Head of a POST that closes its connection. */
export function head(...lines: string[]): string {
  return ["POST /v1/attenuation HTTP/1.1", "Host: a", "Connection: close", ...lines, "", ""].join("\r\n");
}
