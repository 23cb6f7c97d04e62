// node:http and nothing else: reads the body, parses it, and serialises an answer that it has.
import { createServer } from "node:http";
import { operations } from "./operations.mjs";
import { requestsFor } from "./scenes.mjs";

const answers = new Map(
  operations.map((operation) => {
    const { bodies, path } = requestsFor(operation.name);
    const prepared = operation.prepare(JSON.parse(bodies[0]));
    const answered = prepared.status === "ready" ? prepared.compute() : prepared;
    if (answered.status !== "ok") throw new Error(`${path} has no answer`);
    return [path, JSON.parse(JSON.stringify(answered.body))];
  }),
);

const server = createServer((request, response) => {
  /** @type {Buffer[]} */
  const parts = [];
  request.on("data", (part) => parts.push(part));
  request.on("end", () => {
    const scene = JSON.parse(Buffer.concat(parts).toString());
    const body = JSON.stringify(scene === null ? undefined : answers.get(request.url ?? ""));
    response.writeHead(200, {
      "content-type": "application/json; charset=utf-8",
      "content-length": Buffer.byteLength(body),
    });
    response.end(body);
  });
});
server.listen(0, "127.0.0.1", () => {
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("no port");
  console.log(`http://127.0.0.1:${address.port}`);
});
process.on("SIGINT", () => process.exit(0));
