import { pick } from "./pick.js";
import type { Selection } from "./selection.js";
import { withinBytes } from "./within-bytes.js";

/** What every answer has of which a brief one is made. */
interface Whole {
  summary?: string;
  /** Each stands at the end of the summary, too. */
  close_calls?: readonly { text: string }[];
  reasons: readonly { text: string }[];
  cautions: readonly { code: string; text: string }[];
  model: { version: string };
}

/**
 * An answer in few bytes, as the contract's `Brief`.
 * @param whole in its form
 * @param selection the fields that the calculation comes down to
 */
export function brief(whole: Whole, selection: Selection): object {
  const { summary, close_calls = [], reasons, cautions, model } = whole;
  const headline =
    summary === undefined
      ? reasons[0]?.text
      : withoutEnd(summary, close_calls.map(({ text }) => text).join(" "));
  const [first] = cautions;
  if (headline === undefined || first === undefined)
    throw new Error("An answer has a reason and a caution; this one has not.");
  return withinBytes({
    headline,
    answer: ends(pick(whole, selection) as object),
    caution: first.text,
    caution_codes: cautions.map(({ code }) => code),
    model_version: model.version,
  });
}

const withoutEnd = (text: string, end: string): string =>
  text.endsWith(end) ? text.slice(0, text.length - end.length).trimEnd() : text;

/** Of what an answer says depth by depth, the first and the last. */
function ends(answer: { depths?: readonly unknown[] }): object {
  const { depths } = answer;
  return depths === undefined || depths.length < 3
    ? answer
    : { ...answer, depths: [depths[0], depths.at(-1)] };
}
