// Plays a package in Chromium with an open-source player that this project has no part in, and says what it scored: right, wrong
// and partly right answers and blanks must score as the service scores them, with feedback shown. Choices are clicked and numbers
// typed; orders and pairs are handed to the player as responses. Run after a build, with Chromium at /usr/bin/chromium or at
// $CHROMIUM:
//   node packages/quiz/scripts/play-in-browser.mjs [questions per level] [seed]
import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import { gradePaper, itemsFor, LEVELS, packageZip } from "@sunfathom/quiz";
import { strFromU8, unzipSync } from "fflate";
import { chromium } from "playwright-core";

const PER_LEVEL = Number(process.argv[2] ?? 30);
const seed = process.argv[3] ?? "play";
const player = readFileSync(new URL("../cdn/index.js", import.meta.resolve("@citolab/qti-components")));

const items = LEVELS.flatMap((level) =>
  itemsFor({ seed, level, count: PER_LEVEL, units: "metric", language: "en" }),
).map((item, i) => ({ ...item, id: `q${i + 1}` }));
const zip = Buffer.concat([
  ...packageZip(items, { version: "3.0", language: "en", title: "play", keys: true }),
]);
const files = new Map(Object.entries(unzipSync(zip)).map(([path, bytes]) => [path, strFromU8(bytes)]));

/** Responses to try, right, wrong and right in part, as the service takes them. */
function responsesOf(item) {
  switch (item.interaction) {
    case "single_choice":
      return item.options.map(({ id }) => ({ choices: [id] }));
    case "multiple_choice": {
      const ids = (right) => item.options.filter((o) => o.right === right).map(({ id }) => id);
      return [ids(true), ids(false), ids(true).slice(0, 1), [...ids(true), ...ids(false).slice(0, 1)]].map(
        (choices) => ({ choices }),
      );
    }
    case "numeric": {
      const foreseen = item.anticipated.map(({ low, high }) => (low + high) / 2);
      const { low, high } = item.accepted;
      return [item.value, low, high, high + 1, ...foreseen].map((number) => ({ number }));
    }
    case "ordering": {
      const [first, second, ...rest] = item.right_order;
      const orders = [
        item.right_order,
        [...item.right_order].reverse(),
        [second, first, ...rest],
        [second, ...rest, first],
      ];
      return orders.map((order) => ({ order }));
    }
    case "matching": {
      const turned = item.pairs.map(({ left }, i) => ({
        left,
        right: item.pairs[(i + 1) % item.pairs.length].right,
      }));
      return [item.pairs, turned, item.pairs.slice(1)].map((pairs) => ({ pairs }));
    }
  }
}

/** The same as QTI writes it. */
const inQti = ({ choices, number, order, pairs }) =>
  choices ??
  order ??
  pairs?.map(({ left, right }) => `${left} ${right}`) ??
  (number === undefined ? [] : String(number));

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
    if (response.length > 0) await field.pressSequentially(response);
    await field.press("Tab");
  } else if (interaction === "single_choice" || interaction === "multiple_choice") {
    for (const id of response) await page.locator(`qti-simple-choice[identifier="${id}"]`).click();
  } else if (response.length > 0) {
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

/** Scores to a thousandth: the player rounds what it maps to that. */
const alike = (one, other) => Math.abs(one - other) < 1e-3;

const tally = {};
const failures = [];
for (const item of items) {
  tally[item.interaction] ??= { questions: 0, tried: 0, partly: 0, alike: 0 };
  const count = tally[item.interaction];
  count.questions++;
  for (const response of [...responsesOf(item), {}]) {
    const marked = gradePaper([item], [{ item: item.id, ...response }]).score;
    const result = await play(item, inQti(response));
    count.tried++;
    if (marked > 0 && marked < 1) count.partly++;
    if (alike(result.score, marked) && result.feedback?.length > 0) count.alike++;
    else failures.push({ item: item.id, template: item.template, response, marked, ...result });
  }
}
await browser.close();
server.close();
console.table(tally);
for (const failure of failures) console.error(failure);
if (errors.length > 0) console.error("errors of the page:", [...new Set(errors)]);
process.exitCode = failures.length + errors.length > 0 ? 1 : 0;
