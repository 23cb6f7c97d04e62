import { care, type Fault, fatal } from "./fault.js";
import type { Front } from "./front.js";
import { type Reason, reason } from "./reason.js";

/** Gap between rim and dome, at the near end of what it may be, below which it asks for care: a judgement. */
const COMFORTABLE_GAP_mm = 3;

export function domeFaults({ dome_clearance_mm }: Front): Fault[] {
  if (!dome_clearance_mm) return [];
  const clearance_mm = dome_clearance_mm.likely;
  if (clearance_mm <= 0) return [fatal(reason("mount_hits_dome", "computed", { clearance_mm }))];
  return dome_clearance_mm.low < COMFORTABLE_GAP_mm
    ? [care(reason("mount_near_dome", "judgement", { clearance_mm }))]
    : [];
}

/** A stop: corners that may lose more ask for care, and those that lose all and at best so much are ruled out. */
const STOP_PERCENT = 50;

/**
 * Dark corners ask for care, and so do those that may be dark, or of which nothing is known. A holder whose corners are likely black is ruled out, unless less
 * than a stop is lost where the pupil lies as near as it may.
 */
export function cornerFaults(front: Front): Fault[] {
  const { vignetting } = front;
  if (!vignetting) return [care(cornerReason(front))];
  if (vignetting?.grade !== "black" && vignetting?.grade !== "dark") return closeReason(front).map(care);
  const isLost = vignetting.grade === "black" && vignetting.corner_light_percent.high < STOP_PERCENT;
  return [(isLost ? fatal : care)(cornerReason(front))];
}

/** Said where the corners are likely to do, but may be dark; empty where not. */
export function closeReason({ vignetting, clear_diameter_needed_mm }: Front): Reason[] {
  if (vignetting?.grade !== "clear" && vignetting?.grade !== "slight") return [];
  const least_light_percent = vignetting.corner_light_percent.low;
  if (least_light_percent >= STOP_PERCENT) return [];
  const clear_diameter_safe_mm = clear_diameter_needed_mm.high;
  return [reason("corners_close", "computed", { least_light_percent, clear_diameter_safe_mm })];
}

/** What filter and rings do to the corners, whatever it is. */
export function cornerReason({ vignetting, clear_diameter_needed_mm }: Front): Reason {
  const needed = { clear_diameter_needed_mm: clear_diameter_needed_mm.likely };
  if (!vignetting) return reason("corners_unknown", "computed", needed);
  const clear_half_deg = vignetting.clear_half_field_deg.likely;
  const corner_half_deg = vignetting.corner_half_field_deg;
  const light_percent = vignetting.corner_light_percent.likely;
  switch (vignetting.grade) {
    case "clear":
      return reason("corners_clear", "computed", { light_percent, clear_half_deg, corner_half_deg });
    case "slight":
      return reason("corners_slight", "judgement", { light_percent, clear_half_deg });
    case "dark":
      return reason("corners_dark", "computed", { light_percent, clear_half_deg, corner_half_deg });
    case "black":
      return reason("corners_black", "computed", { clear_half_deg, corner_half_deg, ...needed });
  }
}
