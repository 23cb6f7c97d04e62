import { execFile } from "node:child_process";
import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { delimiter, join } from "node:path";
import { promisify } from "node:util";

const execFileAsync = promisify(execFile);

/** npm's settings of the workspace are not those of a fresh project. */
const environment = Object.fromEntries(
  Object.entries(process.env).filter(
    ([name]) =>
      !/^npm_/.test(name) || /^npm_config_(registry|proxy|https_proxy|cafile|strict_ssl)$/.test(name),
  ),
);

/**
 * Runs a program to its end, without blocking the service in this process.
 * @param {string} command @param {string[]} args @param {string} cwd
 * @returns {Promise<string>} what it printed
 * @throws Error with all that it said
 */
export async function execute(command, args, cwd) {
  try {
    const { stdout } = await execFileAsync(command, args, {
      cwd,
      env: environment,
      timeout: 240_000,
      maxBuffer: 2 ** 26,
    });
    return stdout.trim();
  } catch (error) {
    const { stdout, stderr } = /** @type {{ stdout?: string, stderr?: string }} */ (error);
    throw new Error(
      `${command} ${args.join(" ")}\n${stdout ?? ""}${stderr ?? ""}${stdout === undefined ? error : ""}`,
    );
  }
}

/**
 * Lays a fresh project with the tarball installed in it.
 * @param {import("../consumers.mjs").Place} place
 * @param {string} name
 * @param {string[]} packages others to install, with their versions
 * @returns {Promise<string>} its folder
 */
export async function freshProject({ folder, tarball }, name, packages) {
  const project = join(folder, name);
  mkdirSync(project);
  writeFileSync(join(project, "package.json"), JSON.stringify({ name, private: true, type: "module" }));
  const flags = ["--no-audit", "--no-fund", "--loglevel=error"];
  await execute("npm", ["install", ...flags, tarball, ...packages], project);
  return project;
}

/** @param {string} name @returns {string | undefined} path of a program */
export function find(name) {
  const folders = (process.env["PATH"] ?? "").split(delimiter);
  return folders.map((folder) => join(folder, name)).find((file) => existsSync(file));
}
