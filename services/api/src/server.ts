import { pino } from "pino";
import { createApp } from "./app.js";
import { banner } from "./banner.js";
import { readConfig } from "./config/config.js";
import { fitConnections, openFilesAllowed } from "./config/open-files.js";
import { openMetrics } from "./features/operations/open-metrics.js";
import { outliveReaders, PatientLog } from "./output.js";
import { stopInOrder } from "./stop.js";

try {
  outliveReaders();
  const config = readConfig(process.env);
  const logger = pino({ level: config.logLevel, base: null }, new PatientLog(2));
  const { lowered, ...connections } = fitConnections(config.limits, openFilesAllowed());
  if (lowered !== undefined) logger.warn(lowered);
  const app = await createApp({
    logger,
    limits: { ...config.limits, ...connections },
    exposure: config.exposure,
    tracing: config.tracing,
    quiz: config.quiz,
  });
  if (app.metrics !== undefined && config.exposure.metricsAt !== undefined)
    await openMetrics(app, app.metrics, config.exposure.metricsAt);
  let stopping = false;
  const stop = (signal: NodeJS.Signals) => {
    // Whoever asks twice means now.
    if (stopping) process.exit(1);
    stopping = true;
    logger.info({ signal }, "stopping: what was asked is answered");
    // A person at the keyboard has no load balancer to wait for.
    const drain_ms = signal === "SIGINT" ? 0 : config.drain_ms;
    void stopInOrder(app, { drain_ms, grace_ms: config.grace_ms, exit: (status) => process.exit(status) });
  };
  for (const signal of ["SIGTERM", "SIGINT"] as const) process.on(signal, stop);
  const address = await app.listen({
    host: config.host,
    port: config.port,
    listenTextResolver: () => "listening",
  });
  console.log(banner(address));
  app.warm();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
