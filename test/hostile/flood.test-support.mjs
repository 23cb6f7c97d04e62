// An attacker as a process of its own: what it has to read must not hold up who measures. Reads from its standard input where
// to send, from which address, and what on each connection.
import { connect } from "node:net";
import { text } from "node:stream/consumers";

/** @type {{ port: number, from: string, parts: string[] }} */
const { port, from, parts } = JSON.parse(await text(process.stdin));
const sockets = await Promise.all(
  parts.map(
    () =>
      new Promise((resolve) => {
        const socket = connect({ port, host: "127.0.0.1", localAddress: from }, () => resolve(socket));
        socket.on("error", () => {}).resume();
      }),
  ),
);
for (const [nth, part] of parts.entries()) sockets[nth].write(part);
