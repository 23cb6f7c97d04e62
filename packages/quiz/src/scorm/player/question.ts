/** One question: its field, and once it is answered the mark, what is said to it and the worked solution. */
import { beforeSolution } from "../../item/before-solution.js";
import type { PracticeItem } from "../paper.js";
import { button, fill, h } from "./dom.js";
import { fieldOf } from "./fields.js";
import type { Session } from "./session.js";

/** With the decimal mark of the language, and no more decimals than tell anything. */
export const shown = (score: number, mark: string): string =>
  String(Math.round(score * 100) / 100).replace(".", mark);

/** @param answered once there is a mark */
export function questionOf(session: Session, place: number, answered: () => void): HTMLElement {
  const { say, items, words } = session.paper;
  const asked = items[place] as PracticeItem;
  const { item } = asked;
  const field = fieldOf(item, say);
  const status = h("p", { class: "status", role: "status" });
  const told = h("section", { class: "told", tabindex: -1 });
  const check = button(say.check, () => {
    const found = field.read();
    if ("hint" in found) {
      status.textContent = found.hint;
      return;
    }
    if (Object.keys(found.response).length === 0) {
      status.textContent = words.blank;
      return;
    }
    session.answer(item, found.response);
    close();
    told.focus();
    answered();
  });

  const close = (): void => {
    field.lock();
    check.remove();
    status.textContent = "";
    told.replaceChildren(...mark(session, asked));
    shownWhole.classList.add("marked");
  };

  const shownWhole = h(
    "article",
    {},
    h("h1", { tabindex: -1 }, fill(say.question, { n: place + 1, count: items.length })),
    h(
      "fieldset",
      {},
      h("legend", {}, item.stem),
      ...(asked.picture && item.picture ? [h("img", { src: asked.picture, alt: item.picture.alt })] : []),
      field.element,
    ),
    check,
    status,
    told,
    ...(asked.cautions.length === 0
      ? []
      : [h("aside", {}, h("h2", {}, say.takeCare), ...asked.cautions.map((text) => h("p", {}, text)))]),
  );
  const given = session.responseTo(item);
  if (given) {
    field.show(given);
    close();
  } else if (session.isFinished) {
    field.lock();
    check.remove();
    status.textContent = words.blank;
  }
  return shownWhole;
}

function mark(session: Session, { item, sources }: PracticeItem): HTMLElement[] {
  const { say } = session.paper;
  const { score, right, feedback, solution } = session.gradeOf(item);
  const verdict = right ? "right" : score > 0 ? "partlyRight" : "wrong";
  const named = (about: string | undefined): string => {
    const option = "options" in item ? item.options.find(({ id }) => id === about) : undefined;
    return option && item.interaction === "multiple_choice" ? `${option.text}: ` : "";
  };
  return [
    h(
      "h2",
      { class: verdict },
      `${fill(say.scoreOfQuestion, { score: shown(score, say.decimalMark) })}, ${say[verdict]}`,
    ),
    ...feedback.map(({ about, text }) => h("p", {}, named(about) + beforeSolution(text, item))),
    ...(solution
      ? [
          h("h3", {}, say.solution),
          h("ol", {}, ...solution.steps.map((step) => h("li", {}, step))),
          h("p", { class: "sources" }, sources),
        ]
      : []),
  ];
}
