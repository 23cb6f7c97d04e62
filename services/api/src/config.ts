/** What the environment says of this process. */
export interface Config {
  host: string;
  port: number;
  logLevel: LogLevel;
}

const logLevels = ["fatal", "error", "warn", "info", "debug", "trace", "silent"] as const;
type LogLevel = (typeof logLevels)[number];

/**
 * Reads the environment; no other module does.
 * @param env for example `process.env`; HOST (default 127.0.0.1), PORT (default 8080; 0 takes a free one) and LOG_LEVEL
 * (default info)
 * @throws Error that names the variable and what it can be; a bad value must stop the start, not surprise later
 */
export function readConfig(env: Readonly<Record<string, string | undefined>>): Config {
  return {
    host: readHost(env["HOST"]),
    port: readPort(env["PORT"]),
    logLevel: readLogLevel(env["LOG_LEVEL"]),
  };
}

function readHost(value = "127.0.0.1"): string {
  if (value === "" || /[\s/]/.test(value))
    throw bad("HOST", value, "a host name or address, such as 127.0.0.1");
  return value;
}

function readPort(value = "8080"): number {
  const port = Number(value);
  if (!/^\d{1,5}$/.test(value) || port > 65535) throw bad("PORT", value, "a whole number from 0 to 65535");
  return port;
}

function readLogLevel(value = "info"): LogLevel {
  const level = logLevels.find((name) => name === value);
  if (level === undefined) throw bad("LOG_LEVEL", value, `one of ${logLevels.join(", ")}`);
  return level;
}

function bad(name: string, value: string, allowed: string): Error {
  return new Error(`${name} is ${JSON.stringify(value)}, but must be ${allowed}.`);
}
