// What plans many scenes at a time: a body of one address keeps the thread that answers free, pays for what it has had done, and
// leaves threads when its caller does. Held in processor time, as the machine may be busy (Linux: proc(5)).
import { readdirSync, readFileSync } from "node:fs";
import { connect } from "node:net";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { pause, type Service, start } from "../lifecycle/service.js";

let service: Service;
beforeAll(async () => {
  service = await start({ RATE_LIMIT_COST: "1000000", RATE_LIMIT_WINDOW_S: "86400" });
  // What it does for the first time takes longer.
  for (const [path, body] of bodies) await post(path, body);
});
afterAll(() => service.process.kill("SIGKILL"));

const spent_ms = (task: string | number): number =>
  Number(readFileSync(`/proc/${service.process.pid}/task/${task}/schedstat`, "utf8").split(" ")[0]) / 1e6;
const answering_ms = () => spent_ms(service.process.pid ?? 0);
const all_ms = () =>
  readdirSync(`/proc/${service.process.pid}/task`).reduce((sum, task) => sum + spent_ms(task), 0);

/** A filter by pictures of a card: it takes longest of all to bring into its one form. */
const sampled = (n: number, own = 0) => ({
  id: `f${n}`,
  item: "lens_filter",
  filter_samples: [
    {
      red_without: 0.5,
      green_without: 0.5,
      blue_without: 0.5,
      red_with: 0.4 - n / 1000,
      green_with: 0.2 + (n + own) / 10_000,
      blue_with: 0.1 + n / 10_000,
    },
  ],
});
const many = <T>(count: number, make: (n: number) => T): T[] =>
  Array.from({ length: count }, (_, n) => make(n));
const camera = (n: number) => [
  { wavelength_nm: 400, red: 0, green: 0, blue: 0.9 },
  { wavelength_nm: 450, red: 0, green: 0.1, blue: 1 },
  { wavelength_nm: 540, red: 0.1 + n / 1000, green: 1, blue: 0.1 },
  { wavelength_nm: 600, red: 1, green: 0.2, blue: 0 },
  { wavelength_nm: 700, red: 0.1, green: 0, blue: 0 },
];

/** Forty guests who own sixteen filters each, all of them sampled. */
const trip = (wind_speed_m_s: number) => ({
  id: "trip",
  dives: [
    {
      id: "d1",
      local_time: "2027-01-16T09:30",
      time_zone: "Etc/GMT+9",
      scene: { water_type: "IB", depth_m: 10, wind_speed_m_s },
    },
  ],
  guests: many(40, (g) => ({ id: `g${g}`, camera: {}, kit: many(16, (n) => sampled(n, g)) })),
});
/** In 8 kB: twelve cameras, each of which sees 24 filters anew. */
const kit = {
  dives: many(12, (n) => ({
    id: `d${n}`,
    scene: { water_type: "IB", depth_m: 10, sensor_samples: camera(n) },
  })),
  pieces: many(24, (n) => sampled(n)),
};
const dive = {
  site: { water_type: "IB" },
  samples: many(20_000, (n) => ({ time_s: n / 10, depth_m: 2 + 20 * Math.sin(n / 7000) })),
};
const waypoints = (count: number) =>
  many(count, (n) => `<waypoint><depth>${n % 9}</depth><divetime>${n}</divetime></waypoint>`).join("");
const file = {
  site: { water_type: "IB" },
  uddf: `<uddf version="3.2.1"><profiledata><repetitiongroup><dive><samples>${waypoints(15_000)}</samples></dive></repetitiongroup></profiledata></uddf>`,
};

/** The status of an answer, and how many units the budget had left when it was begun. */
async function post(path: string, body: object): Promise<{ status: number; left: number }> {
  const answer = await fetch(`http://127.0.0.1:${service.port}${path}`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  });
  await answer.arrayBuffer();
  return { status: answer.status, left: Number(/r=(\d+)/.exec(answer.headers.get("ratelimit") ?? "")?.[1]) };
}

const bodies = [
  ["/v1/trip-advice", trip(4)],
  ["/v1/kit-advice", kit],
  ["/v1/dive-timelines", dive],
  ["/v1/dive-timelines", file],
] as const;

describe("the thread that answers", () => {
  it.each(bodies)("reads nothing of the longest body itself: %s", async (path, body) => {
    const before_ms = answering_ms();
    const { status } = await post(path, body);
    // Too late is what a machine is that has much else to do: who read the body is the same.
    expect([200, 503]).toContain(status);
    // With the reading it takes from 90 to 360 ms; what is left is taking in and handing over up to a megabyte.
    expect(answering_ms() - before_ms).toBeLessThan(60);
  });
});

it("whoever is refused pays for what it took to find out, though there be less left", async () => {
  const wrong = { ...trip(5), shelf: [{ id: "s", item: "lens_filter", filter_kind: "red", quantity: 1 }] };
  const first = await post("/v1/trip-advice", wrong);
  expect(first.status).toBe(400);
  const second = await post("/v1/trip-advice", wrong);
  // Sixteen filters of each guest cost at least four units, and the body one for each 2 kB.
  expect(first.left - second.left).toBeGreaterThan(40 * 4);
});

describe("whoever leaves takes the work along", () => {
  const stillRunning_ms = async (path: string, body: object, after_ms: number) => {
    const text = JSON.stringify(body);
    const socket = connect(service.port, "127.0.0.1");
    let answered = "";
    socket.on("error", () => {});
    socket.on("data", (bytes) => {
      answered += String(bytes);
    });
    const before_ms = all_ms();
    socket.write(
      `POST ${path} HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`,
    );
    while (all_ms() - before_ms < after_ms && !answered.includes(" 400 ")) await pause(1);
    expect(answered).not.toContain(" 400 ");
    socket.destroy();
    const left_ms = all_ms();
    for (let last_ms = 0; all_ms() - last_ms > 1; await pause(100)) last_ms = all_ms();
    return all_ms() - left_ms;
  };
  const crowd = { ...trip(6), dives: many(7, (n) => ({ ...trip(6).dives[0], id: `d${n}` })) };
  const scenes = {
    operation: "filter-choice",
    scene: { water_type: "IB", min_depth_m: 5, max_depth_m: 18 },
    vary: [{ wind_speed_m_s: many(500, (n) => n / 50) }],
  };

  it.each([
    ["/v1/trip-advice", crowd],
    ["/v1/batches", scenes],
  ])("%s", async (path, body) => {
    // Of seconds of work, at different stages.
    const after = [];
    for (const after_ms of [60, 200, 500]) after.push(await stillRunning_ms(path, body, after_ms));
    expect(Math.max(...after)).toBeLessThan(150);
  });
});
