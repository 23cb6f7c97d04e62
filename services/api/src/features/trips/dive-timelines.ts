import { diveTimelinesReady } from "@sunfathom/answers";
import { diveTimelinesExamples, mostDiveClips, mostDiveSamples } from "@sunfathom/contract";
import { costOfCalculation } from "../../compute/cost.js";
import { tripOperation } from "./trip-operation.js";
import { readUddf } from "./uddf.js";

/** The model at one depth and time: a card, what is metered, and the red that is left. */
const node = 1 / 2;
/** What is not known, one cause after another, at a few depths. */
const spread = 150;
/** A clip or an event in each state of the world. */
const clip = 2;
/** A sample, with the light drawn between the model's. */
const sample = 1 / 40;

/** A dive as it was dived. */
export const diveTimelines = tripOperation({
  name: "dive-timelines",
  operationId: "computeDiveTimeline",
  summary: "A dive as it was dived",
  description: `A dive's depth over time, up to ${mostDiveSamples} samples, with the scene of its site: where to have set the white balance, changed the filter and set the exposure again, by the decisions of \`dive-advice\`; and for up to ${mostDiveClips} clips, on the camera's clock, their depths, light, the red that is left, the colour cast, and whether the last white balance still held. It looks backwards, and at filming alone. With \`Accept: text/vtt\` the clips and moments come as WebVTT captions (W3C), with times of day by the camera's clock. The body has 4 MB at most.`,
  request: "DiveTimelinesRequest",
  answer: "DiveTimelinesAnswer",
  examples: diveTimelinesExamples,
  isLarge: true,
  forms: ["application/json", "text/vtt"],
  prepare: diveTimelinesReady(readUddf),
  cost: ({ scene, size: { nodes, judged, samples } }) =>
    Math.ceil(
      costOfCalculation("dive-advice", scene) + spread + nodes * node + judged * clip + samples * sample,
    ),
});
