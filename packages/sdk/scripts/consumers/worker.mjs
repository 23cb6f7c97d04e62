import { spawn } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { freshProject } from "./project.mjs";
import { compare, layPrograms } from "./runtimes.mjs";

const version = "1.20261117.1";

const config = `using Workerd = import "/workerd/workerd.capnp";
const config :Workerd.Config = (
  services = [
    (name = "main", worker = (modules = [(name = "worker.js", esModule = embed "worker.js")], compatibilityDate = "2026-01-01", globalOutbound = "loopback")),
    (name = "loopback", network = (allow = ["private"])),
  ],
  sockets = [(name = "http", address = "127.0.0.1:0", http = (), service = "main")],
);
`;

const worker = `import { digest } from "./digest.mjs";
export default {
  async fetch(request) {
    const baseUrl = new URL(request.url).searchParams.get("service");
    return new Response(await digest(baseUrl).catch((error) => "failed: " + error.stack));
  },
};
`;

/** @type {import("../consumers.mjs").Check[]} */
export const workerChecks = [
  {
    name: `workerd ${version}`,
    run: async (place) => {
      const project = await freshProject(place, "workerd", [`workerd@${version}`]);
      layPrograms(project);
      writeFileSync(join(project, "entry.mjs"), worker);
      writeFileSync(join(project, "config.capnp"), config);
      await build({
        entryPoints: [join(project, "entry.mjs")],
        outfile: join(project, "worker.js"),
        bundle: true,
        format: "esm",
        minify: true,
        logLevel: "warning",
      });
      const args = ["serve", "config.capnp", "--control-fd=3"];
      const server = spawn(join(project, "node_modules/.bin/workerd"), args, {
        cwd: project,
        stdio: ["ignore", "inherit", "inherit", "pipe"],
      });
      try {
        const port = await portOf(server);
        const response = await fetch(
          `http://127.0.0.1:${port}/?service=${encodeURIComponent(place.baseUrl)}`,
        );
        return compare(place, await response.text());
      } finally {
        server.kill();
      }
    },
  },
];

/**
 * Waits for the port that the server took.
 * @param {import("node:child_process").ChildProcess} server
 * @returns {Promise<number>}
 */
function portOf(server) {
  return new Promise((resolve, reject) => {
    let said = "";
    server.stdio[3]?.on("data", (chunk) => {
      said += chunk;
      const port = /"event":"listen".*?"port":(\d+)/.exec(said)?.[1];
      if (port !== undefined) resolve(Number(port));
    });
    server.once("error", reject);
    server.once("exit", (code) => reject(new Error(`workerd ended with ${code}`)));
  });
}
