// The tables of README.md, between its markers.
import { readFileSync, writeFileSync } from "node:fs";
import { median } from "./statistics.mjs";

const page = new URL("README.md", import.meta.url);

/** @param {string[]} head @param {(string | number)[][]} rows */
function table(head, rows) {
  const all = [head, ...rows.map((row) => row.map(String))];
  const widths = head.map((_, column) => Math.max(3, ...all.map((row) => (row[column] ?? "").length)));
  const line = (/** @type {string[]} */ cells) =>
    `| ${cells.map((cell, column) => cell.padEnd(widths[column])).join(" | ")} |`;
  return [line(all[0]), line(widths.map((width) => "-".repeat(width))), ...all.slice(1).map(line)].join("\n");
}

const ratio = (/** @type {number | undefined} */ value) => (value === undefined ? "" : value.toFixed(2));
const whole = (/** @type {number | undefined} */ value) => (value === undefined ? "" : value.toFixed(0));

/** @param {number | undefined} value @param {number} target @param {"atLeast" | "atMost"} sense */
function met(value, target, sense) {
  if (value === undefined || Number.isNaN(value)) return "not measured";
  return (sense === "atLeast" ? value >= target : value <= target) ? "met" : "missed";
}

/** @param {any} all */
function targets({ service, engine, start, growth }) {
  const row = (/** @type {string} */ name, get = false) =>
    service.rows.find((/** @type {any} */ r) => r.operation === name && r.get === get);
  const { half, memory } = service;
  const list = [
    ["attenuation over bare node:http", row("attenuation")?.toBare, 0.65, "atLeast"],
    ["attenuation over bare Fastify", row("attenuation")?.toFastify, 0.9, "atLeast"],
    ["dive-advice over bare node:http", row("dive-advice")?.toBare, 0.35, "atLeast"],
    ["304 over bare Fastify", row("attenuation", true)?.toFastify, 0.9, "atLeast"],
    ["engine over NumPy", engine.ratios["NumPy"], 3, "atLeast"],
    ["engine over the matrix library", engine.ratios["matrix library"], 30, "atLeast"],
    ["engine's time over the multiply-add loop's", 1 / engine.ratios["multiply-add"], 3, "atMost"],
    ["99th percentile over median at half saturation", half.p99_ms / half.median_ms, 3, "atMost"],
    ["most memory under saturation, MB", memory.busy.most_MB, 200, "atMost"],
    ["ready after, s", median(start.ready_ms) / 1000, 1, "atMost"],
    ["exponent of time in scenes", growth.sceneExponent, 1.05, "atMost"],
  ];
  return table(
    ["what", "found", "wanted", ""],
    list.map(([what, found, wanted, sense]) => [
      String(what),
      ratio(/** @type {number | undefined} */ (found)),
      `${sense === "atLeast" ? "≥" : "≤"} ${wanted}`,
      met(
        /** @type {number | undefined} */ (found),
        Number(wanted),
        /** @type {"atLeast" | "atMost"} */ (sense),
      ),
    ]),
  );
}

/** @param {any[]} pictures */
const pictureTable = (pictures) =>
  table(
    ["picture", "format", "ms", "times attenuation"],
    pictures.map(({ name, format, ms, ratios }) => [
      name,
      format,
      median(ms).toFixed(0),
      median(ratios).toFixed(0),
    ]),
  );

/** @param {any} all */
function sections(all) {
  const { environment, service, engine, growth, pictures, start, sizes } = all;
  const { idle, busy } = service.memory;
  return {
    targets: targets(all),
    service: [
      table(
        [
          "operation",
          "full stack, 1/s",
          "bare Fastify, 1/s",
          "bare node:http, 1/s",
          "over Fastify",
          "over node:http",
          "both by processor time",
          "µs of it a request",
        ],
        service.rows.map((/** @type {any} */ r) => [
          r.get ? `${r.operation}, 304` : r.operation,
          whole(r.perSecond.full),
          whole(r.perSecond.fastify),
          whole(r.perSecond.bare),
          ratio(r.toFastify),
          ratio(r.toBare),
          `${ratio(r.toFastifyByTime)} ${ratio(r.toBareByTime)}`.trim(),
          whole(r.processor_us),
        ]),
      ),
      "",
      `Attenuation at half saturation (${whole(service.half.rate)} a second): median ${ratio(service.half.median_ms)} ms, 99th percentile ${ratio(service.half.p99_ms)} ms; bare node:http at the same rate: ${ratio(service.halfOfBare.median_ms)} and ${ratio(service.halfOfBare.p99_ms)} ms. The asker was busy ${whole(100 * Math.max(...service.rows.map((/** @type {any} */ r) => r.askerBusy)))} % of its core at most.`,
    ].join("\n"),
    engine: table(
      ["way", "µs a scene", "time over the product's", "furthest from the formula, stops"],
      Object.entries(engine.perScene_us)
        .filter(([, times]) => /** @type {number[]} */ (times).length > 0)
        .map(([name, times]) => [
          name,
          ratio(median(/** @type {number[]} */ (times))),
          name === "product" ? "1" : ratio(engine.ratios[name]),
          engine.differences[name]?.toExponential(1) ?? "",
        ]),
    ),
    growth: [
      table(
        ["scenes", "s", "µs a scene", "memory beside scenes and losses, MB"],
        growth.byScenes.map((/** @type {any} */ r) => [
          r.scenes,
          r.seconds.toPrecision(3),
          ratio((1e6 * r.seconds) / r.scenes),
          r.memory_MB.toFixed(1),
        ]),
      ),
      "",
      table(
        ["depths", "µs a scene"],
        growth.byDepths.map((/** @type {any} */ r) => [
          r.depths,
          ratio((1e6 * r.seconds) / growth.scenesPerDepthCount),
        ]),
      ),
      "",
      `Time grows with the ${ratio(growth.sceneExponent)}th power of the number of scenes, and with the ${ratio(growth.depthExponent)}th of the number of depths.`,
    ].join("\n"),
    pictures: pictureTable(pictures),
    start: table(
      ["what", "found"],
      [
        ["from the process's start to ready, s", ratio(median(start.ready_ms) / 1000)],
        ["memory idle, MB", idle.now_MB],
        ["memory at most under saturation, MB", busy.most_MB],
        [
          "client, minified / gzip, kB",
          `${sizes.client.minified_kB.toFixed(1)} / ${sizes.client.gzip_kB.toFixed(1)}`,
        ],
        [
          "offline mode, minified / gzip, kB",
          `${sizes.offline.minified_kB.toFixed(1)} / ${sizes.offline.gzip_kB.toFixed(1)}`,
        ],
      ],
    ),
    environment: table(
      ["", ""],
      Object.entries(environment).map(([name, value]) => [name, String(value)]),
    ),
  };
}

/** @param {any} all what `run.mjs` measured */
export function writePage(all) {
  let text = readFileSync(page, "utf8");
  for (const [name, body] of Object.entries(sections(all))) {
    const [from, to] = [`<!-- ${name} -->`, `<!-- end of ${name} -->`];
    const [start, end] = [text.indexOf(from), text.indexOf(to)];
    if (start === -1 || end === -1) throw new Error(`README.md has no markers for ${name}`);
    text = `${text.slice(0, start + from.length)}\n\n${body}\n\n${text.slice(end)}`;
  }
  writeFileSync(page, text);
}
