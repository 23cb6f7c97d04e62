// What a practice package keeps to however it is used: from a disk without any platform, on a narrow screen, by the keyboard alone,
// and where an answer has a form that cannot be marked.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import type { FastifyInstance } from "fastify";
import { type Browser, chromium as engine, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Item } from "../../packages/quiz/src/index.js";
import { chromium, launchOptions } from "./browser.js";
import { opened, startService, zipOf } from "./packages.js";

const asked = {
  level: "working",
  count: 30,
  seed: "by hand",
  templates: ["red_reach", "safe_batteries", "lamp_falloff", "order_of_dive", "auto_settings"],
};

let app: FastifyInstance;
let browser: Browser;
let folder: string;
let items: Item[];
beforeAll(async () => {
  if (chromium === undefined) return;
  app = await startService();
  browser = await engine.launch(launchOptions);
  folder = mkdtempSync(join(tmpdir(), "scorm-"));
  const { files, items: packed } = opened(await zipOf(app, { ...asked, count: 10 }));
  items = packed;
  for (const [path, content] of files) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
});
afterAll(async () => {
  await browser?.close();
  await app?.close();
  if (folder) rmSync(folder, { recursive: true });
});

/** The package as it is opened from a disk, without a network. */
async function fromDisk(
  colorScheme: "light" | "dark" = "light",
): Promise<{ page: Page; asked: string[]; errors: string[] }> {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    colorScheme,
    offline: true,
  });
  const page = await context.newPage();
  const urls: string[] = [];
  const errors: string[] = [];
  page.on("request", (request) => urls.push(request.url()));
  page.on("pageerror", ({ message }) => errors.push(message));
  page.on("console", (message) => errors.push(message.text()));
  await page.goto(pathToFileURL(join(folder, "index.html")).href);
  return { page, asked: urls, errors };
}

const placeOf = (interaction: Item["interaction"]): number =>
  items.findIndex((item) => item.interaction === interaction);

/** Goes to the first question of a kind. */
async function goTo(page: Page, interaction: Item["interaction"]): Promise<Item> {
  const place = placeOf(interaction);
  await page.locator("main > button").click();
  for (let i = 0; i < place; i++) await page.locator("button.next").click();
  return items[place] as Item;
}

