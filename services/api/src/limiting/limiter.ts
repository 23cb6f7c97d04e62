import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import type { Limits } from "../config/limits.js";
import { isOperational } from "../http/asked/operational.js";
import { pathOf } from "../http/asked/path-of.js";
import { sendRefusal } from "../http/sent/send-problem.js";
import { Budget, type Taken } from "./budget.js";
import { clientKeyOf, siteOf } from "./client-key.js";

/** Budgets that a route can count against. Each client has one of each. */
export type PolicyName = "default" | "documentation";

declare module "fastify" {
  interface FastifyContextConfig {
    /** The budget that requests for the route count against: `default` when left out. */
    budget?: PolicyName;
    /** How long a request for the route waits, at the most, until its client's budget has what reading it costs, ms. */
    waitsForBudget_ms?: number;
  }
  interface FastifyRequest {
    /** Who asks, as far as limits are concerned. */
    client: string;
    /** What was taken for the request before its route was reached. */
    taken: Taken | undefined;
  }
}

/** The clients of one IPv6 site may ask for as much as so many together, though it has thousands of networks. */
const clientsPerSite = 4;

/** What a request costs whatever it asks for: reading it and answering it. */
const requestCost = 1;
/** Reading a body costs one unit for each so many bytes: parsing it, and checking what it says. And so does a head, whose lists are taken apart. */
export const bytesPerUnit = 2048;

/**
 * Counts what each client asks for, by cost, and refuses what goes beyond its budget.
 * @see https://datatracker.ietf.org/doc/draft-ietf-httpapi-ratelimit-headers/ (version 10: `RateLimit-Policy`, `RateLimit`)
 */
export class Limiter {
  readonly #budgets: Readonly<Record<PolicyName, Budget>>;
  /** Of sites that hold many clients. */
  readonly #sites: Readonly<Record<PolicyName, Budget>>;
  readonly #bodyBytes: number;
  readonly #isOn: boolean;

  /** @param now_ms a clock that only goes forward */
  constructor(
    { costPerWindow, documentationPerWindow, window_s, bodyBytes }: Limits,
    now_ms = () => performance.now(),
  ) {
    this.#isOn = costPerWindow > 0;
    this.#bodyBytes = bodyBytes;
    const budgetsOf = (clients: number) => ({
      default: new Budget({ cost: costPerWindow * clients, window_s }, now_ms),
      documentation: new Budget({ cost: documentationPerWindow * clients, window_s }, now_ms),
    });
    this.#budgets = budgetsOf(1);
    this.#sites = budgetsOf(clientsPerSite);
  }

  /** Counts a request that has come in. Whether it may go on, `refuse` says. */
  count(request: FastifyRequest, reply: FastifyReply): void {
    request.client = clientKeyOf(request);
    const head = costOfHeaders(request);
    // Whoever watches the process sends no long head: of others it would be read for nothing, without end.
    const isFree = head === 0 && isOperational(pathOf(request.raw.url ?? ""));
    if (this.#isOn && !isFree)
      request.taken = this.#take(request, reply, requestCost + head + this.#costOfBody(request));
  }

  /** Answers a request for which the budget was too small. @returns whether it was */
  refuse(request: FastifyRequest, reply: FastifyReply): boolean {
    const { taken } = request;
    if (taken === undefined || taken.isTaken) return false;
    this.#sayRefused(request, reply, taken.wait_s);
    return true;
  }

  /**
   * Takes what a request costs beyond what was taken when it came in, once that is known.
   * @returns false where the budget is too small, and the request is answered with that
   */
  charge(request: FastifyRequest, reply: FastifyReply, cost: number): boolean {
    if (request.taken === undefined || cost <= requestCost) return true;
    const taken = this.#take(request, reply, cost - requestCost);
    if (!taken.isTaken) this.#sayRefused(request, reply, taken.wait_s);
    return taken.isTaken;
  }

  /** Takes what a request turned out to have cost already, whether or not the budget has as much. */
  owe(request: FastifyRequest, cost: number): void {
    if (request.taken === undefined) return;
    const { name, budget } = this.#budgetOf(request);
    const site = siteOf(request.client);
    budget.owe(request.client, cost);
    if (site !== request.client) this.#sites[name].owe(site, cost);
  }

  /**
   * Takes what goes on costing while a request is answered.
   * @returns in how many seconds to try again, where the budget is too small; 0 where it was taken
   */
  pay(request: FastifyRequest, cost: number): number {
    return request.taken === undefined || cost <= 0 ? 0 : this.#taken(request, cost).wait_s;
  }

  /** Takes what a request costs that found the budget too small when it came in. @returns as `pay` does */
  takeAgain(request: FastifyRequest, reply: FastifyReply): number {
    request.taken = this.#take(request, reply, requestCost + this.#costOfBody(request));
    return request.taken.wait_s;
  }

  /** Who does not say beforehand how long a body is pays for the longest. */
  #costOfBody({ headers, routeOptions }: FastifyRequest): number {
    const length = headers["content-length"];
    const isChunked = headers["transfer-encoding"] !== undefined;
    const most = routeOptions.bodyLimit ?? this.#bodyBytes;
    const bytes = isChunked ? most : Math.min(Number(length ?? 0) || 0, most);
    return Math.floor(bytes / bytesPerUnit);
  }

