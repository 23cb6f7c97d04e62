// Plays a practice package as a learner does, with clicks, typing and dragging, in a browser within a run-time of others, and holds
// it to what the service says of the same answers.
import type { FastifyInstance } from "fastify";
import type { Browser, Frame, Locator, Page } from "playwright-core";
import { expect } from "vitest";
import type { Response } from "../../packages/quiz/src/grade/response.js";
import { type Item, isBlank } from "../../packages/quiz/src/index.js";
import { responsesTo, type Way } from "./answers.js";
import { type Asked, marksOf, opened, zipOf } from "./packages.js";
import { type Call, openPlatform, type Platform } from "./platform.js";

/** Drags with the mouse from the middle of one element to the middle of another. */
async function drag(page: Page, from: Locator, to: Locator): Promise<void> {
  const middle = async (element: Locator) => {
    await element.scrollIntoViewIfNeeded();
    const box = await element.boundingBox();
    if (box === null) throw new Error("What is to be dragged is not shown.");
    return [box.x + box.width / 2, box.y + box.height / 2] as const;
  };
  const target = await middle(to);
  await page.mouse.move(...(await middle(from)));
  await page.mouse.down();
  await page.mouse.move(target[0], target[1], { steps: 4 });
  await page.mouse.up();
}

async function act(page: Page, content: Frame, response: Response): Promise<void> {
  const { choices = [], typed, order = [], pairs = [] } = response;
  for (const id of choices) await content.locator(`label:has(input[value="${id}"])`).click();
  if (typed !== undefined) await content.locator("#number").pressSequentially(typed);
  const put = [
    ...order.map((entry, i) => ({ entry, place: String(i) })),
    ...pairs.map(({ left, right }) => ({ entry: right, place: left })),
  ];
  for (const { entry, place } of put) {
    await drag(
      page,
      content.locator(`.entry[data-entry="${entry}"]`),
      content.locator(`.place[data-place="${place}"] .label`),
    );
  }
}

const lastSet = (calls: readonly Call[], element: string): string | undefined =>
  calls.filter(({ name, parameters }) => name === "LMSSetValue" && parameters[0] === element).at(-1)
    ?.parameters[1];

/** What the run-time was told of each question, by its id, once. */
function toldOf(calls: readonly Call[]): Map<string, { type: string; result: string; response: string }> {
  const told = new Map<string, { type: string; result: string; response: string }>();
  for (let i = 0; ; i++) {
    const at = `cmi.interactions.${i}`;
    const id = lastSet(calls, `${at}.id`);
    if (id === undefined) {
      if (
        i > 1000 ||
        !calls.some(({ parameters }) => parameters[0]?.startsWith(`cmi.interactions.${i + 1}.`))
      )
        return told;
      continue;
    }
    const item = id.split("_")[0] ?? "";
    expect(told.has(item), `${item} told twice`).toBe(false);
    told.set(item, {
      type: lastSet(calls, `${at}.type`) ?? "",
      result: lastSet(calls, `${at}.result`) ?? "",
      response: lastSet(calls, `${at}.student_response`) ?? "",
    });
  }
}

const scoreIn = (result: string): number =>
  result === "correct" ? 1 : result === "wrong" ? 0 : Number(result);

/** ADL, SCORM 1.2 Run-Time Environment: what each kind of response is written in. */
const WRITTEN: Readonly<Record<string, RegExp>> = {
  choice: /^[0-9a-z](,[0-9a-z])*$/,
  numeric: /^-?\d+(\.\d+)?$/,
  sequencing: /^[0-9a-z](,[0-9a-z])*$/,
  matching: /^[0-9a-z]\.[0-9a-z](,[0-9a-z]\.[0-9a-z])*$/,
};

/** Half of a paper, then the learner leaves and comes back: what was answered is still there. */
async function comeBack(platform: Platform, answered: number): Promise<Call[]> {
  const kept = await platform.leave();
  const calls = await platform.calls();
  await platform.launch(kept);
  const content = platform.content();
  await content.locator("main > button").click();
  // The first that is blank.
  await content.getByText(new RegExp(`^Question ${answered + 1} of`)).waitFor();
  return calls;
}

export interface Tally {
  /** Answers by what they earned. */
  right: number;
  partly: number;
  wrong: number;
  blank: number;
}

/** Draws a package, plays it in three ways, and checks each mark, text and report. @returns how many answers earned what */
export async function playPackage(app: FastifyInstance, browser: Browser, asked: Asked): Promise<Tally> {
  const { files, items } = opened(await zipOf(app, asked));
  const tally: Tally = { right: 0, partly: 0, wrong: 0, blank: 0 };
  for (const way of ["right", "wrong", "mixed"] as const) {
    const platform = await openPlatform(browser, files);
    try {
      await playOnce({ app, asked, items, files, way, platform, tally });
    } finally {
      await platform.close();
    }
  }
  return tally;
}

interface Game {
  app: FastifyInstance;
  asked: Asked;
  items: readonly Item[];
  files: ReadonlyMap<string, Uint8Array>;
  way: Way;
  platform: Platform;
  tally: Tally;
}

