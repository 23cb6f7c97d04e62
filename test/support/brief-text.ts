/** The advice for one dive as a page to read: what a person would be handed at a briefing. */
import type { DivePhase } from "../../packages/planner/src/index.js";
import type { saidAdvice } from "./said.js";

type DiveAdviceAnswer = ReturnType<typeof saidAdvice>;

const PHASES: Record<DivePhase, string> = {
  before_dive: "Before the dive",
  at_start: "At the start",
  going_down: "Going down",
  lamps: "Video lights",
  coming_up: "Coming up",
  after_dive: "After the dive",
};

const inMetres = (depth_m: number): string => `${Number(depth_m.toFixed(1))} m`;
const bullets = (lines: readonly string[]): string[] => lines.map((line) => `- ${line}`);

function stepLines(steps: DiveAdviceAnswer["steps"]): string[] {
  return steps.flatMap(({ phase, depth_m, text, why, basis }, i) => [
    ...(i === 0 || steps[i - 1].phase !== phase ? ["", `### ${PHASES[phase]}`, ""] : []),
    `- ${depth_m === undefined ? "" : `[${inMetres(depth_m)}] `}${text}`,
    `  Why (${basis.replace("_", " ")}): ${why}`,
  ]);
}

/** What the plan is not sure of: what has the largest shares of the doubt, and what would lessen it. */
const doubts = ({ uncertainty }: DiveAdviceAnswer): string[] =>
  uncertainty.slice(0, 2).map(({ text, how_to_shrink }) => `${text}. ${how_to_shrink}`);

/** @param title what the dive is, in a line. */
export function briefText(title: string, advice: DiveAdviceAnswer): string {
  // Filters are called by their id, and lights are all taken.
  const take = advice.take.map(
    ({ id, what, why, code }) =>
      `${id === undefined || code === "lamp" || what.startsWith(id) ? "" : `[${id}] `}${what}. ${why}`,
  );
  const reasons = advice.reasons.map(({ text, basis }) =>
    basis === "computed" ? text : `${text} (${basis.replace("_", " ")})`,
  );
  return [
    `# ${title}`,
    "",
    advice.summary,
    "",
    "## Plan",
    ...stepLines(advice.steps),
    ...(take.length > 0 ? ["", "## Take", "", ...bullets(take)] : []),
    ...(reasons.length > 0 ? ["", "## Reasons", "", ...bullets(reasons)] : []),
    "",
    "## Cautions",
    "",
    ...bullets(advice.cautions.map(({ text }) => text)),
    "",
    "## Not sure of",
    "",
    ...bullets(doubts(advice)),
    "",
  ].join("\n");
}
