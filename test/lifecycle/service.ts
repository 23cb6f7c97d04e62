// The built service as a process of its own. `npm test` builds it first.
import { type ChildProcess, type StdioOptions, spawn } from "node:child_process";
import { once } from "node:events";
import { type Agent, request } from "node:http";
import { createServer } from "node:net";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { startFlags } from "../support/start-flags.mjs";

const built = fileURLToPath(new URL("../..", import.meta.url));

export interface Service {
  port: number;
  metricsPort: number;
  process: ChildProcess;
  /** Exit status and signal, once it has ended. */
  ended: Promise<{ code: number | null; signal: string | null }>;
}

/**
 * Starts the service on a port that was free a moment ago, and waits until it answers.
 * @param openFiles how many files the system lets it open
 * @param root the top of the built tree that it runs from
 */
export async function start(
  environment: Record<string, string> = {},
  stdio: StdioOptions = "ignore",
  openFiles?: number,
  root = built,
): Promise<Service> {
  const port = await freePort();
  const metricsPort = await freePort();
  const command = [process.execPath, ...startFlags, join(root, "services/api/dist/server.js")];
  const limited = ["sh", "-c", `ulimit -n ${openFiles} && exec "$0" "$@"`, ...command];
  const [program = "", ...words] = openFiles === undefined ? command : limited;
  const child = spawn(program, words, {
    env: {
      PATH: process.env["PATH"],
      PORT: String(port),
      METRICS_LISTEN: `127.0.0.1:${metricsPort}`,
      RATE_LIMIT_COST: "0",
      // A busy machine gives up on nothing.
      ANSWER_TIMEOUT_S: "600",
      ...environment,
    },
    stdio,
  });
  const ended = once(child, "exit").then(([code, signal]) => ({ code, signal }));
  for (let tries = 0; tries < 600; tries += 1) {
    const { status } = await ask(port, "/health/ready");
    if (status === 200) return { port, metricsPort, process: child, ended };
    await pause(50);
  }
  child.kill("SIGKILL");
  throw new Error("The service did not start.");
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = server.address();
  server.close();
  if (address === null || typeof address === "string") throw new Error("no port");
  return address.port;
}

export const pause = (time_ms: number) => new Promise((resolve) => setTimeout(resolve, time_ms));

export interface Reply {
  /** 0 where no answer came. */
  status: number;
  text: string;
  /** Whether the service took the connection. */
  connected: boolean;
}

/** One request. Never throws: what goes wrong is in the reply. */
export function ask(port: number, path: string, body?: object, agent: Agent | false = false): Promise<Reply> {
  return new Promise((resolve) => {
    let connected = false;
    const sent = request(
      {
        port,
        path,
        agent,
        method: body === undefined ? "GET" : "POST",
        headers: { "content-type": "application/json" },
      },
      (response) => {
        let text = "";
        response.setEncoding("utf8");
        response.on("data", (part) => {
          text += part;
        });
        response.on("end", () => resolve({ status: response.statusCode ?? 0, text, connected }));
        response.on("error", () => resolve({ status: 0, text, connected }));
      },
    );
    sent.on("socket", (socket) => {
      if (socket.connecting) {
        socket.on("connect", () => {
          connected = true;
        });
      } else connected = true;
    });
    sent.on("error", () => resolve({ status: 0, text: "", connected }));
    sent.end(body === undefined ? undefined : JSON.stringify(body));
  });
}

/** The status that another address of this machine gets; 0 where it gets none. */
export function askFrom(port: number, localAddress: string, path: string): Promise<number> {
  return new Promise((resolve) => {
    const sent = request({ port, host: "127.0.0.1", localAddress, path, agent: false }, (response) => {
      response.resume();
      resolve(response.statusCode ?? 0);
    });
    sent.on("error", () => resolve(0));
    sent.setTimeout(20_000, () => sent.destroy());
    sent.end();
  });
}