async function playOnce({ app, asked, items, files, way, platform, tally }: Game): Promise<void> {
  const responses = responsesTo(items, way);
  const sent = items.map(({ id }, i) => ({ item: id, ...responses[i] }));
  const marks = await marksOf(app, asked, sent);
  const marked = new Map(marks.grades.map((grade) => [grade.item, grade]));
  const before: Call[] = [];
  await platform.launch();
  await platform.content().locator("main > button").click();
  const half = Math.floor(items.length / 2);
  for (const [i, item] of items.entries()) {
    if (way === "right" && i === half && i > 0) before.push(...(await comeBack(platform, i)));
    const content = platform.content();
    await content.getByText(`Question ${i + 1} of ${items.length}`, { exact: true }).waitFor();
    expect(await content.locator("legend").textContent()).toBe(item.stem);
    const picture = content.locator("fieldset > img");
    expect(await picture.count()).toBe(item.picture ? 1 : 0);
    if (item.picture) {
      expect(await picture.getAttribute("alt")).toBe(item.picture.alt);
      expect(
        await picture.evaluate((image: HTMLImageElement) => image.decode().then(() => image.naturalWidth)),
      ).toBeGreaterThan(0);
    }
    const response = responses[i] ?? {};
    await act(platform.page, content, response);
    await content.locator("article > button.main").click();
    const grade = marked.get(item.id);
    if (grade === undefined) throw new Error(`The service did not mark ${item.id}.`);
    const told = content.locator(".told");
    if (isBlank(response)) {
      tally.blank++;
      // A blank is told that it is one, and no more.
      expect(await content.locator("[role=status]").textContent()).toBe(grade.feedback[0]?.text);
      expect(await told.textContent()).toBe("");
    } else {
      const text = (await told.textContent()) ?? "";
      for (const step of grade.solution?.steps ?? []) expect(text).toContain(step);
      expect(grade.solution?.steps.length).toBeGreaterThan(0);
      const [first] = grade.feedback;
      const last = ` ${grade.solution?.steps.at(-1)}`;
      expect(text).toContain(first?.text.replace(last, ""));
      // Once marked, an answer stays.
      expect(await content.locator("article > button.main").count()).toBe(0);
      if (grade.score === 1) tally.right++;
      else if (grade.score > 0) tally.partly++;
      else tally.wrong++;
    }
    expect(await content.locator("dialog, [role=dialog]").count()).toBe(0);
    await content.locator("button.next").click();
  }
  const content = platform.content();
  const finish = content.locator("article > button.main");
  expect(await finish.count()).toBe(marks.unanswered.length > 0 ? 1 : 0);
  if (marks.unanswered.length > 0) await finish.click();
  await content.getByText("The learning platform has your result.").waitFor();
  const kept = await platform.leave();
  const calls = [...before, ...(await platform.calls())];

  // Nothing that the run-time was told or asked did it refuse.
  expect(calls.filter(({ error }) => error !== "0")).toEqual([]);
  expect(calls.filter(({ name, result }) => name !== "LMSGetValue" && result !== "true")).toEqual([]);
  const told = toldOf(calls);
  expect([...told.keys()].sort()).toEqual(
    items
      .map(({ id }) => id)
      .filter((id) => !marks.unanswered.includes(id))
      .sort(),
  );
  for (const [id, { result, response, type }] of told) {
    expect(scoreIn(result), `${id} ${way}`).toBeCloseTo(marked.get(id)?.score ?? Number.NaN, 4);
    expect(response).toMatch(WRITTEN[type] ?? /^$/);
    expect(response.length).toBeLessThan(256);
  }
  const last = (element: string) => lastSet(calls, `cmi.core.${element}`);
  // The package rounds a percentage to 0.01, the service a score to 0.0001.
  const off = Number(last("score.raw")) - (100 * marks.score) / marks.max_score;
  expect(Math.abs(off), `${last("score.raw")} for ${marks.score}`).toBeLessThan(
    0.005 + 0.005 / marks.max_score + 1e-9,
  );
  expect([last("score.min"), last("score.max")]).toEqual(["0", "100"]);
  expect(last("lesson_status")).toBe("completed");
  expect(last("session_time")).toMatch(/^\d{2,4}:\d\d:\d\d$/);
  expect((lastSet(calls, "cmi.suspend_data") ?? "").length).toBeLessThan(4096);
  expect(kept.cmi["core"]).toMatchObject({ lesson_status: "completed" });

  // Nothing was fetched but the platform's own page and what the package holds, nothing from elsewhere.
  expect(platform.errors).toEqual([]);
  const own = new Set(["", "runtime.js", "shell.js", "shell.css", "favicon.ico"]);
  const strays = platform.asked
    .filter((url) => !url.startsWith("data:") && url !== "about:blank")
    .map((url) => url.replace(`${platform.origin}/`, ""))
    .filter((path) => !own.has(path) && !files.has(path.replace("package/", "")));
  expect(strays).toEqual([]);
}
