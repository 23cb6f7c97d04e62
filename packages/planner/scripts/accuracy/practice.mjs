// Exposures against practice, with the parts that the model's loss is made of.
import { CLEAR } from "@sunfathom/optics";
import { budgetAt } from "#model/exposure-loss/budget";
import { exposureLoss } from "#model/exposure-loss/exposure-loss";
import { conditionsOf } from "#model/light/conditions";
import { underwater } from "#model/light/underwater";
import { NOMINAL } from "#model/uncertainty/nuisance";
import { markdownTable } from "../../../optics/scripts/accuracy/numbers.mjs";
import { practiceAt } from "./scenes.mjs";

/** Common practice, no published source: stops under sunny 16, from memory of a diving handbook. */
const PRACTICE = [
  { depth_m: 0.1, stops: 1.5 },
  { depth_m: 1.8, stops: 2 },
  { depth_m: 6, stops: 2.5 },
  { depth_m: 9, stops: 3 },
  { depth_m: 15, stops: 4 },
];
/** f/16 at 1/100 s and ISO 100. */
const SUNNY_16 = Math.log2(16 ** 2 * 100);

const budgetOf = (scene) => budgetAt(underwater(conditionsOf(scene), NOMINAL), CLEAR, scene.max_depth_m);
const signed = (value) =>
  `${Math.abs(value) < 0.005 ? "" : value < 0 ? "−" : "+"}${Math.abs(value).toFixed(2)}`;

export function practiceSection() {
  const rows = PRACTICE.map(({ depth_m, stops: below }) => {
    const practice = SUNNY_16 - below;
    const b = budgetOf(practiceAt(depth_m));
    const reef = budgetOf(practiceAt(depth_m, { bottom: "coral", bottom_depth_m: depth_m + 3 }));
    // What sunny 16 would be of light on a level surface above the sea, by the same meter.
    const inAir = b.ev100 + b.total - SUNNY_16;
    return {
      depth_m,
      practice: practice.toFixed(1),
      model: b.ev100.toFixed(2),
      miss: signed(b.ev100 - practice),
      parts: [inAir, -b.surface, -b.depth, -b.upright, -b.distance, -b.port].map(signed),
      floor: signed(reef.ev100 - b.ev100),
      scene: signed(b.sceneEv100 - b.ev100),
      haze: signed(b.hazeGain),
    };
  });
  const most = Math.max(...PRACTICE.map(({ stops: below }, n) => Number(rows[n].model) - (SUNNY_16 - below)));
  const { low, high } = exposureLoss(practiceAt(15)).depths[0].exposure_value_ev100;
  const [sand, coral] = [
    { bottom: "sand", bottom_depth_m: 2, min_depth_m: 1, max_depth_m: 1 },
    { bottom: "coral", bottom_depth_m: 8, min_depth_m: 5, max_depth_m: 5 },
  ].map((over) => {
    const { visibility_m: _, water_hue: __, ...scene } = practiceAt(1, over);
    return budgetOf({ ...scene, water_type: "IA", sun_elevation_deg: 80 }).ev100;
  });
  return `## Exposure against practice

Blue water of 15 m visibility, clear sky, sun 60° high and behind the camera, over deep water, subject 1 m away: EV at ISO 100 of a solid
subject, as the answers tell it, without the haze over it, for which the camera closes further. Practice: sunny 16 (EV 14.64) less 1.5, 2, 2.5, 3 and 4 stops, common practice from memory of a diving
handbook, no published source. Nothing is fitted to it.

${markdownTable(
  [
    "Depth (m)",
    "Practice",
    "Model",
    "Model against practice (stops)",
    "Whole picture against subject",
    "Haze adds",
    "With coral 3 m below",
  ],
  rows.map(({ depth_m, practice, model, miss, scene, haze, floor }) => [
    depth_m,
    practice,
    model,
    miss,
    scene,
    haze,
    floor,
  ]),
)}

What leads from sunny 16 to the model's figure, in stops. *Sky*: a dome that faces up above the sea against sunny 16. *Level*: a dome that
faces the camera against light on a level surface.

${markdownTable(
  ["Depth (m)", "Sky", "Surface", "Depth", "Level", "1 m of water", "Port"],
  rows.map(({ depth_m, parts }) => [depth_m, ...parts]),
)}

Over a floor, type IA, sun 80° high: EV ${sand.toFixed(2)} at 1 m over sand at 2 m, ${coral.toFixed(2)} at 5 m over coral at 8 m.

- **What differs:** the model is the brighter one, by ${most.toFixed(1)} stop at most and more the deeper, where practice itself goes in half stops. Its clear sky explains a part: with the constant of its dome it is 0.26 stop above sunny 16. The floor is none: coral below would add to it. The rest is depth: a visibility tells beam attenuation, and how much of that is scattering, which hardly dims daylight, is known to a factor of two. At 15 m the answer's own bounds run from ${low.toFixed(1)} to ${high.toFixed(1)}.
- **Weak:** the constant of a dome lies anywhere from 320 to 540 by ISO 2720, which is three quarters of a stop; the answers take 340.
`;
}
