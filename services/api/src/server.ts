import { pino } from "pino";
import { createApp } from "./app.js";
import { banner } from "./banner.js";
import { readConfig } from "./config.js";

try {
  const config = readConfig(process.env);
  // Standard output is for the lines that tell a person where the service is; the log goes beside it.
  const logger = pino({ level: config.logLevel, base: null }, pino.destination({ dest: 2, sync: false }));
  const app = await createApp(logger);
  const address = await app.listen({
    host: config.host,
    port: config.port,
    listenTextResolver: () => "listening",
  });
  console.log(banner(address));
  for (const signal of ["SIGTERM", "SIGINT"] as const) {
    process.once(signal, () => {
      logger.info({ signal }, "stopping: what was asked is answered, nothing new is taken");
      void app.close();
    });
  }
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
