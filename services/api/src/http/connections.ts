import type { Server } from "node:http";
import { BlockList, isIPv6, type Socket } from "node:net";
import { keyOf } from "../limiting/client-key.js";

/** How many connections there may be. */
export interface ConnectionLimits {
  /** At a time. */
  connections: number;
  /** Of them, of one client. */
  connectionsPerAddress: number;
}

/**
 * Counts connections and closes those beyond the limits as soon as they come: in all, so that the process has files left to
 * open, and of each client, so that none keeps the others out. Who stands behind a proxy is not known before a request
 * has come, so a trusted proxy may have as many as there are.
 */
export class Connections {
  readonly #ofClient = new Map<string, number>();
  readonly #proxies: BlockList;
  #all = 0;

  /** @param trustedProxies addresses, networks, or `loopback` */
  constructor(
    private readonly limits: ConnectionLimits,
    trustedProxies: readonly string[],
  ) {
    this.#proxies = listOf(trustedProxies);
  }

  watch(server: Server): void {
    server.maxConnections = this.limits.connections;
    server.prependListener("connection", (socket: Socket) => this.#take(socket));
  }

  #take(socket: Socket): void {
    const { remoteAddress } = socket;
    // It has gone already.
    if (remoteAddress === undefined) return;
    const client = keyOf(remoteAddress) ?? remoteAddress;
    const count = (this.#ofClient.get(client) ?? 0) + 1;
    const { connections, connectionsPerAddress } = this.limits;
    if (this.#all >= connections || (count > connectionsPerAddress && !this.#isProxy(remoteAddress))) {
      socket.destroy();
      return;
    }
    this.#all += 1;
    this.#ofClient.set(client, count);
    socket.once("close", () => this.#giveBack(client));
  }

  #giveBack(client: string): void {
    this.#all -= 1;
    const left = (this.#ofClient.get(client) ?? 1) - 1;
    if (left === 0) this.#ofClient.delete(client);
    else this.#ofClient.set(client, left);
  }

  #isProxy(address: string): boolean {
    const plain = address.replace(/^::ffff:(?=\d+\.)/i, "");
    return this.#proxies.check(plain, isIPv6(plain) ? "ipv6" : "ipv4");
  }
}

function listOf(networks: readonly string[]): BlockList {
  const list = new BlockList();
  for (const network of networks.flatMap((text) => (text === "loopback" ? ["127.0.0.0/8", "::1"] : [text]))) {
    const [address = "", bits] = network.split("/");
    const family = isIPv6(address) ? "ipv6" : "ipv4";
    if (bits === undefined) list.addAddress(address, family);
    else list.addSubnet(address, Number(bits), family);
  }
  return list;
}
