// What is advised in each water, by how pictures are finished.
import { filterChoice } from "#model/filter-choice/filter-choice";
import { markdownTable } from "../../../optics/scripts/accuracy/numbers.mjs";
import { choiceAt } from "./scenes.mjs";

const WATERS = [
  ["I, blue", "I"],
  ["IB, blue", "IB"],
  ["III, blue", "III"],
  ["1C, blue-green", "1C"],
  ["3C, green", "3C"],
  ["5C, green", "5C"],
  ["7C, amber", "7C"],
];
const FINISHES = ["in_camera", "basic_edit", "matched"];
const DEPTHS_M = [4, 10];

function told(scene) {
  const { filter_kind, filter_density, verdict, runner_up } = filterChoice(scene);
  const rival = verdict === "near_tie" ? ` (or ${runner_up.filter_kind})` : "";
  return `${filter_kind}${filter_density === undefined ? "" : ` ${filter_density.toFixed(2)}`}${rival}`;
}

export function tradeSection() {
  const rows = WATERS.flatMap(([name, water_type]) =>
    DEPTHS_M.map((depth_m) => [
      name,
      depth_m,
      ...FINISHES.map((finish) => told(choiceAt(depth_m, { water_type, finish }))),
    ]),
  );
  return `
## Filters against practice

Sun 50° high and behind the camera, subject 1 m away, white balance on a card: kind and density advised, by how pictures are finished, and in
brackets what is nearly as good. Practice: red in blue water from about 3 m down, magenta in green water, neither in brown (common practice, no
published source). Nothing is fitted to it.

${markdownTable(["Water", "Depth (m)", "Straight from the camera", "After a basic edit", "After a profiled grade"], rows)}

- **What differs:** in brown water a weak magenta filter still takes away some green, by every finish in the shallows, where practice mounts none. Red at 10 m is denser than the 0.6 to 0.9 that practice mounts (from memory): each step brings the balance further into reach, until the light runs out. In blue-green water, straight from the camera, red is nearly as good as magenta and comes first.
`;
}
