/** Whether a holder goes with this camera and port, and what speaks against it. */
import type { MountPlace, MountVerdict, RearSheet } from "../result/filter-mounting.js";
import type { FilterHolder, FilterMountingScene } from "../scene/filter-mounting-scene.js";
import type { FilterChange } from "../scene/scene.js";
import { care, type Fault, VERDICTS, weighed } from "./fault.js";
import { SMALL_FORMAT_mm } from "./format.js";
import { type Front, frontOf, WIDEST_IN_FRONT_deg } from "./front.js";
import { cornerFaults, domeFaults } from "./front-faults.js";
import type { LensFacts } from "./lens.js";
import { rearSheetOf, sheetFarReasons } from "./rear-sheet.js";
import { type Reason, reason } from "./reason.js";
import { type RingsFound, ringsFrom } from "./rings.js";
import { portFaults, wetLensFaults } from "./room.js";
import { seatFaults } from "./seat.js";

export interface Judged {
  holder: FilterHolder;
  place: MountPlace;
  verdict: MountVerdict;
  changes: FilterChange;
  /** What rules it out, or else what asks for care; empty where it fits. */
  faults: Reason[];
  /** What speaks for this place. */
  merit: Reason;
  rings?: RingsFound;
  front?: Front;
  sheet?: RearSheet;
}

export function judge(scene: FilterMountingScene, lens: LensFacts, holder: FilterHolder): Judged {
  const place = placeOf(scene, holder);
  const changes: FilterChange = holder === "flip" || holder === "clip_on" ? holder : "none";
  const base = { holder, place, changes, merit: meritOf(holder) };
  const obstacle = obstacleTo(scene, lens, holder);
  if (obstacle) return { ...base, verdict: "does_not_fit", faults: [obstacle] };

  const change = changeFault(scene.filter_change_underwater, changes);
  if (place === "behind_lens") {
    const sheet = rearSheetOf(scene, lens);
    const sheetFaults = sheetDoubts(sheet).map(care);
    return { ...base, ...weighed([...sheetFaults, ...change]), sheet };
  }
  const seat_mm = seatOf(scene, holder);
  const doubts = [
    ...unknownFit(scene, holder).map(care),
    ...seatFaults(scene, holder),
    ...wetLensFaults(scene, holder),
  ];
  const ways = seat_mm === undefined ? [undefined] : ringsFrom(seat_mm, scene);
  const tried = ways.map((rings) => {
    const front = frontOf(scene, lens, { place, seat_mm, mounted: rings?.mounted ?? [] });
    const ringFaults = (rings?.faults ?? []).map(care);
    // A frame is made for its camera, and as wide as that needs.
    const corners = holder === "action_camera" && !front.vignetting ? [] : cornerFaults(front);
    const room = place === "on_lens" ? portFaults(scene, front.port_clearance_mm) : [];
    const faults = [...domeFaults(front), ...room, ...corners, ...ringFaults, ...doubts, ...change];
    return { ...base, ...weighed(faults), ...(rings ? { rings } : {}), front };
  });
  return tried.reduce((best, next) => (rankOf(next) < rankOf(best) ? next : best));
}

function sheetDoubts(sheet: RearSheet): Reason[] {
  if (sheet.focus === undefined) return [reason("sheet_focus_unknown", "computed")];
  return sheet.focus === "past_infinity_needed" ? sheetFarReasons(sheet) : [];
}

/** What is not known of the room behind a dome and has to be tried. */
const unknownFit = ({ port_kind, dome_radius_mm }: FilterMountingScene, holder: FilterHolder): Reason[] =>
  holder === "screw_on_lens" && port_kind === "dome" && dome_radius_mm === undefined
    ? [reason("mount_dome_room_unknown", "common_practice")]
    : [];

const rankOf = ({ verdict }: { verdict: MountVerdict }): number => VERDICTS.indexOf(verdict);

function placeOf({ port_kind }: FilterMountingScene, holder: FilterHolder): MountPlace {
  if (holder === "rear_sheet") return "behind_lens";
  if (holder === "screw_on_lens") return "on_lens";
  return port_kind === "none" ? "before_window" : "before_port";
}

/** The thread that the first ring or the filter screws into; undefined for clips and frames. */
function seatOf(scene: FilterMountingScene, holder: FilterHolder): number | undefined {
  if (holder === "screw_on_lens") return scene.lens_thread_mm;
  return holder === "screw_on_port" || holder === "flip" ? scene.port_thread_mm : undefined;
}

function meritOf(holder: FilterHolder): Reason {
  switch (holder) {
    case "screw_on_lens":
      return reason("mount_on_lens", "common_practice");
    case "screw_on_port":
      return reason("mount_outside_fixed", "common_practice");
    case "flip":
    case "clip_on":
      return reason("mount_outside_changed", "common_practice");
    case "action_camera":
      return reason("mount_over_window", "common_practice");
    case "rear_sheet":
      return reason("mount_behind_lens", "common_practice");
  }
}

/** What makes a holder impossible whatever the filter's size. */
function obstacleTo(scene: FilterMountingScene, lens: LensFacts, holder: FilterHolder): Reason | undefined {
  const { port_kind, lens_thread_mm, port_thread_mm } = scene;
  switch (holder) {
    case "rear_sheet":
      return port_kind === "none" || !scene.lens_interchangeable
        ? reason("mount_lens_stays_on", "common_practice")
        : undefined;
    case "action_camera":
      if (port_kind === "dome") return reason("mount_not_before_dome", "common_practice");
      return port_kind === "none" || isSmall(scene, lens)
        ? undefined
        : reason("mount_not_an_action_camera", "common_practice");
    case "screw_on_lens":
      if (port_kind === "none") return reason("mount_window_is_port", "common_practice");
      if (lens_thread_mm === undefined) return withoutThread(scene);
      return lens.half_deg > WIDEST_IN_FRONT_deg
        ? reason("mount_field_too_wide", "computed", { field_deg: 2 * lens.half_deg })
        : undefined;
    case "screw_on_port":
    case "flip":
    case "clip_on":
      if (port_kind === "dome") return reason("mount_not_before_dome", "common_practice");
      return holder === "screw_on_port" && port_thread_mm === undefined
        ? reason("mount_port_without_thread", "common_practice")
        : undefined;
  }
}

/** A camera for which frames are made, in its dive housing; a larger one whose lens stays on is taken at its owner's word. */
const isSmall = ({ holder, lens_interchangeable }: FilterMountingScene, { diagonal_mm }: LensFacts) =>
  diagonal_mm <= SMALL_FORMAT_mm || (holder === "action_camera" && !lens_interchangeable);

const withoutThread = ({ lens_kind }: FilterMountingScene): Reason =>
  lens_kind === "fisheye"
    ? reason("mount_front_bulges", "common_practice")
    : reason("mount_lens_without_thread", "common_practice");

function changeFault(wanted: FilterChange, allowed: FilterChange): Fault[] {
  if (wanted === "none" || wanted === allowed) return [];
  if (allowed === "none") return [care(reason("mount_fixed_for_dive", "common_practice"))];
  return [care(reason("mount_other_change", "common_practice", { allowed }))];
}
