/** What was answered, as text that a platform keeps: SCORM 1.2 gives 4096 characters for it (`cmi.suspend_data`). */
import type { Response } from "../../grade/response.js";
import type { Item } from "../../item/item.js";

export interface Progress {
  /** By the question's id; blanks have no entry. */
  responses: Map<string, Response>;
  /** Whether the learner has handed in what there is. */
  finished: boolean;
}

const FORM = "1";
const BETWEEN = "~";
const NO_PARTNER = "-";

type Listed = readonly { id: string }[];
const place = (listed: Listed, id: string): string =>
  listed.findIndex((entry) => entry.id === id).toString(36);
const at = (listed: Listed, sign: string): string | undefined => listed[Number.parseInt(sign, 36)]?.id;

function written(item: Item, response: Response | undefined): string {
  if (response === undefined) return "";
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice":
      return (response.choices ?? []).map((id) => place(item.options, id)).join("");
    case "numeric":
      return String(response.number ?? "");
    case "ordering":
      return (response.order ?? []).map((id) => place(item.entries, id)).join("");
    case "matching": {
      const partner = new Map(response.pairs?.map(({ left, right }) => [left, right]));
      return item.left
        .map(({ id }) => {
          const right = partner.get(id);
          return right === undefined ? NO_PARTNER : place(item.right, right);
        })
        .join("");
    }
  }
}

function read(item: Item, text: string): Response | undefined {
  if (text === "") return undefined;
  const ids = (listed: Listed): string[] => [...text].flatMap((sign) => at(listed, sign) ?? []);
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice":
      return { choices: ids(item.options) };
    case "numeric":
      return { number: Number(text) };
    case "ordering":
      return { order: ids(item.entries) };
    case "matching":
      return {
        pairs: item.left.flatMap(({ id }, i) => {
          const right = at(item.right, text.charAt(i));
          return right === undefined ? [] : [{ left: id, right }];
        }),
      };
  }
}

export const remember = (paper: string, items: readonly Item[], progress: Progress): string =>
  [
    FORM,
    paper,
    progress.finished ? "f" : "o",
    ...items.map((item) => written(item, progress.responses.get(item.id))),
  ].join(BETWEEN);

/** Nothing where the text is that of another paper, or of none. */
export function recall(paper: string, items: readonly Item[], text: string): Progress | undefined {
  const [form, of, state, ...texts] = text.split(BETWEEN);
  if (form !== FORM || of !== paper || texts.length !== items.length) return undefined;
  const responses = items.flatMap((item, i): [string, Response][] => {
    const response = read(item, texts[i] ?? "");
    return response === undefined ? [] : [[item.id, response]];
  });
  return { responses: new Map(responses), finished: state === "f" };
}
