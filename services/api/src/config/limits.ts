import { availableParallelism } from "node:os";

/** How much and how long a request may take, and how many there may be. */
export interface Limits {
  bodyBytes: number;
  /**
   * Lists and objects of a body that may stand in each other (RFC 8259, section 9, lets a reader say so): far deeper, whoever writes
   * them as text again runs out of stack.
   */
  bodyDepth: number;
  urlCharacters: number;
  /** Request line and headers together. */
  headerBytes: number;
  /** From the first byte of a request to the end of its headers. */
  headersTimeout_ms: number;
  /** From the first byte of a request to its last: a stalled body must not stay open. */
  requestTimeout_ms: number;
  /** How often the two above are looked after. */
  timeoutCheck_ms: number;
  /** Silence on a connection in the middle of a request or answer. */
  connectionTimeout_ms: number;
  /** Silence between requests; longer than load balancers wait, so that they close first. */
  keepAliveTimeout_ms: number;
  /** From the head of a request to its answer; longer than the request may take to arrive, whose timeout is told apart. */
  handlerTimeout_ms: number;
  /** From the answer's head to its last byte: whoever reads more slowly is cut off. */
  sendTimeout_ms: number;
  /** Connections at a time; more are closed at once. */
  connections: number;
  /** Of them, of one address (of IPv6, one /64) that is no trusted proxy; of an IPv6 /48 twice as many. */
  connectionsPerAddress: number;
  /** Requests of one connection that wait for their answers at a time; beyond it the connection is closed. */
  unansweredPerConnection: number;
  /** Of one address, or one IPv6 /48, that is no trusted proxy: more than its connections hold where none sends ahead. */
  unansweredPerAddress: number;
  /** What one client may ask for in a window, in units of cost (cost.ts); 0 for any amount. */
  costPerWindow: number;
  /** Requests of one client for the documentation in a window, where the other is not 0. */
  documentationPerWindow: number;
  window_s: number;
  /** Cores that heavy calculations may keep busy. */
  workers: number;
  /** How much politer the threads for them are than the one that answers, where the system knows: 0 to 19. */
  niceness: number;
  /** Heavy calculations of one client at a time. */
  heavyPerClient: number;
  /** Beyond those, how many of its own may wait for them. */
  waitingPerClient: number;
  /** Heavy calculations of all clients that may wait. */
  waiting: number;
  /** Of a batch, which holds many scenes. */
  batchBodyBytes: number;
  /** Batches of one client at a time. */
  batchesPerClient: number;
  /** Batches of all clients at a time. */
  batches: number;
  /** From the head of a batch to the end of its last line. */
  batchLongest_ms: number;
  /** How long a batch waits at the door for what it costs to read it, where its client's budget is spent. */
  batchDoor_ms: number;
  /** Silence of a batch before a line says that it goes on: shorter than any connection may be silent. */
  batchPause_ms: number;
  /** Answers that are kept to be given again, in bytes; 0 for none. */
  answerCacheBytes: number;
}

/** Keep the numbers in step with the explanations of the problems body_too_large, url_too_long and headers_too_large. */
export const defaultLimits: Limits = {
  bodyBytes: 256 * 1024,
  // A batch of the deepest scenes there are has eight.
  bodyDepth: 64,
  urlCharacters: 4096,
  headerBytes: 16 * 1024,
  headersTimeout_ms: 10_000,
  requestTimeout_ms: 15_000,
  timeoutCheck_ms: 1_000,
  connectionTimeout_ms: 30_000,
  keepAliveTimeout_ms: 72_000,
  handlerTimeout_ms: 20_000,
  sendTimeout_ms: 60_000,
  connections: 4096,
  // Forty browsers behind one address with the six connections that each opens at the most; sixteen such addresses at a time.
  connectionsPerAddress: 256,
  // Clients that send requests ahead keep to about ten; none is known that does so by default.
  unansweredPerConnection: 16,
  unansweredPerAddress: 512,
  costPerWindow: 30_000,
  documentationPerWindow: 600,
  window_s: 60,
  workers: availableParallelism(),
  // Light answers keep their times beside threads that are so much politer.
  niceness: 10,
  heavyPerClient: 4,
  // A page of a shop's site may ask for a dozen at once.
  waitingPerClient: 12,
  waiting: 256,
  batchBodyBytes: 4 * 1024 * 1024,
  batchesPerClient: 4,
  // Each may hold its body for ten minutes.
  batches: 32,
  batchLongest_ms: 600_000,
  batchDoor_ms: 5_000,
  batchPause_ms: 10_000,
  answerCacheBytes: 16 * 1024 * 1024,
};
