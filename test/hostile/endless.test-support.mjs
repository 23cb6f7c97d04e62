// An attacker as a process of its own that never ends: asks again as soon as it is answered, and connects again as soon as it
// is closed. Reads from its standard input where to send, from which address, what, and how.
import { connect } from "node:net";
import { text } from "node:stream/consumers";

/** @type {{ port: number, from: string, connections: number, ahead: number, part: string, resets: boolean }} */
const { port, from, connections, ahead, part, resets } = JSON.parse(await text(process.stdin));

function open() {
  const socket = connect({ port, host: "127.0.0.1", localAddress: from });
  let unanswered = 0;
  const ask = () => {
    const count = ahead - unanswered;
    unanswered = ahead;
    if (count > 0) socket.write(part.repeat(count), () => resets && socket.resetAndDestroy());
  };
  socket.setEncoding("latin1");
  socket.on("connect", ask);
  socket.on("data", (answers) => {
    unanswered -= answers.split("HTTP/1.1 ").length - 1;
    ask();
  });
  socket.on("error", () => {});
  socket.on("close", () => setImmediate(open));
}

for (let nth = 0; nth < connections; nth += 1) open();
