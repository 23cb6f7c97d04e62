import { codedOf } from "../codes/coded.js";
import type { FilterMountingReasons } from "../codes/filter-mounting.js";
import { type NonEmpty, nonEmpty } from "../lists/non-empty.js";
import type { FilterMountingAnswer, PortFigures } from "../result/filter-mounting.js";
import type { FilterMountingScene } from "../scene/filter-mounting-scene.js";
import { cornerReason } from "./front-faults.js";
import { ghostReason } from "./ghosts.js";
import { type Judged, judge } from "./judge.js";
import { lensOf } from "./lens.js";
import { byFitness, holdersByHabit } from "./order.js";
import { portFigures, portReasons } from "./port.js";
import { procedureOf } from "./procedure.js";
import { rearSheetReasons } from "./rear-sheet.js";
import { type Reason, reason } from "./reason.js";
import { checkRingIds } from "./rings.js";
import { wetLensReasons } from "./room.js";
import { seatReasons } from "./seat.js";

/** Field in air beyond which a flat port shows its faults at the edge (common practice). */
const FLAT_PORT_GOOD_TO_deg = 90;

/**
 * Where the filter goes on this lens and port, and what that does: rings to screw on or to buy, light lost in the corners, and
 * for a sheet behind the lens its size and what happens to focus. Exact geometry; what is assumed of lenses is said.
 * @throws SceneProblem where the lens's field is unknown, contradicts itself or is impossible here, or two rings share an id.
 */
export function filterMounting(scene: FilterMountingScene): FilterMountingAnswer {
  checkRingIds(scene.rings);
  const lens = lensOf(scene);
  const port = portFigures(scene, lens);
  const judged = holdersByHabit(scene).map((holder) => judge(scene, lens, holder));
  const ordered = nonEmpty(byFitness(judged, scene.holder), "holders");
  const advised = leading(ordered, scene);
  const { front } = advised;
  return {
    holder: advised.holder,
    place: advised.place,
    verdict: advised.verdict,
    filter_change_underwater: advised.changes,
    options: ordered.map(({ holder, place, verdict, faults, merit }) => ({
      holder,
      place,
      verdict,
      ...codedOf<FilterMountingReasons>(faults[0] ?? merit),
    })),
    port,
    ...(advised.rings ? { ring_chain: advised.rings.chain } : {}),
    ...(front?.vignetting ? { vignetting: front.vignetting } : {}),
    ...(front ? { clear_diameter_needed_mm: front.clear_diameter_needed_mm } : {}),
    ...(front?.dome_clearance_mm ? { dome_clearance_mm: front.dome_clearance_mm } : {}),
    ...(front?.port_clearance_mm === undefined ? {} : { port_clearance_mm: front.port_clearance_mm }),
    ...(front?.weight_g ? { filter_weight_in_water_g: front.weight_g } : {}),
    ...(advised.sheet ? { rear_sheet: advised.sheet } : {}),
    procedure: procedureOf(scene, advised),
    reasons: [
      ...placeReasons(scene, advised, ordered),
      ...seatReasons(scene, advised.holder),
      ...frontReasons(scene, advised),
      ...wetLensReasons(scene),
      ...(advised.sheet ? rearSheetReasons(advised.sheet, port) : []),
      ...portReasons(port),
      ...lens.reasons,
    ],
    cautions: cautionsOf(advised, port),
    uncertainty: front ? [PUPIL_DISTANCE] : [],
    sources: sourcesOf(advised),
  };
}

/** The best; where none fits, the one asked for, so that what is said is about it. */
const leading = (ordered: NonEmpty<Judged>, { holder }: FilterMountingScene): Judged =>
  ordered[0].verdict === "does_not_fit"
    ? (ordered.find((judged) => judged.holder === holder) ?? ordered[0])
    : ordered[0];

function placeReasons(scene: FilterMountingScene, advised: Judged, all: NonEmpty<Judged>): Reason[] {
  const asked = all.find(({ holder }) => holder === scene.holder);
  if (all[0].verdict === "does_not_fit") {
    return [reason("mount_nothing_fits", "computed"), ...advised.faults];
  }
  const refused =
    asked && asked !== advised
      ? [
          reason("mount_asked_does_not_fit", "computed", {
            asked: asked.holder,
            instead: advised.holder,
          }),
          ...asked.faults.slice(0, 1),
        ]
      : [];
  return [...refused, advised.merit, ...advised.faults];
}

function frontReasons(scene: FilterMountingScene, { place, rings, front, faults }: Judged): Reason[] {
  if (!front) return [];
  const corners = cornerReason(front);
  const { distance_mm, assumed, from, spread_percent } = front.pupil;
  return [
    ...(rings?.reasons ?? []),
    ...(faults.some(({ code }) => code === corners.code) ? [] : [corners]),
    ...(assumed
      ? [
          reason("pupil_distance_assumed", "judgement", {
            distance_mm: distance_mm.likely,
            spread_percent,
            from,
          }),
        ]
      : []),
    reason("corners_test", "common_practice"),
    ghostReason(place),
    ...(front.weight_g && place !== "on_lens"
      ? [
          reason("filter_weighs", "computed", {
            weight_g: front.weight_g.likely,
            material: scene.filter_material,
          }),
        ]
      : []),
  ];
}

function cautionsOf(
  { place }: Judged,
  { magnification, field_in_air_deg }: PortFigures,
): FilterMountingAnswer["cautions"] {
  const flatAndWide = magnification !== undefined && field_in_air_deg > FLAT_PORT_GOOD_TO_deg;
  const codes: FilterMountingAnswer["cautions"][number]["code"][] = [
    "not_a_dive_planner",
    "mount_makers_instructions",
    // In the water it is taken off at least to let the air behind it out.
    place === "on_lens" || place === "behind_lens" ? "filter_on_dry_land" : "filter_flip_practised",
    ...(place === "behind_lens" ? (["mount_sensor_dust"] as const) : []),
    ...(flatAndWide ? (["mount_flat_port_edges"] as const) : []),
  ];
  return codes.map((code) => ({ code }));
}

/** Everything else about corners is exact geometry. */
const PUPIL_DISTANCE: FilterMountingAnswer["uncertainty"][number] = {
  code: "pupil_distance",
  parameters: {},
  share: 1,
};

const sourcesOf = ({ sheet, rings }: Judged): string[] => [
  "ports",
  ...(sheet ? ["rear_sheet"] : ["vignetting", "gap_and_weight"]),
  ...(rings ? ["ring_chain"] : []),
  "mounting_practice",
];
