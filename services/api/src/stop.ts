import type { FastifyInstance } from "fastify";

/** How to end the process. */
export interface Stop {
  drain_ms: number;
  grace_ms: number;
  /** Called once, with the exit status: 0 where every request was answered. */
  exit: (status: number) => void;
}

/**
 * Ends the service in order: it says that it is not ready while it still takes everything, for `drain_ms`, so that load
 * balancers look away; then takes no connections, answers what comes on those there are, and exits; after `grace_ms` in any case.
 */
export async function stopInOrder(app: FastifyInstance, { drain_ms, grace_ms, exit }: Stop): Promise<void> {
  app.denyReadiness();
  await new Promise((resolve) => setTimeout(resolve, drain_ms));
  const late = setTimeout(() => {
    app.log.error({ grace_ms }, "stopped with requests unanswered");
    exit(1);
  }, grace_ms);
  await app.leave();
  await app.close();
  clearTimeout(late);
  exit(0);
}
