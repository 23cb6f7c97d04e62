// Plays a package in Chromium with an open-source player that this project has no part in, and says what it scored: right
// answers must give 1 and wrong ones 0, with feedback shown. Choices are clicked and numbers typed; orders and pairs are handed
// to the player as responses. The player reads QTI 3.0: a package of QTI 2.1 is first brought into that by an open-source
// converter that this project has no part in either. Run after a build, with Chromium at /usr/bin/chromium or at $CHROMIUM:
//   node packages/quiz/scripts/play-in-browser.mjs [questions per level] [3.0 or 2.1]
import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import { itemsFor, LEVELS, packageZip } from "@sunfathom/quiz";
import { strFromU8, unzipSync } from "fflate";
import { chromium } from "playwright-core";
import { intoVersion3 } from "./into-version-3.mjs";

const PER_LEVEL = Number(process.argv[2] ?? 30);
const version = process.argv[3] ?? "3.0";
const player = readFileSync(new URL("../cdn/index.js", import.meta.resolve("@citolab/qti-components")));

const items = LEVELS.flatMap((level) =>
  itemsFor({ seed: "play", level, count: PER_LEVEL, units: "metric", language: "en" }),
).map((item, i) => ({ ...item, id: `q${i + 1}` }));
const zip = Buffer.concat([...packageZip(items, { version, language: "en", title: "play", keys: true })]);
const played = version === "2.1" ? intoVersion3(zip) : zip;
const files = new Map(Object.entries(unzipSync(played)).map(([path, bytes]) => [path, strFromU8(bytes)]));

/** The right response and wrong ones, as QTI writes them. */
function responsesOf(item) {
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice": {
      const ids = (right) => item.options.filter((o) => o.right === right).map(({ id }) => id);
      const wrong = item.interaction === "single_choice" ? ids(false).map((id) => [id]) : [ids(false)];
      return { right: ids(true), wrong };
    }
    case "numeric": {
      const foreseen = item.anticipated.map(({ low, high }) => (low + high) / 2);
      return { right: String(item.value), wrong: [item.accepted.high + 1, ...foreseen].map(String) };
    }
    case "ordering":
      return { right: item.right_order, wrong: [[...item.right_order].reverse()] };
    case "matching": {
      const turned = item.pairs.map(
        ({ left }, i) => `${left} ${item.pairs[(i + 1) % item.pairs.length].right}`,
      );
      return { right: item.pairs.map(({ left, right }) => `${left} ${right}`), wrong: [turned] };
    }
  }
}

const server = createServer((request, reply) => {
  const isPlayer = request.url === "/player.js";
  reply.setHeader("content-type", isPlayer ? "text/javascript" : "text/html");
  reply.end(isPlayer ? player : '<!doctype html><script type="module" src="/player.js"></script>');
});
await new Promise((listening) => server.listen(0, "127.0.0.1", listening));
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox"],
});
const page = await browser.newPage();
const errors = [];
page.on("pageerror", (error) => errors.push(error.message));
await page.goto(`http://127.0.0.1:${server.address().port}/`);
await page.waitForFunction(() => customElements.get("item-container") !== undefined);

async function show(markup) {
  await page.evaluate((itemXML) => {
    document.querySelector("qti-item")?.remove();
    const container = Object.assign(document.createElement("item-container"), { itemXML });
    const shown = document.createElement("qti-item");
    shown.append(container);
    document.body.append(shown);
  }, markup);
  await page.locator("qti-assessment-item").waitFor();
}

async function respond({ interaction }, response) {
  if (interaction === "numeric") {
    const field = page.locator("qti-text-entry-interaction input");
    await field.pressSequentially(response);
    await field.press("Tab");
  } else if (interaction === "single_choice" || interaction === "multiple_choice") {
    for (const id of response) await page.locator(`qti-simple-choice[identifier="${id}"]`).click();
  } else {
    const item = page.locator("qti-assessment-item");
    await item.evaluate((shown, value) => shown.updateResponseVariable("RESPONSE", value), response);
  }
}

const score = () =>
  page.locator("qti-assessment-item").evaluate((item) => {
    item.processResponse();
    return { score: Number(item.getOutcome("SCORE").value), feedback: item.getOutcome("FEEDBACK").value };
  });

async function play(item, response) {
  await show(files.get(`items/${item.id}.xml`));
  await respond(item, response);
  return score();
}

const tally = {};
const failures = [];
for (const item of items) {
  const { right, wrong } = responsesOf(item);
  tally[item.interaction] ??= { questions: 0, right_scored_1: 0, wrong: 0, wrong_scored_0: 0 };
  const count = tally[item.interaction];
  count.questions++;
  const best = await play(item, right);
  if (best.score === 1 && best.feedback?.length > 0) count.right_scored_1++;
  else failures.push({ item: item.id, template: item.template, response: right, ...best });
  for (const response of wrong) {
    count.wrong++;
    const result = await play(item, response);
    if (result.score === 0 && result.feedback?.length > 0) count.wrong_scored_0++;
    else failures.push({ item: item.id, template: item.template, response, ...result });
  }
}
await browser.close();
server.close();
console.table(tally);
for (const failure of failures) console.error(failure);
if (errors.length > 0) console.error("errors of the page:", [...new Set(errors)]);
process.exitCode = failures.length + errors.length > 0 ? 1 : 0;
