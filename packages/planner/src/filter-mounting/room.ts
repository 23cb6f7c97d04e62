/** Room for a filter inside the housing, with a lens that grows as it zooms, and beside a lens on the port's outside. */
import type { FilterHolder, FilterMountingScene } from "../scene/filter-mounting-scene.js";
import { care, type Fault, fatal } from "./fault.js";
import { type Reason, reason } from "./reason.js";

/** Gap between rim and port below which it asks for care: a judgement, as behind a dome. */
const COMFORTABLE_GAP_mm = 3;

/** What is left before the port with the zoom at its longest; undefined where the gap is not known. */
export const portClearance_mm = (
  { lens_port_gap_mm, zoom_travel_mm, filter_thickness_mm }: FilterMountingScene,
  rings_mm: number,
): number | undefined =>
  lens_port_gap_mm === undefined
    ? undefined
    : lens_port_gap_mm - zoom_travel_mm - rings_mm - filter_thickness_mm;

/** On the lens: whether filter and rings stay clear of the port however it is zoomed. */
export function portFaults(scene: FilterMountingScene, clearance_mm: number | undefined): Fault[] {
  const { zoom_travel_mm: travel_mm, dome_radius_mm } = scene;
  if (clearance_mm === undefined) {
    // Behind a dome of known radius the room is worked out from that.
    return travel_mm > 0 && dome_radius_mm === undefined
      ? [care(reason("mount_zoom_room_unknown", "computed", { travel_mm }))]
      : [];
  }
  if (clearance_mm <= 0) return [fatal(reason("mount_hits_port", "computed", { clearance_mm }))];
  return clearance_mm < COMFORTABLE_GAP_mm
    ? [care(reason("mount_near_port", "judgement", { clearance_mm }))]
    : [];
}

/**
 * A wet lens takes the place of what clips, hinges or goes over the port; what screws into the port comes between, and moves the wet
 * lens away from it (common practice, no published source).
 */
export function wetLensFaults(
  { wet_lens, port_kind, filter_thickness_mm: thickness_mm }: FilterMountingScene,
  holder: FilterHolder,
): Fault[] {
  if (wet_lens === "none" || port_kind === "dome") return [];
  switch (holder) {
    case "screw_on_port":
      return [care(reason("mount_wet_lens_stacked", "common_practice", { wet_lens, thickness_mm }))];
    case "flip":
    case "clip_on":
    case "action_camera":
      return [fatal(reason("mount_wet_lens_in_the_way", "common_practice", { wet_lens }))];
    case "screw_on_lens":
    case "rear_sheet":
      return [];
  }
}

export const wetLensReasons = ({ wet_lens, port_kind }: FilterMountingScene): Reason[] =>
  wet_lens !== "none" && port_kind === "dome" ? [reason("wet_lens_not_on_dome", "common_practice")] : [];
