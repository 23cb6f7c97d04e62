// Connections that send many requests ahead and end in every way that a connection can.
import { connect } from "node:net";
import fc from "fast-check";

/** How a caller ends its connection: not before the answers, for sending alone, in order, or not. */
const endings = ["waits", "half-closes", "leaves", "resets"] as const;

export interface Conversation {
  /** How far into all requests together it is sent, from 0 to 1. */
  cut: number;
  /** Into how many packets. */
  pieces: number;
  ending: (typeof endings)[number];
  /** From the last packet to the end. */
  after_ms: number;
}

export const conversations: fc.Arbitrary<Conversation> = fc
  .record({
    cut: fc.oneof(fc.constant(1), fc.double({ min: 0, max: 1, noNaN: true })),
    pieces: fc.integer({ min: 1, max: 5 }),
    ending: fc.constantFrom(...endings),
    after_ms: fc.constantFrom(0, 0, 2, 10, 40),
  })
  // What is not sent whole and waits is refused in ten seconds or more, as other tests see.
  .map((conversation) => (conversation.ending === "waits" ? { ...conversation, cut: 1 } : conversation));

/**
 * Sends so much of `bytes` from an address of this machine, and ends as told.
 * @returns all that came
 */
export function converse(
  { port, localAddress }: { port: number; localAddress: string },
  bytes: Buffer,
  { cut, pieces, ending, after_ms }: Conversation,
): Promise<Buffer> {
  const sent = bytes.subarray(0, Math.max(1, Math.round(cut * bytes.length)));
  const size = Math.ceil(sent.length / pieces);
  return new Promise((resolve) => {
    const came: Buffer[] = [];
    const socket = connect({ port, host: "127.0.0.1", localAddress, noDelay: true }, async () => {
      for (let at = 0; at < sent.length && !socket.destroyed; at += size) {
        socket.write(sent.subarray(at, at + size));
        // Not with the next one in a packet.
        await new Promise((resume) => setImmediate(resume));
      }
      if (ending === "waits") return;
      setTimeout(() => {
        if (ending === "half-closes") socket.end();
        else if (ending === "leaves") socket.destroy();
        else socket.resetAndDestroy();
      }, after_ms);
    });
    socket.on("data", (part) => came.push(part));
    // A reset is an end like another.
    socket.on("error", () => {});
    socket.on("close", () => resolve(Buffer.concat(came)));
  });
}
