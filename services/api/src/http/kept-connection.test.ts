import { once } from "node:events";
import { connect } from "node:net";
import { expect, it } from "vitest";
import { buildApp } from "../build-app.test-support.js";

// RFC 9112, section 9.3 and 9.6: a connection is kept unless an answer says that it closes; one of HTTP/1.0 where it says that it does not.
it.each([
  ["HTTP/1.1", "", undefined],
  ["HTTP/1.1", "connection: close\r\n", "close"],
  ["HTTP/1.0", "connection: keep-alive\r\n", "keep-alive"],
])("says of its connection what it has to, asked in %s with %j", async (version, line, said) => {
  const app = await buildApp();
  const { port } = new URL(await app.listen({ port: 0 }));
  const socket = connect(Number(port), "127.0.0.1");
  const ask = `GET /health/live ${version}\r\nhost: a\r\n${line}\r\n`;
  socket.write(ask);
  const [first] = await once(socket, "data");
  expect(/^connection: (.+)\r$/im.exec(String(first))?.[1]).toBe(said);
  if (said === "close") await once(socket, "close");
  else {
    socket.write(ask);
    const [second] = await once(socket, "data");
    expect(String(second)).toContain("200 OK");
    socket.destroy();
  }
  await app.close();
});
