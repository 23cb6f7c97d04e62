/** When a paper tells its marks, and with them its key. */
import type { QuizRefusals } from "@sunfathom/words";
import { QuizProblem } from "../quiz-problem.js";

/** `at_once` is practice: each mark brings the solution. `after_close` tells nothing before the paper closes. */
export const RELEASES = ["at_once", "after_close"] as const;
export type Release = (typeof RELEASES)[number];

export interface AskedRelease {
  release?: Release | undefined;
  /** RFC 3339. */
  closes_at?: string | undefined;
}

const DAY_S = 24 * 3600;
/** The longest that a paper can stay open: its key has to stay in the ring as long. */
export const LONGEST_OPEN_DAYS = 366;

/**
 * When a paper closes, seconds since 1970; undefined for one that tells its marks at once.
 * @throws QuizProblem where the fields do not go together, or the time is no day of the calendar, over, or too far ahead
 */
export function closingOf(
  { release = "at_once", closes_at }: AskedRelease,
  now_s: number,
): number | undefined {
  if (release === "at_once") {
    if (closes_at === undefined) return undefined;
    throw new QuizProblem({ code: "closes_at_without_effect", parameters: {} }, "closes_at");
  }
  if (closes_at === undefined) {
    throw new QuizProblem({ code: "closes_at_missing", parameters: {} }, "closes_at");
  }
  const closes_s = Math.floor(instantOf(closes_at) / 1000);
  if (closes_s <= now_s) throw outOfRange("past");
  if (closes_s > now_s + LONGEST_OPEN_DAYS * DAY_S) throw outOfRange("too_far_ahead");
  return closes_s;
}

function outOfRange(how: QuizRefusals["closes_at_out_of_range"]["case"]): QuizProblem {
  const parameters = { case: how, most_days: LONGEST_OPEN_DAYS };
  return new QuizProblem({ code: "closes_at_out_of_range", parameters }, "closes_at");
}

/** Milliseconds since 1970. Some engines carry 31 April over into May: that is refused, as no calendar has such a day. */
function instantOf(text: string): number {
  const instant = Date.parse(text);
  const [year = 0, month = 0, day = 0] = text.slice(0, 10).split("-").map(Number);
  if (Number.isNaN(instant) || new Date(Date.UTC(year, month - 1, day)).getUTCDate() !== day) {
    throw outOfRange("no_such_day");
  }
  return instant;
}
