import { createRequire } from "node:module";
import { join } from "node:path";
import { find, freshProject } from "./project.mjs";

/** What loading the page may transfer, description included. */
const mostBytes = 400_000;

/** @typedef {any} Page of playwright-core, which is installed where it runs, and not here */

/**
 * The page of the reference as a person uses it: it fits the screen, its search finds calls, every call's button works at the first
 * press, its samples and guides are there.
 * @param {number} width of the screen, CSS pixels
 * @returns {import("../consumers.mjs").Check}
 */
function pressedThrough(width) {
  return {
    name: `/docs in Chromium, ${width} px wide`,
    run: async (place) => {
      const executablePath = find("chromium");
      if (executablePath === undefined) return "ABSENT: no program called chromium";
      const project = await freshProject(place, `documentation-${width}`, ["playwright-core@1.65.1"]);
      const { chromium } = createRequire(join(project, "package.json"))("playwright-core");
      const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
      try {
        const page = await browser.newPage({ viewport: { width, height: 844 } });
        return await press(page, place.baseUrl);
      } finally {
        await browser.close();
      }
    },
  };
}

/** @param {Page} page @param {string} baseUrl */
async function press(page, baseUrl) {
  /** @type {string[]} */
  const wrong = [];
  page.on("pageerror", ({ message }) => wrong.push(message));
  const bytes = await loaded(page, `${baseUrl}/docs`);
  if (bytes > mostBytes) wrong.push(`${bytes} bytes to load`);
  wrong.push(...(await tooWide(page, "the page")));
  wrong.push(...(await searched(page)));
  const calls = await callsOf(baseUrl);
  for (const call of calls) wrong.push(...(await tried(page, call)));
  const guides = await page
    .locator("#guides li a[href*='docs/guides/']")
    .evaluateAll((links) => links.map((link) => /** @type {HTMLAnchorElement} */ (link).href));
  if (guides.length < 6) wrong.push(`only ${guides.length} guides`);
  for (const guide of guides) {
    const response = await page.goto(guide);
    if (response?.status() !== 200) wrong.push(`${guide}: ${response?.status()}`);
    wrong.push(...(await tooWide(page, guide)));
  }
  if (wrong.length > 0) throw new Error(wrong.join("\n"));
  return `${Math.round(bytes / 1000)} kB to load; ${calls.length} calls answered at the first press, ${guides.length} guides`;
}

/** Opens the page. @param {Page} page @param {string} url @returns {Promise<number>} what that transferred */
async function loaded(page, url) {
  const network = await page.context().newCDPSession(page);
  await network.send("Network.enable");
  let bytes = 0;
  network.on("Network.loadingFinished", ({ encodedDataLength }) => {
    bytes += encodedDataLength;
  });
  await page.goto(url, { waitUntil: "networkidle" });
  await page.locator("#find").waitFor();
  return bytes;
}

/** @param {Page} page @param {string} what */
async function tooWide(page, what) {
  const { whole, seen } = await page.evaluate(() => ({
    whole: document.documentElement.scrollWidth,
    seen: window.innerWidth,
  }));
  return whole > seen ? [`${what} is ${whole} px wide on a screen of ${seen} px`] : [];
}

/** By what a call does, and by fields that it takes, some of them within others. @param {Page} page */
async function searched(page) {
  const wrong = [];
  for (const [words, wanted] of [
    ["filter to mount", "POST /v1/filter-choice"],
    ["kit lamps", "POST /v1/dive-advice"],
    ["lamp_count", "GET /v1/dive-advice"],
  ]) {
    await page.fill("#find", words);
    const found = await page.locator("#found li").allTextContents();
    if (!found.some((title) => title.startsWith(`${wanted}:`))) wrong.push(`"${words}" finds no ${wanted}`);
  }
  await page.fill("#find", "filter to mount");
  await page.locator("#found a").first().click();
  await page.waitForURL(/route=post-\/v1\/filter-choice$/);
  return wrong;
}

/** Every call of the description, as the page names it. @param {string} baseUrl @returns {Promise<string[]>} */
async function callsOf(baseUrl) {
  const { paths } = await (await fetch(`${baseUrl}/openapi.json`)).json();
  return Object.entries(paths).flatMap(([path, methods]) =>
    Object.keys(methods).map((method) => `${method}-${path.replace(/[{}]/g, "-")}`),
  );
}

/** Presses a call's button with what the form holds, and looks at its samples. @param {Page} page @param {string} call */
async function tried(page, call) {
  await page.evaluate((route) => {
    /** @type {any} */ (document.querySelector("openapi-explorer")).scrollTo(route);
  }, call);
  const shown = page.locator(`[id='${call}']`).first();
  const [method = "", path = ""] = call.split(/-(\/.*)/);
  const button = shown.locator(".btn-execute").first();
  await button.waitFor();
  const [response] = await Promise.all([
    page.waitForResponse(
      (answer) =>
        answer.request().method() === method.toUpperCase() &&
        new URL(answer.url()).pathname.startsWith(path.replace(/-[a-z]+-$/, "")),
      { timeout: 60_000 },
    ),
    button.click(),
  ]);
  const samples = await shown.locator(".tab-btn").allTextContents();
  const wrong = await tooWide(page, call);
  if (response.status() !== 200)
    wrong.push(`${call}: ${response.status()} at the first press: ${(await response.text()).slice(0, 300)}`);
  if (!samples.some((name) => name.trim() === "curl")) wrong.push(`${call} has no sample of curl`);
  if (path.startsWith("/v1/") && !samples.some((name) => name.trim() === "TypeScript"))
    wrong.push(`${call} has no sample of TypeScript`);
  return wrong;
}

export const documentationChecks = [pressedThrough(390), pressedThrough(1280)];
