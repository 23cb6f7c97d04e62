// Guards the threads: what they find, who waits for whom, and that leaving stops them. The threads run the built packages.
import { onCheckpoint, toBytes } from "@sunfathom/answers";
import { itemsFor, packageZip } from "@sunfathom/quiz";
import { afterEach, expect, it } from "vitest";
import { operations } from "../operations.js";
import { Abandoned, ComputePool, Crowded, type PoolLimits, ThreadDied } from "./pool.js";
import type { Task } from "./tasks.js";

let pool: ComputePool;
afterEach(() => pool.close());

function open(limits: Partial<PoolLimits> = {}, workerFile?: string): void {
  const all = { threads: 1, niceness: 0, runningPerClient: 1, waitingPerClient: 2, waiting: 3, ...limits };
  pool = workerFile === undefined ? new ComputePool(all) : new ComputePool(all, workerFile);
}

const lamp = { flux_lm: 3000, distance_m: 0.8 };
/** As much as a scene may ask for. */
const heavy = {
  water_type: "9C",
  min_depth_m: 0.1,
  max_depth_m: 60,
  lamps: Array.from({ length: 6 }, (_, n) => ({ ...lamp, flux_lm: 3000 + n })),
};
const light = { water_type: "IB", depth_m: 10 };

const calculation = (scene: object, name: "dive-advice" | "attenuation" = "dive-advice"): Task => ({
  kind: "calculation",
  name,
  scene,
  language: "en",
});

/** Asks for a task, and can leave. */
function ask(task: Task, client = "a") {
  let leave: () => void = () => {};
  const answer = pool.run(task, {
    client,
    cost: 10,
    abandon: (stop) => {
      leave = stop;
    },
  });
  return { answer, leave: () => leave() };
}

const until = async (holds: () => boolean) => {
  while (!holds()) await new Promise((resolve) => setTimeout(resolve, 2));
};

it("finds the bytes that are found without threads, and the problems", async () => {
  open();
  const operation = operations.find(({ name }) => name === "attenuation");
  const here = operation?.reply(light);
  if (here?.status !== "ok") throw new Error("There is no answer.");
  const away = await ask(calculation(light, "attenuation")).answer;
  if (away.status !== "ok") throw new Error(`It is a ${away.status}.`);
  expect(Buffer.from(away.bytes).equals(toBytes(here))).toBe(true);
  const dark = { water_type: "IB", depth_m: 10, daylight_basis: "none" };
  expect(await ask(calculation(dark)).answer).toMatchObject({ status: "problem" });
  expect(pool.heapBytes).toBeGreaterThan(0);
});

it("keeps nothing of the PDFs that it has made: 45 at once are more than its heap would hold", async () => {
  open({ waitingPerClient: 50, waiting: 50 });
  const all = Array.from({ length: 45 }, (_, n) => {
    const body = {
      sheet_width_mm: 60 + n / 10,
      sheet_height_mm: 50,
      opening_width_mm: 30,
      opening_height_mm: 24,
    };
    return ask({ kind: "sheet", name: "cutting-templates", body, format: "pdf", language: "en" }).answer;
  });
  for (const { status } of await Promise.all(all)) expect(status).toBe("ok");
});

it("keeps nothing of the pixels that it has drawn: 24 pictures at once hold no more than some do", async () => {
  open({ waitingPerClient: 30, waiting: 30 });
  const draw = (depth_m: number) => {
    const look = { format: "png", width_px: 1600, theme: "light" } as const;
    const scene = { ...light, depth_m };
    return ask({ kind: "picture", name: "chart-under-water", scene, look, language: "en" }).answer;
  };
  await draw(9);
  const before = process.memoryUsage.rss();
  await Promise.all(Array.from({ length: 24 }, (_, n) => draw(10 + n / 10)));
  // Each has some 25 MB of them, and the pool two threads or three.
  expect(process.memoryUsage.rss() - before).toBeLessThan(300e6);
});

it("stops a task whose caller has left, long before it is done", async () => {
  open();
  await ask(calculation(light)).answer;
  let looks = 0;
  onCheckpoint(() => {
    looks += 1;
  });
  operations.find(({ name }) => name === "dive-advice")?.reply(heavy);
  onCheckpoint(undefined);
  expect(looks).toBeGreaterThan(1000);
  const { answer, leave } = ask(calculation(heavy));
  const next = ask(calculation(light), "b");
  await until(() => pool.running === 1);
  leave();
  const gone = await answer.catch((error: unknown) => error);
  expect(gone).toBeInstanceOf(Abandoned);
  expect((gone as Abandoned).checkpoints).toBeLessThan(looks / 2);
  expect((await next.answer).status).toBe("ok");
});

it("drops what waits for a caller who has left, and serves the others", async () => {
  open();
  const first = ask(calculation(heavy));
  const second = ask(calculation(heavy));
  const third = ask(calculation(light), "b");
  expect(pool.waiting).toBe(2);
  second.leave();
  expect(pool.waiting).toBe(1);
  await expect(second.answer).rejects.toBeInstanceOf(Abandoned);
  first.leave();
  await expect(first.answer).rejects.toBeInstanceOf(Abandoned);
  expect((await third.answer).status).toBe("ok");
});

