import { constants, createGzip } from "node:zlib";

/** Lines in gzip (RFC 1952), each to be read as soon as it has come: what is held back for a better ratio would wait for the next. */
export async function* gzipped(lines: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array, void> {
  const gzip = createGzip({ level: 1 });
  let packed: Uint8Array[] = [];
  gzip.on("data", (piece: Uint8Array) => packed.push(piece));
  const taken = () => {
    const pieces = packed;
    packed = [];
    return Buffer.concat(pieces);
  };
  try {
    for await (const line of lines) {
      gzip.write(line);
      await new Promise<void>((resolve) => gzip.flush(constants.Z_SYNC_FLUSH, resolve));
      yield taken();
    }
    const ended = new Promise((resolve) => gzip.once("end", resolve));
    gzip.end();
    await ended;
    yield taken();
  } finally {
    gzip.destroy();
  }
}
