/** What a clip, a hinge or a frame goes over: the outside of a flat port, or of the housing. Common practice. */
import type { FilterHolder, FilterMountingScene } from "../scene/filter-mounting-scene.js";
import { care, type Fault, fatal } from "./fault.js";
import { type Reason, reason } from "./reason.js";

/** A holder that is wider than the port by more than this is shimmed, and by more than that has no grip. From memory. */
const SNUG_TO_mm = 2;
const SHIMMED_TO_mm = 6;

/** Whether a holder goes over the port's outside; what screws into a thread does not, and what is made for one camera needs no figure. */
const goesOver = (
  { port_kind, port_thread_mm }: FilterMountingScene,
  holder: FilterHolder,
): holder is "clip_on" | "flip" | "action_camera" => {
  if (port_kind !== "flat") return false;
  if (holder === "flip") return port_thread_mm === undefined;
  return holder === "clip_on" || holder === "action_camera";
};

export function seatFaults(scene: FilterMountingScene, holder: FilterHolder): Fault[] {
  if (!goesOver(scene, holder)) return [];
  const { port_outer_diameter_mm: port_mm, holder_inner_diameter_mm: inner_mm } = scene;
  if (holder === "action_camera" && inner_mm === undefined) {
    return [care(reason("mount_frame_for_housing", "common_practice"))];
  }
  if (port_mm === undefined) {
    const code = holder === "flip" ? "mount_flip_seat_unknown" : "mount_clip_seat_unknown";
    return [care(reason(code, "common_practice"))];
  }
  if (inner_mm === undefined) return [];
  if (inner_mm < port_mm) return [fatal(reason("mount_holder_too_small", "computed", { inner_mm, port_mm }))];
  if (inner_mm - port_mm > SHIMMED_TO_mm) {
    return [fatal(reason("mount_holder_too_large", "computed", { inner_mm, port_mm }))];
  }
  return inner_mm - port_mm > SNUG_TO_mm
    ? [care(reason("mount_holder_loose", "computed", { inner_mm, port_mm }))]
    : [];
}

/** Which size to ask for, where the holder is yet to be had. */
export function seatReasons(scene: FilterMountingScene, holder: FilterHolder): Reason[] {
  const { port_outer_diameter_mm: port_mm, holder_inner_diameter_mm } = scene;
  return goesOver(scene, holder) && port_mm !== undefined && holder_inner_diameter_mm === undefined
    ? [reason("mount_holder_to_ask_for", "common_practice", { port_mm })]
    : [];
}
