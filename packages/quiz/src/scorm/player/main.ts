// The player of a practice package: the first page is in the markup, and everything behind it is made here. One thing is shown at
// a time, and nothing lies over another.
import type { Paper } from "../paper.js";
import { button, h } from "./dom.js";
import { Platform } from "./platform.js";
import { questionOf } from "./question.js";
import { resultsOf } from "./results.js";
import { Session } from "./session.js";

const found = <Kind extends Element>(selector: string): Kind => {
  const element = document.querySelector<Kind>(selector);
  if (element === null) throw new Error(`The page has no ${selector}.`);
  return element;
};

const paper = JSON.parse(found("#paper").textContent ?? "") as Paper;
const session = new Session(paper, Platform.find());
const { say } = paper;
const main = found<HTMLElement>("main");
const last = session.items.length - 1;

/** In place of what was there, with the heading told to those who listen. */
function show(...parts: HTMLElement[]): void {
  main.replaceChildren(...parts);
  main.querySelector("h1")?.focus();
  window.scrollTo(0, 0);
}

function open(place: number): void {
  session.see(place);
  const ways = h("nav", { "aria-label": say.results });
  const offer = (): void => {
    const onward =
      place < last ? button(say.next, () => open(place + 1), "next") : button(say.toResults, results, "next");
    ways.replaceChildren(
      ...(place > 0 ? [button(say.back, () => open(place - 1), "back")] : []),
      ...(session.isFinished && place < last ? [button(say.toResults, results, "results")] : []),
      onward,
    );
  };
  const question = questionOf(session, place, offer);
  offer();
  show(question, ways);
}

function results(): void {
  const finish = (): void => {
    session.finish();
    results();
  };
  show(resultsOf(session, { open, finish }));
}

const firstBlank = session.items.findIndex((item) => session.responseTo(item) === undefined);
const begin = (): void => (session.isFinished ? results() : open(Math.max(0, firstBlank)));
if (!session.platform.isConnected) main.append(h("p", { class: "status" }, say.notConnected));
main.append(button(session.hasBegun || session.isFinished ? say.resume : say.start, begin));
// The last thing that every browser says when a page goes, also by the way back.
window.addEventListener("pagehide", () => session.close());
window.addEventListener("pageshow", ({ persisted }) => {
  if (persisted) window.location.reload();
});
