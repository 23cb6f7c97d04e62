// What the container promises, and that its checks notice where a promise is not kept.
import { execFile } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { createApp } from "@sunfathom/api";
import { Copy } from "dockerfile-ast";
import { describe, expect, it } from "vitest";
import { execForm, lastOf, type Stage, stagesOf, wordsOf } from "./support/dockerfile.js";
import { startFlags } from "./support/start-flags.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const read = (path: string) => readFileSync(join(root, path), "utf8");
const isHere = (path: string) => existsSync(join(root, path));
const dockerfile = read("services/api/Dockerfile");
const manifest = JSON.parse(read("package.json"));
const oldestNode = Number(manifest.engines.node.replace(">=", ""));

/** Node.js that is still maintained, by its whole version; what else an image brings is named, too. */
function isPinned(image: string): boolean {
  const major = Number(/^node:(\d+)\.\d+\.\d+-[a-z]+-slim$/.exec(image)?.[1]);
  // Even ones have long-term support; that of 22 ends in April 2027.
  return major >= Math.max(oldestNode, 24) && major % 2 === 0;
}

/** The command that a health check runs. */
function probeOf(stage: Stage): string[] | undefined {
  const text = lastOf(stage, "HEALTHCHECK")?.getArgumentsContent() ?? "";
  return execForm(text.replace(/^CMD\s+/, ""));
}

/** What a Dockerfile does not promise, or promises and cannot keep. */
function faultsOf(text: string): string[] {
  const stages = stagesOf(text);
  const faults = stages.flatMap((stage, nth) => faultsOfStage(stage, stages.slice(0, nth)));
  const final = stages.at(-1);
  if (final === undefined) return ["no stage"];
  const user = lastOf(final, "USER")?.getArgumentsContent() ?? "root";
  if (/^(root|0+)(:|$)/.test(user)) faults.push("the service runs as root");
  const [program, ...words] = execForm(lastOf(final, "CMD")?.getArgumentsContent() ?? "") ?? [];
  const file = words.find((word) => !word.startsWith("--")) ?? "";
  const flags = words.filter((word) => word.startsWith("--"));
  if (program === undefined) faults.push("no command in the exec form");
  else if (!isHere(join("services/api", file.replace(/^dist\/(.*)\.js$/, "src/$1.ts"))))
    faults.push(`nothing to run at ${file}`);
  if (program !== undefined && flags.join() !== startFlags.join())
    faults.push("other flags of Node.js than `npm start` has");
  if (lastOf(final, "ENTRYPOINT") !== undefined) faults.push("an entry point before the command");
  if (probeOf(final) === undefined) faults.push("no health check in the exec form");
  return faults;
}

function faultsOfStage({ image, instructions }: Stage, earlier: readonly Stage[]): string[] {
  const faults: string[] = [];
  const isStage = (name: string) => earlier.some((stage) => stage.name === name);
  if (!isPinned(image) && !isStage(image)) faults.push(`the base ${image}`);
  for (const copy of instructions.filter((one) => one instanceof Copy)) {
    const from = copy.getFromFlag()?.getValue();
    const missing = wordsOf(copy)
      .slice(0, -1)
      .filter((path) => !isHere(path));
    if (from === undefined || from === null) faults.push(...missing.map((path) => `no ${path} to copy`));
    else if (!isStage(from)) faults.push(`no stage ${from} to copy from`);
  }
  const words = instructions.flatMap(wordsOf);
  const scripts = words.filter((word) => word.endsWith(".mjs") && !isHere(word));
  const installers = words.filter((word) => word.startsWith("pnpm@") && word !== manifest.packageManager);
  return [...faults, ...[...scripts, ...installers].map((word) => `nothing like ${word} here`)];
}

