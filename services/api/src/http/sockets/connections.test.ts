import { once } from "node:events";
import { createServer, type Server } from "node:http";
import { type AddressInfo, connect, createServer as createNetServer, Socket } from "node:net";
import { afterEach, expect, it } from "vitest";
import { eventually } from "../../eventually.test-support.js";
import { Connections } from "./connections.js";

const closing: (() => void)[] = [];
afterEach(() => {
  for (const close of closing.splice(0)) close();
});

async function start(connections: number, connectionsPerAddress: number, proxies: string[] = []) {
  const counter = new Connections({ connections, connectionsPerAddress }, proxies);
  const servers = [createServer(), createServer()];
  for (const server of servers) {
    counter.watch(server);
    server.listen(0, "127.0.0.1");
    await once(server, "listening");
    closing.push(() => server.close());
  }
  /** Opens `count` connections, of which `left` stay. */
  const opens = async (count: number, left: number, localAddress: string, nth = 0): Promise<Socket[]> => {
    const { port } = (servers[nth] ?? createServer()).address() as AddressInfo;
    const sockets = Array.from({ length: count }, () => connect({ port, host: "127.0.0.1", localAddress }));
    for (const socket of sockets) {
      socket.on("error", () => {});
      socket.resume();
      closing.push(() => socket.destroy());
    }
    const staying = () => sockets.filter(({ closed }) => !closed);
    await eventually(() => expect(staying()).toHaveLength(left));
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(staying()).toHaveLength(left);
    return staying();
  };
  return { opens };
}

it("of one address are as many as its limit, whatever others have", async () => {
  const { opens } = await start(100, 3);
  await opens(5, 3, "127.0.0.2");
  await opens(5, 3, "127.0.0.3");
});

it("may come again once others of the address have ended", async () => {
  const { opens } = await start(100, 3);
  const [first] = await opens(3, 3, "127.0.0.2");
  await opens(1, 0, "127.0.0.2");
  first?.destroy();
  await new Promise((resolve) => setTimeout(resolve, 200));
  await opens(1, 1, "127.0.0.2");
  await opens(1, 0, "127.0.0.2");
});

it("are counted over all servers of an application, in all and of each address", async () => {
  const { opens } = await start(5, 3);
  await opens(2, 2, "127.0.0.2", 0);
  await opens(2, 1, "127.0.0.2", 1);
  await opens(3, 2, "127.0.0.3", 1);
});

it("of an IPv6 site are twice as many as of one of its clients, and given back", () => {
  const counter = new Connections({ connections: 100, connectionsPerAddress: 3 }, []);
  const server = createNetServer() as Server;
  counter.watch(server);
  const come = (remoteAddress: string) => {
    const socket = Object.assign(new Socket(), {});
    Object.defineProperty(socket, "remoteAddress", { value: remoteAddress });
    server.listeners("connection")[0]?.call(server, socket);
    return socket;
  };
  const networks = Array.from({ length: 8 }, (_, n) => come(`2001:db8:1:${n}::1`));
  expect(networks.map(({ destroyed }) => destroyed)).toEqual([...Array(6).fill(false), true, true]);
  expect(come("2001:db8:2::1").destroyed).toBe(false);
  networks[0]?.emit("close");
  expect(come("2001:db8:1:9::1").destroyed).toBe(false);
  expect(come("2001:db8:1:a::1").destroyed).toBe(true);
});

it.each([["127.0.0.2"], ["127.0.0.0/30"], ["loopback"]])(
  "of a trusted proxy, %s, are as many as there may be in all",
  async (proxy) => {
    const { opens } = await start(8, 3, [proxy]);
    await opens(10, 8, "127.0.0.2");
  },
);
