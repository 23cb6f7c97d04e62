import type { Problem } from "@sunfathom/contract";
import { type Item, type Packing, type PaperRequest, QuizProblem } from "@sunfathom/quiz";
import type { FastifyReply, FastifyRequest } from "fastify";
import { sendProblem, sendRefusal } from "../http/sent/send-problem.js";
import { siteOf } from "../limiting/client-key.js";
import type { Limiter } from "../limiting/limiter.js";
import { costOfErrors, costOfForm, costOfPaper } from "./cost.js";
import { Abandoned, type ComputePool, Crowded, ThreadDied } from "./pool.js";
import type { Found, Outcome, Task } from "./tasks.js";

type PaperTask = Extract<Task, { kind: "paper" | "paper_again" | "package" }>;

/** Up to this cost work is done at once, on the thread that answers: some five milliseconds at most. */
const lightCost = 10;

/** The request has its answer: why there is nothing else for it. */
export class AlreadyAnswered extends Error {}

/** Where work is done, and who may have it done. */
export class Computing {
  /** @param longest_ms from the head of a request to the outcome of what it asks threads for: nobody is kept longer */
  constructor(
    private readonly pool: ComputePool,
    private readonly limiter: Limiter,
    private readonly longest_ms: number,
  ) {}

  /**
   * Has a request's work done: at once where it is light, on a thread where it is heavy.
   * @param here does light work: left out, threads do that, too
   * @param send answers with what was found
   */
  do(request: FastifyRequest, reply: FastifyReply, { task, cost, here, send }: Work): void {
    if (!this.limiter.charge(request, reply, cost)) return;
    if (cost <= lightCost && here !== undefined) {
      send(here());
      return;
    }
    this.away(request, reply, task, cost).then(
      (outcome) => {
        if (outcome !== undefined && !reply.sent) send(outcome);
      },
      (error: unknown) => reply.send(error),
    );
  }

  /** Answers with what is kept, here or by the caller, for what it cost to find that out. @param scene in its one form */
  again(request: FastifyRequest, reply: FastifyReply, scene: object, send: () => void): void {
    if (this.limiter.charge(request, reply, 1 + costOfForm(scene))) send();
  }

  /** Has a request pay for what it has had done, whether or not its budget has as much. */
  owe(request: FastifyRequest, cost: number): void {
    this.limiter.owe(request, cost);
  }

  /** Answers with what is wrong, for what it costs to find that out. */
  refuse(request: FastifyRequest, reply: FastifyReply, problem: Problem): void {
    if (this.limiter.charge(request, reply, costOfErrors(problem))) sendProblem(reply, problem);
  }

  /** Makes papers for a request. What they return throws AlreadyAnswered where the request could not have one made. */
  papers(request: FastifyRequest, reply: FastifyReply) {
    const outcomeOf = async (task: PaperTask, count: number, avoided = 0) => {
      const cost = costOfPaper(count, avoided);
      const outcome = this.limiter.charge(request, reply, cost)
        ? await this.away(request, reply, task, cost)
        : undefined;
      if (outcome?.status === "quiz_problem") throw new QuizProblem(outcome.refusal, outcome.field);
      if (outcome === undefined) throw new AlreadyAnswered();
      return outcome;
    };
    const made = async (task: Exclude<PaperTask, { kind: "package" }>) => {
      const { count, avoid = [] } = task.request;
      // What has been found once is not looked for again.
      const outcome = await outcomeOf(task, count, task.kind === "paper" ? avoid.length : 0);
      return outcome.status === "paper" ? outcome.items : undefined;
    };
    return {
      make: async (paper: PaperRequest): Promise<Item[]> =>
        (await made({ kind: "paper", request: paper })) ?? [],
      again: (paper: PaperRequest, found: Found) => made({ kind: "paper_again", request: paper, found }),
      pack: async (items: readonly Item[], packing: Packing): Promise<Uint8Array> => {
        const outcome = await outcomeOf({ kind: "package", items, packing }, items.length);
        if (outcome.status !== "ok") throw new Error(`A package became ${outcome.status}.`);
        return outcome.bytes;
      },
    };
  }

  /** Until what waits for threads has been worked out, s. */
  get wait_s(): number {
    return this.pool.wait_s;
  }

  /** Has parts of a request's work done, each in its turn and once it is paid for. */
  inParts(request: FastifyRequest) {
    return {
      width: this.pool.width,
      pay: (cost: number) => this.limiter.pay(request, cost),
      run: (task: Task, cost: number, abandon: (stop: () => void) => void) =>
        this.pool.run(task, { client: siteOf(request.client), cost, abandon }),
    };
  }

  /** Has a task done on a thread. @returns undefined where there is no outcome, and the request is over */
  async away(
    request: FastifyRequest,
    reply: FastifyReply,
    task: Task,
    cost: number,
  ): Promise<Outcome | undefined> {
    let timer: NodeJS.Timeout | undefined;
    let forget = () => {};
    const abandon = (stop: () => void) => {
      // What is closed already never says so again.
      if (reply.raw.destroyed) return stop();
      reply.raw.once("close", stop);
      forget = () => reply.raw.off("close", stop);
      // The framework's own limit ends with the body, once that has been read.
      timer = setTimeout(
        () => {
          stop();
          // Told at once: a thread that is given little time may take long to notice.
          refuse(reply, new Late(this.pool.wait_s));
        },
        Math.max(0, this.longest_ms - reply.elapsedTime),
      );
    };
    try {
      const outcome = await this.pool.run(task, { client: siteOf(request.client), cost, abandon });
      if (outcome.status === "failed") throw new Error(outcome.message);
      return outcome;
    } catch (error) {
      refuse(reply, error);
      return undefined;
    } finally {
      clearTimeout(timer);
      forget();
    }
  }
}

/** A thread would have had it too late. */
class Late extends Error {
  constructor(readonly wait_s: number) {
    super("too late");
  }
}

interface Work {
  task: Task;
  cost: number;
  here?: () => Outcome;
  send: (outcome: Outcome) => void;
}

/** Answers where no thread has. @throws what is the program's own fault */
function refuse(reply: FastifyReply, error: unknown): void {
  // Whoever has left, or was told that it took too long, needs no answer.
  if (reply.sent) return;
  if (error instanceof Abandoned) reply.hijack();
  else if (error instanceof Late)
    sendRefusal(reply.header("retry-after", String(error.wait_s)), { because: "answer_too_late" });
  else if (error instanceof Crowded) {
    const { full, wait_s } = error;
    reply.header("retry-after", String(wait_s));
    const because = full === "client" ? "client_has_too_much_waiting" : "service_has_too_much_waiting";
    sendRefusal(reply, { because, wait_s });
  } else if (error instanceof ThreadDied) {
    reply.log.error({ err: error }, "a thread died");
    sendRefusal(reply.header("retry-after", "1"), { because: "thread_died" });
  } else throw error;
}
