import { spawn } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import { join } from "node:path";
import { build } from "esbuild";
import { find, freshProject } from "./project.mjs";
import { compare, layPrograms } from "./runtimes.mjs";

/** Gives the browser's report back to the page that it came from. */
const page = `import { digest } from "./digest.mjs";
const service = new URLSearchParams(location.search).get("service");
const found = await digest(service).catch((error) => "failed: " + error.stack);
await fetch("/found", { method: "POST", body: found });
`;

/** @type {import("../consumers.mjs").Check[]} */
export const browserChecks = [
  {
    name: "a bundle in Chromium",
    run: async (place) => {
      const chromium = find("chromium");
      if (chromium === undefined) return "ABSENT: no program called chromium";
      const project = await freshProject(place, "browser", []);
      layPrograms(project);
      writeFileSync(join(project, "page.mjs"), page);
      const { outputFiles } = await build({
        entryPoints: [join(project, "page.mjs")],
        bundle: true,
        format: "esm",
        minify: true,
        write: false,
        logLevel: "warning",
      });
      return compare(place, await inChromium(chromium, outputFiles[0]?.text ?? "", place));
    },
  },
];

/**
 * Opens a page with a script, of another origin than the service: every call is a request across origins.
 * @param {string} chromium @param {string} script
 * @param {import("../consumers.mjs").Place} place
 * @returns {Promise<string>} what the page reported
 */
async function inChromium(chromium, script, { baseUrl, folder }) {
  /** @type {(found: string) => void} */
  let report = () => undefined;
  const reported = new Promise((resolve) => {
    report = resolve;
  });
  const server = createServer(async (request, response) => {
    const body = await new Response(request).text();
    if (request.url?.startsWith("/?")) {
      response
        .setHeader("content-type", "text/html")
        .end('<!doctype html><script type="module" src="/page.js"></script>');
    } else if (request.url === "/page.js") {
      response.setHeader("content-type", "text/javascript").end(script);
    } else if (request.url === "/found") {
      report(body);
      response.end();
    } else {
      response.writeHead(404).end();
    }
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", () => resolve(undefined)));
  const address = server.address();
  const port = typeof address === "object" ? address?.port : undefined;
  const profile = mkdtempSync(join(folder, "profile-"));
  const flags = [
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-dev-shm-usage",
    `--user-data-dir=${profile}`,
  ];
  const browser = spawn(
    chromium,
    [...flags, `http://127.0.0.1:${port}/?service=${encodeURIComponent(baseUrl)}`],
    { stdio: "ignore" },
  );
  const timer = setTimeout(() => report("nothing within 240 s"), 240_000);
  const found = await reported;
  clearTimeout(timer);
  browser.kill();
  await new Promise((resolve) => browser.once("exit", resolve));
  server.closeAllConnections();
  server.close();
  return String(found);
}
