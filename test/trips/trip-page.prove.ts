// A trip page in one call, beside the calls that it takes one by one: seconds, processor seconds and bytes, and what a bystander notices of
// the batch. Times are of the built service, as `npm start` runs it, and are told, not tested: they are those of the machine.
import { readFileSync } from "node:fs";
import { Agent, request } from "node:http";
import { afterEach, expect, it } from "vitest";
import { pause, type Service, start } from "../lifecycle/service.js";

let service: Service | undefined;
afterEach(() => service?.process.kill("SIGKILL"));

const pageFrom = "127.0.0.2";
const bystanderFrom = "127.0.0.3";

const sites = [
  { visibility_m: 25, water_hue: "blue", depth_m: 12 },
  { visibility_m: 12, water_hue: "blue_green", depth_m: 8 },
  { visibility_m: 8, water_hue: "green", depth_m: 6 },
  { visibility_m: 30, water_hue: "blue", depth_m: 20 },
];
const place = { latitude_deg: -47.3, longitude_deg: -128.4, time_zone: "Etc/GMT+9" };
const times = Array.from({ length: 7 }, (_, day) =>
  Array.from(
    { length: 11 },
    (_, hour) => `2026-12-${7 + day < 10 ? "0" : ""}${7 + day}T${hour < 3 ? "0" : ""}${7 + hour}:00`,
  ),
).flat();
const scenes = times.flatMap((local_time) => sites.map((site) => ({ ...place, ...site, local_time })));

interface Told {
  status: number;
  text: string;
  bytes: number;
  took_ms: number;
}

const agent = new Agent({ keepAlive: true, maxSockets: 8 });

function post(port: number, path: string, body: object, from = pageFrom): Promise<Told> {
  const begun = performance.now();
  return new Promise((resolve, reject) => {
    const asked = request(
      {
        port,
        path,
        agent,
        localAddress: from,
        method: "POST",
        headers: { "content-type": "application/json" },
      },
      (response) => {
        const pieces: Buffer[] = [];
        response.on("data", (piece) => pieces.push(piece));
        response.on("end", () => {
          const all = Buffer.concat(pieces);
          const took_ms = performance.now() - begun;
          resolve({ status: response.statusCode ?? 0, text: all.toString(), bytes: all.length, took_ms });
        });
      },
    );
    asked.on("error", reject);
    asked.end(JSON.stringify(body));
  });
}

/** What the service's threads have worked so far, s (proc(5): utime and stime, in ticks of a hundredth of a second). */
function processor_s({ process }: Service): number {
  const stat = readFileSync(`/proc/${process.pid}/stat`, "utf8");
  const fields = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
  return (Number(fields[11]) + Number(fields[12])) / 100;
}

const at = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.floor(share * (values.length - 1))] ?? Number.NaN;

async function bystander(port: number, isOver: () => boolean): Promise<string> {
  const took: number[] = [];
  while (!isOver() || took.length < 100) {
    const { took_ms } = await post(
      port,
      "/v1/attenuation",
      { water_type: "IB", depth_m: 5 + took.length / 100 },
      bystanderFrom,
    );
    took.push(took_ms);
    await pause(10);
    if (took.length >= 1000) break;
  }
  return `${took.length} light answers, median ${at(took, 0.5).toFixed(1)} ms, 99th percentile ${at(took, 0.99).toFixed(1)} ms`;
}

it.each([["attenuation"], ["filter-choice"]])("308 scenes of %s", async (operation) => {
  service = await start({ RATE_LIMIT_COST: "0", METRICS_LISTEN: "off", ANSWER_CACHE_BYTES: "0" });
  const { port } = service;
  const varied = { operation, scene: place, vary: [{ local_time: times }, columns(sites)] };
  // Threads and code are warm for both.
  await post(port, "/v1/batches", { ...varied, vary: [{ local_time: times.slice(0, 3) }, columns(sites)] });

  const before_s = processor_s(service);
  const one = await post(port, "/v1/batches", varied);
  const between_s = processor_s(service);
  expect(one.status).toBe(200);
  expect(one.text.trim().split("\n")).toHaveLength(309);

  const begun = performance.now();
  const singles: Told[] = [];
  const queue = [...scenes];
  // As many at a time as the service takes of one client.
  const hands = Array.from({ length: 8 }, async () => {
    for (let scene = queue.shift(); scene !== undefined; scene = queue.shift())
      singles.push(await post(port, `/v1/${operation}`, scene));
  });
  await Promise.all(hands);
  const singles_s = (performance.now() - begun) / 1000;
  const after_s = processor_s(service);

  const answers = new Set(singles.map(({ text }) => text));
  for (const line of one.text.trim().split("\n").slice(0, -1)) {
    const found = /"(?:answer|problem)":(\{.*\})\}$/.exec(line)?.[1] ?? "";
    if (line.includes('"kind":"answer"')) expect(answers.has(found)).toBe(true);
  }

  const alone = await bystander(port, () => true);
  let over = false;
  const beside = bystander(port, () => over);
  await post(port, "/v1/batches", varied);
  over = true;
  console.info(
    [
      `${operation}: one call ${(one.took_ms / 1000).toFixed(2)} s, ${(between_s - before_s).toFixed(2)} processor s, ${one.bytes} bytes`,
      `308 calls ${singles_s.toFixed(2)} s, ${(after_s - between_s).toFixed(2)} processor s, ${singles.reduce((sum, { bytes }) => sum + bytes, 0)} bytes`,
      `a bystander alone: ${alone}`,
      `beside the batch: ${await beside}`,
    ].join("\n"),
  );
});

function columns(rows: readonly Readonly<Record<string, unknown>>[]): Record<string, unknown[]> {
  const names = Object.keys(rows[0] ?? {});
  return Object.fromEntries(names.map((name) => [name, rows.map((row) => row[name])]));
}
