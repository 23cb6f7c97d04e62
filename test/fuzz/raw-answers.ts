// Answers as they come over a connection, one after the other.
import { type Answer, contentOf } from "./ask.js";

const endOfHead = "\r\n\r\n";

/** Every whole answer in what came; the rest of one that was cut off is left out. @throws Error for what is no answer */
export function answersIn(bytes: Buffer): Answer[] {
  const answers: Answer[] = [];
  for (let at = 0; at < bytes.length; ) {
    const end = bytes.indexOf(endOfHead, at);
    if (end < 0) break;
    const [first = "", ...lines] = bytes.toString("latin1", at, end).split("\r\n");
    const [, status] = /^HTTP\/1\.1 (\d{3}) /.exec(first) ?? [];
    if (status === undefined) throw new Error(`No answer begins with ${first.slice(0, 100)}`);
    const headers: Record<string, string> = Object.fromEntries(lines.map(named));
    const from = end + endOfHead.length;
    const content =
      headers["transfer-encoding"] === "chunked"
        ? chunked(bytes, from)
        : sized(bytes, from, Number(headers["content-length"] ?? 0));
    if (content === undefined) break;
    at = content.end;
    const isJson = headers["content-type"]?.includes("json") ?? false;
    const text = content.body.toString(isJson ? "utf8" : "latin1");
    answers.push({
      status: Number(status),
      headers,
      text,
      body: isJson ? contentOf(headers, text) : undefined,
    });
  }
  return answers;
}

function named(line: string): [string, string] {
  const colon = line.indexOf(":");
  return [line.slice(0, colon).toLowerCase(), line.slice(colon + 1).trim()];
}

interface Content {
  body: Buffer;
  end: number;
}

function sized(bytes: Buffer, from: number, length: number): Content | undefined {
  const end = from + length;
  return end > bytes.length ? undefined : { body: bytes.subarray(from, end), end };
}

/** RFC 9112, section 7.1, without trailers. */
function chunked(bytes: Buffer, from: number): Content | undefined {
  const parts: Buffer[] = [];
  for (let at = from; ; ) {
    const line = bytes.indexOf("\r\n", at);
    if (line < 0) return undefined;
    const length = Number.parseInt(bytes.toString("latin1", at, line), 16);
    const end = line + 2 + length + 2;
    if (end > bytes.length) return undefined;
    if (length === 0) return { body: Buffer.concat(parts), end };
    parts.push(bytes.subarray(line + 2, end - 2));
    at = end;
  }
}
