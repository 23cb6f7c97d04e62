import { once } from "node:events";
import { createServer, type IncomingMessage } from "node:http";
import { type AddressInfo, connect, type Socket } from "node:net";
import { afterEach, describe, expect, it } from "vitest";
import { eventually } from "../../eventually.test-support.js";
import { boundBodies, mostPieces } from "./bodies.js";
import { EndingMessage } from "./ending-message.js";

const closing: (() => unknown)[] = [];
afterEach(async () => {
  for (const close of closing.splice(0).reverse()) await close();
});

/** A service that reads bodies, but none at `/unread`, which is answered at once. */
async function start({ bytes = 100_000, isProxy = false } = {}) {
  const read: { chunks: number; text: string }[] = [];
  const offenders: Socket[] = [];
  const server = createServer(
    { IncomingMessage: EndingMessage },
    boundBodies(
      (request: IncomingMessage, response) => {
        if (request.url === "/unread") {
          response.end("answered");
          return;
        }
        const chunks: Buffer[] = [];
        request.on("data", (chunk) => chunks.push(chunk));
        request.on("end", () => {
          read.push({ chunks: chunks.length, text: Buffer.concat(chunks).toString() });
          response.end("answered");
        });
      },
      {
        bytes,
        peerOf: () => ({ client: "a", site: "a", isProxy }),
        offends: (socket) => {
          socket.destroy();
          offenders.push(socket);
        },
      },
    ),
  ).listen(0, "127.0.0.1");
  await once(server, "listening");
  closing.push(() => server.close());
  const { port } = server.address() as AddressInfo;
  const send = async (target: string, framing: string, ...parts: string[]) => {
    const socket = connect(port, "127.0.0.1");
    socket.setNoDelay(true);
    closing.push(() => socket.destroy());
    const told = { text: "", closed: false };
    socket.on("data", (part) => {
      told.text += part;
    });
    socket.on("error", () => {});
    socket.on("close", () => {
      told.closed = true;
    });
    await once(socket, "connect");
    socket.write(`POST ${target} HTTP/1.1\r\nHost: a\r\n${framing}\r\n\r\n`);
    for (const part of parts) socket.write(part);
    return { socket, told };
  };
  return { read, offenders, send };
}

const chunked = "Transfer-Encoding: chunked";
const ofOne = (count: number) => "1\r\na\r\n".repeat(count);
const end = "0\r\n\r\n";

describe("a body", () => {
  it.each([
    ["in one piece", "Content-Length: 5", ["hello"], "hello"],
    ["in chunks", chunked, ["2\r\nhe\r\n", "3\r\nllo\r\n", end], "hello"],
    ["in as many chunks as may be", chunked, [ofOne(mostPieces), end], "a".repeat(mostPieces)],
    [
      "in small pieces and large ones",
      chunked,
      [ofOne(3000), `2710\r\n${"b".repeat(10_000)}\r\n`, ofOne(1000), end],
      `${"a".repeat(3000)}${"b".repeat(10_000)}${"a".repeat(1000)}`,
    ],
  ])("%s is read whole, in few pieces", async (_, framing, parts, text) => {
    const { read, send, offenders } = await start();
    const { told } = await send("/", framing, ...parts);
    await eventually(() => expect(told.text).toContain("answered"));
    expect(read.map((body) => body.text)).toEqual([text]);
    expect(read[0]?.chunks).toBeLessThan(10);
    expect(offenders).toEqual([]);
  });

  it("in more pieces than any client sends is an offence", async () => {
    const { read, send, offenders } = await start();
    const { told } = await send("/", chunked, ofOne(mostPieces + 1), end);
    await eventually(() => expect(told.closed).toBe(true));
    expect(offenders).toHaveLength(1);
    expect(read).toEqual([]);
  });

  it.each([
    [false, 1],
    [true, 0],
  ])("is one among others of its address, unless that is a proxy (%s)", async (isProxy, offences) => {
    const { send, offenders, read } = await start({ isProxy });
    for (let nth = 0; nth < 3; nth += 1) await send("/", chunked, ofOne(mostPieces - 1), end);
    await eventually(() => expect(offenders.length + read.length).toBe(3));
    expect(offenders).toHaveLength(offences);
  });

  it("that nobody reads is bounded all the same", async () => {
    const { send, offenders } = await start();
    const many = await send("/unread", chunked, ofOne(mostPieces + 1));
    await eventually(() => expect(many.told.closed).toBe(true));
    expect(offenders).toHaveLength(1);
  });

  it("that nobody reads may be no longer than one that is read", async () => {
    const { send } = await start({ bytes: 1000 });
    const long = await send("/unread", "Content-Length: 1000000");
    await eventually(() => expect(long.told.text).toContain("answered"));
    long.socket.write("a".repeat(900));
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(long.told.closed).toBe(false);
    long.socket.write("a".repeat(200));
    await eventually(() => expect(long.told.closed).toBe(true));
  });

  it("that was left unread lets its connection be used again", async () => {
    const { send, read } = await start();
    const { socket, told } = await send("/unread", "Content-Length: 10", "01234");
    await eventually(() => expect(told.text).toContain("answered"));
    socket.write("56789POST / HTTP/1.1\r\nHost: a\r\nContent-Length: 2\r\n\r\nhi");
    await eventually(() => expect(read.map(({ text }) => text)).toEqual(["hi"]));
  });
});
