/** How the learner did, question by question, and what is left blank. */
import { button, fill, h } from "./dom.js";
import { shown } from "./question.js";
import type { Session } from "./session.js";

interface Ways {
  /** Shows a question. */
  open(place: number): void;
  /** Leaves blanks blank. */
  finish(): void;
}

export function resultsOf(session: Session, { open, finish }: Ways): HTMLElement {
  const { say } = session.paper;
  const { items, blanks, isFinished, platform } = session;
  const verdictOf = (item: (typeof items)[number]): "right" | "partlyRight" | "wrong" | "blank" => {
    if (session.responseTo(item) === undefined) return "blank";
    const { right, score } = session.gradeOf(item);
    return right ? "right" : score > 0 ? "partlyRight" : "wrong";
  };
  const kept = platform.takesAll ? say.saved : say.notSaved;
  return h(
    "article",
    {},
    h("h1", { tabindex: -1 }, say.results),
    h(
      "p",
      { class: "score" },
      fill(say.scoreOfPaper, {
        score: shown(session.score, say.decimalMark),
        count: items.length,
        percent: shown(session.percent, say.decimalMark),
      }),
    ),
    h("p", { role: "status" }, isFinished ? say.finished : fill(say.blanksLeft, { count: blanks.length })),
    ...(isFinished ? [h("p", {}, platform.isConnected ? kept : say.notConnected)] : []),
    ...(isFinished ? [] : [button(say.finish, finish)]),
    h("h2", {}, say.yourAnswer),
    h(
      "ol",
      { class: "list" },
      ...items.map((item, i) => {
        const verdict = verdictOf(item);
        const text = fill(say.question, { n: i + 1, count: items.length });
        const link = button(text, () => open(i), "link");
        return h("li", {}, link, h("span", { class: verdict }, say[verdict]));
      }),
    ),
  );
}
