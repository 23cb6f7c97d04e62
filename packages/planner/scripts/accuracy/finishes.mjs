// Three people who finish pictures of one reef in three ways: what each is advised, and what is left with and without it.
import { exposureLoss } from "#model/exposure-loss/exposure-loss";
import { filterChoice } from "#model/filter-choice/filter-choice";
import { whiteBalance } from "#model/white-balance/white-balance";
import { markdownTable } from "../../../optics/scripts/accuracy/numbers.mjs";
import { reefFinishedBy } from "./scenes.mjs";

const PEOPLE = [
  {
    name: "A guest with a phone, all on automatic, nothing done afterwards",
    change: {
      camera_class: "phone",
      min_f_number: 1.8,
      max_f_number: 1.8,
      white_balance_max_cct_K: 8000,
      white_balance_max_duv: 0.02,
      white_balance_mode: "auto",
      exposure_mode: "auto",
      finish: "in_camera",
    },
  },
  {
    name: "A student with a slate and one red filter of density 0.9, nothing done afterwards",
    change: {
      finish: "in_camera",
      kit: [{ id: "red-filter", item: "lens_filter", filter_kind: "red", filter_density: 0.9 }],
    },
  },
  {
    name: "A colourist with a cinema camera and a profile of a filmed chart",
    change: {
      camera_class: "cinema",
      bits: 12,
      recording_curve: "log",
      white_balance_min_cct_K: 2000,
      white_balance_max_cct_K: 15000,
      white_balance_max_duv: 0.05,
      finish: "matched",
    },
  },
];

const range = (from, to) => (from === to ? from : `${from} to ${to}`);

function rowOf({ name, change }) {
  const scene = reefFinishedBy(change);
  const choice = filterChoice(scene);
  const { filter_kind, filter_density } = choice;
  const onLens = filter_kind === "none" ? {} : { filter_kind, filter_density };
  const casts = whiteBalance({ ...scene, ...onLens }).depths.map((d) => d.cast_left_delta_e00);
  const last = exposureLoss({ ...scene, ...onLens }).depths.at(-1);
  const gap = last.scene_exposure_value_ev100.likely - last.exposure_value_ev100.likely;
  return [
    name,
    filter_kind === "none"
      ? "none"
      : `${filter_kind} ${filter_density.toFixed(2)}, ${choice.verdict.replace("_", " ")}`,
    choice.colour_error_without_delta_e00.likely.toFixed(1),
    choice.colour_error_delta_e00.likely.toFixed(1),
    choice.filter_loss_stops.likely.toFixed(1),
    range(Math.min(...casts).toFixed(1), Math.max(...casts).toFixed(1)),
    scene.exposure_mode === "auto" ? (-gap).toFixed(1).replace("-", "−") : "0 (metered on it)",
  ];
}

export function finishesSection() {
  return `## Three ways to finish a picture

One reef in type IB water, sun 50° high and behind the camera, 5 to 12 m: what the filter choice advises by how the pictures are finished,
the mean colour error (CIEDE2000 of the 24-patch chart and the water behind it) without it and with it, what it costs, the cast that stays on a grey
card over the range, and how far a subject at the deep end is from its own exposure. That a red filter brings a picture back that nobody
grades, that automatic balance brings back half of it, and that a profile does most of a filter's work are common practice, no published
source; nothing is fitted to them.

${markdownTable(
  [
    "Who",
    "Advised",
    "Error without",
    "Error with",
    "Costs (stops)",
    "Cast on grey",
    "Subject too bright (stops)",
  ],
  PEOPLE.map(rowOf),
)}
`;
}