it("does nothing for a caller who had left before, nor goes on reading what another has sent", async () => {
  open();
  const gone = pool.run(calculation(heavy), { client: "a", cost: 10, abandon: (stop) => stop() });
  expect(pool.running + pool.waiting).toBe(0);
  await expect(gone).rejects.toBeInstanceOf(Abandoned);
  const names = Array.from({ length: 20_000 }, (_, n) => `"k${n}":1`).join(",");
  const { answer, leave } = ask({
    kind: "read",
    reader: { operation: "attenuation" },
    language: "en",
    bytes: Buffer.from(`{${names}}`),
  });
  expect(pool.running).toBe(1);
  leave();
  await expect(answer).rejects.toBeInstanceOf(Abandoned);
});

it("packs the questions of a paper, and stops where nobody waits for them", async () => {
  open({ waitingPerClient: 3 });
  const paper = { seed: "s", level: "working", count: 60, units: "metric", language: "en" } as const;
  const items = itemsFor(paper);
  const options = { version: "3.0", language: "en", title: "t", keys: true } as const;
  const here = Buffer.concat([...packageZip(items, options)]);
  const packed = await ask({ kind: "package", items, packing: { format: "qti", ...options } }).answer;
  if (packed.status !== "ok") throw new Error(`It is a ${packed.status}.`);
  expect(Buffer.from(packed.bytes).equals(here)).toBe(true);
  const { answer, leave } = ask({ kind: "package", items, packing: { format: "qti", ...options } });
  leave();
  await expect(answer).rejects.toBeInstanceOf(Abandoned);
});

it("takes no more than its lines hold, and says for how long", async () => {
  open();
  const asked = [1, 2, 3].map(() => ask(calculation(heavy)));
  const refused = await ask(calculation(light)).answer.catch((error: unknown) => error);
  expect(refused).toMatchObject({ full: "client", wait_s: expect.any(Number) });
  expect(refused).toBeInstanceOf(Crowded);
  asked.push(ask(calculation(heavy), "b"));
  await expect(ask(calculation(light), "c").answer).rejects.toMatchObject({ full: "all" });
  for (const { leave, answer } of asked) {
    leave();
    await expect(answer).rejects.toBeInstanceOf(Abandoned);
  }
});

it("serves a client that asks for little while another asks for all it can", async () => {
  open({ threads: 2, runningPerClient: 1, waitingPerClient: 8, waiting: 20 });
  await Promise.all([ask(calculation(light), "a").answer, ask(calculation(light), "b").answer]);
  const order: string[] = [];
  const note = (name: string) => (error: unknown) => {
    order.push(name);
    return error;
  };
  const greedy = [1, 2, 3, 4].map((n) => {
    const asked = ask(calculation({ ...heavy, wind_speed_m_s: n }), "greedy");
    return { ...asked, answer: asked.answer.then(note("greedy"), note("greedy")) };
  });
  await ask(calculation(light, "attenuation"), "modest").answer.then(note("modest"));
  expect(order).toEqual(["modest"]);
  for (const { leave, answer } of greedy) {
    leave();
    await answer;
  }
});

it("goes on with another thread when one dies, and says that it died", async () => {
  const died: string[] = [];
  open({}, new URL("./dying-worker.test-support.mjs", import.meta.url).href);
  pool.watch({ waited: () => {}, died: (error) => died.push(error.message) });
  const doomed = ask(calculation({ dies: true }));
  const next = ask(calculation({ dies: false }), "b");
  await expect(doomed.answer).rejects.toBeInstanceOf(ThreadDied);
  expect(await next.answer).toMatchObject({ status: "ok" });
  expect(died).toEqual(["worker exited with code: 3"]);
});

it("goes on with another thread when one takes more memory than a thread may", async () => {
  open({}, new URL("./hungry-worker.test-support.mjs", import.meta.url).href);
  const doomed = ask(calculation({ eats: true }));
  const next = ask(calculation({ eats: false }), "b");
  await expect(doomed.answer).rejects.toBeInstanceOf(ThreadDied);
  expect(await next.answer).toMatchObject({ status: "ok" });
});

it("ends with what is under way, and in no more time than it takes to look at a flag", async () => {
  open({ threads: 2, runningPerClient: 2 });
  await Promise.all([ask(calculation(light), "a").answer, ask(calculation(light), "b").answer]);
  const asked = [ask(calculation(heavy)), ask(calculation({ ...heavy, wind_speed_m_s: 4 }))];
  const over = asked.map(({ answer }) => answer.catch((error: unknown) => error));
  await until(() => pool.running === 2);
  await pool.close();
  for (const error of await Promise.all(over))
    expect(error instanceof Abandoned || error instanceof ThreadDied).toBe(true);
});