describe("the Dockerfile", () => {
  it("keeps its promises", () => {
    expect(faultsOf(dockerfile)).toEqual([]);
  });

  it.each([
    ["USER node\n", "", "the service runs as root"],
    ["USER node", "USER 0:0", "the service runs as root"],
    ["USER node", "USER node\nUSER root", "the service runs as root"],
    [/^CMD .*$/m, "CMD node dist/server.js", "no command in the exec form"],
    [/^CMD .*$/m, "CMD ['node', 'dist/server.js']", "no command in the exec form"],
    [/^CMD .*$/m, 'CMD ["node", "dist/server.js"]', "other flags of Node.js than `npm start` has"],
    ["dist/server.js", "dist/serve.js", "nothing to run at dist/serve.js"],
    ["EXPOSE", "ENTRYPOINT node dist/server.js\nEXPOSE", "an entry point before the command"],
    [/HEALTHCHECK.*/, "HEALTHCHECK NONE", "no health check in the exec form"],
    [/HEALTHCHECK.*/, "HEALTHCHECK CMD true", "no health check in the exec form"],
    [/\nFROM node:[\w.-]+\n/, "\nFROM node\n", "the base node"],
    [/node:[\w.-]+ AS/, "node:latest AS", "the base node:latest"],
    [/node:[\w.-]+ AS/, "node:24-slim AS", "the base node:24-slim"],
    [/node:[\w.-]+ AS/, "node:20.20.2-bookworm-slim AS", "the base node:20.20.2-bookworm-slim"],
    [/node:[\w.-]+ AS/, "node:25.1.0-bookworm-slim AS", "the base node:25.1.0-bookworm-slim"],
    ["--from=build", "--from=built", "no stage built to copy from"],
    ["COPY . .", "COPY settings.json .", "no settings.json to copy"],
    [".ci/setup.mjs", ".ci/set-up.mjs", "nothing like .ci/set-up.mjs here"],
    [/pnpm@[\d.]+/, "pnpm@9.0.0", "nothing like pnpm@9.0.0 here"],
  ])("with %s as %j is found out", (kept, broken, fault) => {
    const text = dockerfile.replace(kept, broken);
    expect(text).not.toBe(dockerfile);
    expect(faultsOf(text)).toEqual([fault]);
  });

  it("leaves out what is installed, what is past, what tests wrote and what is secret", () => {
    const ignored = read("services/api/Dockerfile.dockerignore").split("\n");
    expect(ignored).toEqual(
      expect.arrayContaining([
        "node_modules",
        "**/node_modules",
        "**/dist",
        ".git",
        "**/.env*",
        "**/coverage",
        "reports",
      ]),
    );
  });

  it("probes the service: well while it listens, ill when it does not", async () => {
    const [program = "", ...words] = probeOf(stagesOf(dockerfile).at(-1) as Stage) ?? [];
    const app = await createApp();
    const { port } = new URL(await app.listen({ host: "127.0.0.1", port: 0 }));
    const env = { ...process.env, PORT: port };
    expect(await statusOf(program, words, env)).toBe(0);
    await app.close();
    expect(await statusOf(program, words, env)).toBe(1);
  });
});

describe("the linter of the Dockerfile", () => {
  const lint = (...args: string[]) => statusOf(process.execPath, [join(root, ".ci/dockerfile.mjs"), ...args]);

  it("finds nothing in it", async () => {
    expect(await lint()).toBe(0);
  });

  it.each([
    ["EXPOSE", "EXPOZE"],
    ["--interval", "--intervall"],
    ["=30s", "=30"],
    ["WORKDIR /service", "WORKDIR service"],
    ["USER node", "user node"],
  ])("finds %s written as %s", async (right, wrong) => {
    const folder = mkdtempSync(join(tmpdir(), "dockerfile-"));
    const text = dockerfile.replace(right, wrong);
    expect(text).not.toBe(dockerfile);
    writeFileSync(join(folder, "Dockerfile"), text);
    expect(await lint(join(folder, "Dockerfile"))).toBe(1);
    rmSync(folder, { recursive: true });
  });
});

function statusOf(program: string, words: string[], env: NodeJS.ProcessEnv = process.env): Promise<number> {
  return new Promise((resolve) => {
    const child = execFile(program, words, { env }, () => resolve(child.exitCode ?? -1));
  });
}
