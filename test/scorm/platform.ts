// A learning platform for tests: scorm-again (npm, MIT), a run-time that this project has no part in, in a page that shows a
// package in a frame. It counts what is asked of the network, and keeps what the run-time was told.
import { readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { createRequire } from "node:module";
import type { AddressInfo } from "node:net";
import type { Browser, Frame, Page } from "playwright-core";

/** As a page loads it without modules. */
const runtime = readFileSync(createRequire(import.meta.url).resolve("scorm-again/scorm12/min"), "utf8");

const MEDIA: Readonly<Record<string, string>> = {
  html: "text/html; charset=utf-8",
  js: "text/javascript; charset=utf-8",
  css: "text/css; charset=utf-8",
  svg: "image/svg+xml",
  xml: "application/xml",
};

/** As strict as a platform may be: nothing inline runs, neither script nor style. */
const POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; frame-src 'self'";

const shell = `<!doctype html><title>platform</title><link rel="stylesheet" href="/shell.css">
<script src="/runtime.js"></script><script src="/shell.js"></script><iframe name="content"></iframe>`;

/** Begins as a platform does: a learner's data come back, then the content is opened. Each call is kept with the error it left. */
const shellScript = `window.launch = (kept) => {
  const api = new Scorm12API({ autocommit: false, logLevel: 5 });
  if (kept) api.loadFromJSON(kept.cmi, "cmi");
  window.calls = [];
  window.API = {};
  for (const name of ["LMSInitialize", "LMSFinish", "LMSGetValue", "LMSSetValue", "LMSCommit"])
    window.API[name] = (...parameters) => {
      const result = api[name](...parameters);
      window.calls.push({ name, parameters, result: String(result), error: String(api.LMSGetLastError()) });
      if (name === "LMSCommit" || name === "LMSFinish") window.kept = JSON.parse(JSON.stringify({ cmi: api.cmi }));
      return result;
    };
  document.querySelector("iframe").src = "/package/index.html";
};
window.leave = () => { document.querySelector("iframe").src = "about:blank"; };`;

export interface Call {
  name: string;
  parameters: string[];
  result: string;
  error: string;
}

export interface Platform {
  page: Page;
  /** The frame with the content. */
  content(): Frame;
  launch(kept?: unknown): Promise<void>;
  /** Closes the content, and waits until it has said so. @returns what was kept of it */
  leave(): Promise<{ cmi: Record<string, unknown> }>;
  calls(): Promise<Call[]>;
  /** Every URL that was asked for, and every error of the pages. */
  asked: string[];
  errors: string[];
  origin: string;
  close(): Promise<void>;
}

/** @param files of the package, by path */
export async function openPlatform(
  browser: Browser,
  files: ReadonlyMap<string, Uint8Array>,
  size: { width: number; height: number } = { width: 900, height: 2000 },
): Promise<Platform> {
  const server = await serve(files);
  const origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const context = await browser.newContext({ viewport: size });
  const page = await context.newPage();
  const asked: string[] = [];
  const errors: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  page.on("pageerror", ({ message }) => errors.push(message));
  page.on("console", (message) => {
    if (message.type() === "error") errors.push(message.text());
  });
  await page.goto(`${origin}/`);
  const calls = () => page.evaluate<Call[]>("window.calls");
  return {
    page,
    asked,
    errors,
    origin,
    calls,
    content: () => {
      const frame = page.frame("content");
      if (frame === null) throw new Error("The content is not open.");
      return frame;
    },
    launch: async (kept) => {
      await page.evaluate(`window.launch(${JSON.stringify(kept ?? null)})`);
      await page.waitForFunction("window.calls.some(({ name }) => name === 'LMSInitialize')");
      await page.frameLocator("iframe").locator("main > button").waitFor();
    },
    leave: async () => {
      await page.evaluate("window.leave()");
      await page.waitForFunction("window.calls.some(({ name }) => name === 'LMSFinish')");
      return page.evaluate("window.kept");
    },
    close: async () => {
      await context.close();
      server.close();
    },
  };
}

async function serve(files: ReadonlyMap<string, Uint8Array>): Promise<Server> {
  const server = createServer((request, reply) => {
    const url = request.url ?? "/";
    const own: Readonly<Record<string, [type: string, body: string]>> = {
      "/": ["html", shell],
      "/runtime.js": ["js", runtime],
      "/shell.js": ["js", shellScript],
      "/shell.css": [
        "css",
        "html, body, iframe { margin: 0; width: 100%; height: 100%; border: 0; display: block }",
      ],
      "/favicon.ico": ["svg", "<svg xmlns='http://www.w3.org/2000/svg'/>"],
    };
    const path = url.replace(/^\/package\//, "");
    const [type, body] = own[url] ?? [path.split(".").at(-1) ?? "", files.get(path)];
    if (body === undefined) reply.writeHead(404).end();
    else
      reply
        .setHeader("content-type", MEDIA[type] ?? "application/octet-stream")
        .setHeader("content-security-policy", own[url] ? "" : POLICY)
        .end(body);
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  return server;
}
