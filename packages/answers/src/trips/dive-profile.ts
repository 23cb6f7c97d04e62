import type { DiveTimelinesRequest, TripRuleParameters } from "@sunfathom/contract";
import type { DiveSample } from "@sunfathom/planner";
import type { Findings } from "../validate/findings.js";

type UddfCode = "uddf_not_well_formed" | "uddf_harmful" | "uddf_element" | "uddf_value";

/** What is wrong with a file. */
export type UddfFinding = {
  [Code in UddfCode]: { code: Code; parameters: TripRuleParameters[Code] };
}[UddfCode];

/** A dive out of a file, or why there is none. */
export type UddfRead =
  | { status: "read"; samples: DiveSample[]; start_clock?: string }
  | { status: "refused"; finding: UddfFinding };

/** Reads a file in UDDF: whoever runs this brings the reader of XML. */
export type ReadUddf = (text: string, wanted: string | undefined) => UddfRead;

/** A request whose dive is its samples, in order; undefined where something is wrong, which is noted. */
export function withSamples(
  request: DiveTimelinesRequest,
  readUddf: ReadUddf,
  findings: Findings,
): DiveTimelinesRequest | undefined {
  const { uddf, uddf_dive, ...rest } = request;
  if ((uddf === undefined) === (rest.samples === undefined)) {
    const parameters = { both: uddf !== undefined };
    findings.add(() => ({ pointer: "/samples", code: "profile_one_way", parameters }));
    return undefined;
  }
  if (uddf === undefined) {
    checkOrder(rest.samples ?? [], findings);
    return findings.none ? rest : undefined;
  }
  const read = readUddf(uddf, uddf_dive);
  if (read.status === "refused") {
    findings.add(() => ({ pointer: "/uddf", ...read.finding }));
    return undefined;
  }
  const { samples, start_clock } = read;
  return { ...(start_clock === undefined ? {} : { start_clock }), ...rest, samples };
}

/** Later than the one before, each. */
function checkOrder(samples: readonly DiveSample[], findings: Findings): void {
  for (const [i, { time_s }] of samples.entries()) {
    const before = samples[i - 1];
    if (before === undefined || time_s > before.time_s) continue;
    if (findings.more) return;
    const parameters = { time_s, before_s: before.time_s };
    findings.add(() => ({ pointer: `/samples/${i}/time_s`, code: "samples_in_order", parameters }));
  }
}
