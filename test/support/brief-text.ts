/** The advice for one dive as a page to read: what a person would be handed at a briefing, figures last. */
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

const inMetres = (depth_m: number): string => `${depth_m.toFixed(1)} m`;
const bullets = (lines: readonly string[]): string[] => lines.map((line) => `- ${line}`);

function stepLines(steps: DiveAdviceAnswer["steps"]): string[] {
  return steps.flatMap(({ phase, depth_m, text, why, basis }, i) => [
    ...(i === 0 || steps[i - 1].phase !== phase ? ["", `### ${PHASES[phase]}`, ""] : []),
    `- ${depth_m === undefined ? "" : `[${inMetres(depth_m)}] `}${text}`,
    `  Why (${basis.replace("_", " ")}): ${why}`,
  ]);
}

function figures(advice: DiveAdviceAnswer): string[] {
  return [
    `filter: ${advice.filter_kind}${advice.filter_density === undefined ? "" : ` ${advice.filter_density.toFixed(2)}`}, ${advice.filter_verdict}`,
    `video lights: \`${advice.lamp_plan}\`; in the middle of the range: \`${advice.mixed_light_verdict}\`; white balance for: \`${advice.balance_to}\``,
    `white balance going down at: ${advice.balance_depths_descending_m.map(inMetres).join(", ")}`,
    `white balance coming up at: ${advice.balance_depths_ascending_m.map(inMetres).join(", ") || "none"}`,
    ...advice.uncertainty.slice(0, 3).map((u) => `doubt: ${(100 * u.share).toFixed(0)} % ${u.cause}`),
  ];
}

/** @param title what the dive is, in a line. */
export function briefText(title: string, advice: DiveAdviceAnswer): string {
  const take = advice.take.map(({ id, what, why }) => `${id === undefined ? "" : `[${id}] `}${what}. ${why}`);
  return [
    `# ${title}`,
    "",
    advice.summary,
    "",
    "## Plan",
    ...stepLines(advice.steps),
    ...(take.length > 0 ? ["", "## Take", "", ...bullets(take)] : []),
    "",
    "## Reasons",
    "",
    ...bullets(
      advice.reasons.map(({ text, basis }) =>
        basis === "computed" ? text : `${text} (${basis.replace("_", " ")})`,
      ),
    ),
    "",
    "## Cautions",
    "",
    ...bullets(advice.cautions.map(({ text }) => text)),
    "",
    "## Figures",
    "",
    ...bullets(figures(advice)),
    "",
  ].join("\n");
}
