import type { Server } from "node:http";
import { BlockList, isIPv6, type Socket } from "node:net";
import { LRUCache } from "lru-cache";
import { keyOf, siteOf } from "../../limiting/client-key.js";

/** Whose a connection is, as far as limits are concerned. */
export interface Peer {
  client: string;
  /** All whom it stands in line with: its own address, or of IPv6 its /48. */
  site: string;
  /** Whether it carries the requests of many. */
  isProxy: boolean;
}

/** How many connections there may be. */
export interface ConnectionLimits {
  /** At a time. */
  connections: number;
  /** Of them, of one client. */
  connectionsPerAddress: number;
}

/** A site of IPv6 may have as many connections as so many of its clients. */
const clientsPerSite = 2;
const barred_ms = 10_000;
const mostBarred = 16_384;

/**
 * Counts connections and closes those beyond the limits as soon as they come: in all, so that the process has files left to
 * open, and of each client, so that none keeps the others out. Who stands behind a proxy is not known before a request
 * has come, so a trusted proxy may have as many as there are.
 */
export class Connections {
  readonly #ofClient = new Map<string, Set<Socket>>();
  readonly #ofSite = new Map<string, number>();
  /** Clients that offended lately, and until when none of their connections is taken. */
  readonly #barred = new LRUCache<string, true>({ max: mostBarred, ttl: barred_ms });
  readonly #proxies: BlockList;
  /** Known of each connection once: both take longer to find out than a light answer should. */
  readonly #known = new WeakMap<Socket, Peer>();
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
    // Node.js makes a parser for each connection, and much around it: not for one that is closed.
    const makeReady = server.listeners("connection");
    server.removeAllListeners("connection");
    server.on("connection", (socket: Socket) => {
      if (this.#take(socket)) for (const listener of makeReady) listener.call(server, socket);
    });
  }

  /** @returns whether it is taken */
  #take(socket: Socket): boolean {
    const { remoteAddress } = socket;
    // Reset already: nobody reads an answer, and what it has sent would be taken as from no address.
    if (remoteAddress === undefined) {
      socket.destroy();
      return false;
    }
    const { client, site, isProxy } = this.peerOf(socket);
    const sockets = this.#ofClient.get(client) ?? new Set();
    const ofSite = this.#ofSite.get(site) ?? 0;
    const { connections, connectionsPerAddress } = this.limits;
    const isTooMany =
      sockets.size >= connectionsPerAddress || ofSite >= clientsPerSite * connectionsPerAddress;
    if (this.#all >= connections || this.#barred.has(client) || (isTooMany && !isProxy)) {
      socket.destroy();
      return false;
    }
    this.#all += 1;
    sockets.add(socket);
    this.#ofClient.set(client, sockets);
    this.#ofSite.set(site, ofSite + 1);
    socket.once("close", () => this.#giveBack(client, site, socket));
    return true;
  }

  #giveBack(client: string, site: string, socket: Socket): void {
    this.#all -= 1;
    const left = (this.#ofSite.get(site) ?? 1) - 1;
    if (left === 0) this.#ofSite.delete(site);
    else this.#ofSite.set(site, left);
    const sockets = this.#ofClient.get(client);
    sockets?.delete(socket);
    if (sockets?.size === 0) this.#ofClient.delete(client);
  }

  /**
   * Closes a connection that attacks, with all others of its client, and takes none of its for some seconds: what they have
   * sent already is not even read. Of a trusted proxy only the one.
   * @returns whether its client was not barred already
   */
  bar(socket: Socket): boolean {
    const { client, isProxy } = this.peerOf(socket);
    socket.destroy();
    if (isProxy || this.#barred.has(client)) return false;
    this.#barred.set(client, true);
    for (const other of this.#ofClient.get(client) ?? []) other.destroy();
    return true;
  }

  /** Whose connection it is. */
  peerOf(socket: Socket): Peer {
    const known = this.#known.get(socket);
    if (known !== undefined) return known;
    const address = socket.remoteAddress ?? "";
    const client = keyOf(address) ?? address;
    const peer = { client, site: siteOf(client), isProxy: this.#isProxy(address) };
    this.#known.set(socket, peer);
    return peer;
  }

  #isProxy(address: string): boolean {
    if (address === "") return false;
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