  #taken(request: FastifyRequest, cost: number): Taken {
    const { name, budget } = this.#budgetOf(request);
    const own = budget.take(request.client, cost);
    return own.isTaken ? this.#takeOfSite(request, name, own, Math.min(cost, budget.quota.cost)) : own;
  }

  #take(request: FastifyRequest, reply: FastifyReply, cost: number): Taken {
    const { name, budget } = this.#budgetOf(request);
    const taken = this.#taken(request, cost);
    reply
      .header("ratelimit-policy", `"${name}";q=${budget.quota.cost};w=${budget.quota.window_s}`)
      .header("ratelimit", `"${name}";r=${taken.left};t=${taken.whole_s}`);
    return taken;
  }

  /** What a client may take its site must have left, too. @returns what became of it, as the client is told */
  #takeOfSite({ client }: FastifyRequest, name: PolicyName, own: Taken, cost: number): Taken {
    const site = siteOf(client);
    if (site === client) return own;
    const { isTaken, left, wait_s } = this.#sites[name].take(site, cost);
    return { ...own, isTaken, left: Math.min(own.left, left), wait_s };
  }

  #sayRefused(request: FastifyRequest, reply: FastifyReply, wait_s: number): void {
    const { quota } = this.#budgetOf(request).budget;
    const { cost, window_s } = quota;
    const detail = { because: "budget_spent", cost, window_s, wait_s } as const;
    sendRefusal(reply.header("retry-after", String(wait_s)), detail);
  }

  #budgetOf(request: FastifyRequest): { name: PolicyName; budget: Budget } {
    const name = request.routeOptions.config?.budget ?? "default";
    return { name, budget: this.#budgets[name] };
  }
}

/** Those that browsers and proxies send cost nothing of their own. */
function costOfHeaders({ raw: { rawHeaders } }: FastifyRequest): number {
  return Math.floor(rawHeaders.reduce((sum, { length }) => sum + length, 0) / bytesPerUnit);
}

/** Counts every request before anything else can answer it, those that nothing takes included. */
export function countRequests(app: FastifyInstance, limiter: Limiter): void {
  app.decorateRequest("client", "");
  app.decorateRequest("taken", undefined);
  app.addHook("onRequest", (request, reply, done) => {
    limiter.count(request, reply);
    done();
  });
}

/** Refuses those beyond the budget. Apart from counting, so that a refusal has every header that an answer has. */
export function refuseBeyondBudget(app: FastifyInstance, limiter: Limiter): void {
  app.addHook("onRequest", (request, reply, done) => {
    const { waitsForBudget_ms = 0 } = request.routeOptions.config;
    const end_ms = performance.now() + waitsForBudget_ms;
    const enter = (wait_s: number) => {
      if (reply.raw.destroyed || reply.sent) return;
      const wait_ms = wait_s * 1000;
      if (wait_s > 0 && performance.now() + wait_ms <= end_ms)
        setTimeout(() => enter(limiter.takeAgain(request, reply)), wait_ms);
      else if (!limiter.refuse(request, reply)) done();
    };
    enter(request.taken?.wait_s ?? 0);
  });
}