describe.skipIf(chromium === undefined)("a practice package", () => {
  it("says on its first page that it is for practice, with the cautions before the questions", async () => {
    const { page } = await fromDisk();
    const text = (await page.locator("main").textContent()) ?? "";
    expect(text).toContain("This is for practice.");
    expect(text).toContain("the right answers are inside it");
    expect(text).toContain("not a dive plan");
    expect(text).toContain("No learning platform is connected");
    await page.context().close();
  });

  it.each(["light", "dark"] as const)(
    "fits 360 px, is read in %s, and asks for nothing but its files",
    async (scheme) => {
      const { page, asked: urls, errors } = await fromDisk(scheme);
      await page.locator("main > button").click();
      for (let i = 0; i < items.length; i++) {
        expect(
          await page.evaluate(() => document.documentElement.scrollWidth),
          items[i]?.template,
        ).toBeLessThanOrEqual(360);
        expect(await contrasts(page), items[i]?.template).toEqual([]);
        await page.locator("button.next").click();
      }
      expect(await page.locator("h1").textContent()).toBe("Results");
      expect(await contrasts(page)).toEqual([]);
      expect(errors).toEqual([]);
      const home = pathToFileURL(folder).href;
      expect(urls.filter((url) => !url.startsWith(`${home}/`) && !url.startsWith("data:"))).toEqual([]);
      await page.context().close();
    },
  );

  it("is answered by the keyboard alone", async () => {
    const { page } = await fromDisk();
    const item = await goTo(page, "ordering");
    if (item.interaction !== "ordering") throw new Error("There is no ordering.");
    const { keyboard } = page;
    for (const [i, id] of item.right_order.entries()) {
      await tabTo(page, `select[data-place="${i}"]`);
      const list = page.locator(`select[data-place="${i}"]`);
      for (let step = 0; step < item.entries.length && (await list.inputValue()) !== id; step++)
        await keyboard.press("ArrowDown");
    }
    await tabTo(page, "article > button.main");
    await keyboard.press("Enter");
    expect(await page.locator(".told h2").textContent()).toBe("Score: 1 of 1, right");
    // What is told has the focus, so that it is read out.
    expect(await page.evaluate(() => document.activeElement?.className)).toBe("told");
    await page.context().close();
  });

  it("names every field for those who do not see it", async () => {
    const { page } = await fromDisk();
    for (const interaction of ["numeric", "ordering", "matching", "single_choice"] as const) {
      await page.reload();
      const item = await goTo(page, interaction);
      await page.getByRole("group", { name: item.stem }).waitFor();
      if (item.interaction === "numeric") await page.getByRole("textbox", { name: item.unit }).waitFor();
      if (item.interaction === "matching")
        for (const { text } of item.left) await page.getByRole("combobox", { name: text }).waitFor();
      if (item.interaction === "ordering") await page.getByRole("combobox", { name: "Place 1" }).waitFor();
      if (item.interaction === "single_choice")
        for (const { text } of item.options)
          await page.getByRole("radio", { name: text, exact: true }).waitFor();
    }
    await page.context().close();
  });

  it("says what is wrong with the form of an answer, marks nothing, and takes it once it is mended", async () => {
    const { page } = await fromDisk();
    const item = await goTo(page, "numeric");
    if (item.interaction !== "numeric") throw new Error("There is no numeric question.");
    const field = page.locator("#number");
    const said = async (typed: string) => {
      await field.fill("");
      await field.pressSequentially(typed);
      await page.locator("article > button.main").click();
      expect(await page.locator(".told").textContent()).toBe("");
      return page.locator("[role=status]").textContent();
    };
    expect(await said("much")).toBe("Answer with a number.");
    expect(await said("1,234")).toContain("could mean two numbers");
    expect(await said("3 furlongs")).toContain(item.unit);
    expect(await said("  ")).toBe("You left this one blank.");
    await field.fill(String(item.value).replace(".", ","));
    await page.locator("article > button.main").click();
    expect(await page.locator(".told h2").textContent()).toBe("Score: 1 of 1, right");
    await page.context().close();
  });

  it("takes an order only whole, and an entry back where it came from", async () => {
    const { page } = await fromDisk();
    const item = await goTo(page, "ordering");
    if (item.interaction !== "ordering") throw new Error("There is no ordering.");
    const [first] = item.entries;
    await page.locator('select[data-place="0"]').selectOption(first?.id ?? "");
    await page.locator("article > button.main").click();
    expect(await page.locator("[role=status]").textContent()).toBe("Put every entry in the order.");
    // An entry has one place: no other list offers it until it is free again.
    const again = page.locator(`select[data-place="2"] option[value="${first?.id}"]`);
    expect(await again.isDisabled()).toBe(true);
    await page.locator('select[data-place="0"]').selectOption("");
    expect(await again.isDisabled()).toBe(false);
    expect(await page.locator(".pool .entry").count()).toBe(item.entries.length);
    await page.context().close();
  });
});

/** Presses Tab until an element has the focus. */
async function tabTo(page: Page, selector: string): Promise<void> {
  for (let i = 0; i < 60; i++) {
    await page.keyboard.press("Tab");
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, selector)) return;
  }
  throw new Error(`Tab never comes to ${selector}.`);
}

/** W3C, Web Content Accessibility Guidelines 2.2, 1.4.3: texts that stand out from what is behind them by less than 4.5 to 1. */
function contrasts(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const numbers = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
    const luminance = (colour: string): number => {
      const [r = 0, g = 0, b = 0] = numbers(colour).map((value) => {
        const share = value / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const behind = (element: Element | null): string => {
      for (let at = element; at !== null; at = at.parentElement) {
        const colour = getComputedStyle(at).backgroundColor;
        if ((numbers(colour)[3] ?? 1) > 0) return colour;
      }
      return "rgb(255, 255, 255)";
    };
    return [...document.querySelectorAll("main *")].flatMap((element) => {
      const own = [...element.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && (node.textContent ?? "").trim() !== "",
      );
      // What cannot be used needs no contrast, and an option of a list is the browser's own.
      if (!own || element.matches(":disabled, option")) return [];
      const [one, other] = [getComputedStyle(element).color, behind(element)]
        .map(luminance)
        .sort((a, b) => b - a);
      const ratio = ((one ?? 1) + 0.05) / ((other ?? 1) + 0.05);
      return ratio < 4.5 ? [`${element.tagName} ${element.className}: ${ratio.toFixed(2)}`] : [];
    });
  });
}
