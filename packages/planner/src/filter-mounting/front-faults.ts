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
    ? [care(reason("mount_near_dome", "computed", { clearance_mm }))]
    : [];
}

/** Dark corners ask for care; corners that are cut off wherever in its spread the pupil lies rule the holder out. */
export function cornerFaults(front: Front): Fault[] {
  const { vignetting } = front;
  if (vignetting?.grade !== "black" && vignetting?.grade !== "dark") return [];
  const weigh = vignetting.corner_light_percent.high === 0 ? fatal : care;
  return [weigh(cornerReason(front))];
}

/** Light in the corner at the dark end of what it may be, below which it is said: a stop. */
const CLOSE_PERCENT = 50;

/** Said where the corners are likely to do, but may be dark; empty where not. */
export function closeReason({ vignetting, clear_diameter_needed_mm }: Front): Reason[] {
  if (vignetting?.grade !== "clear" && vignetting?.grade !== "slight") return [];
  const least_light_percent = vignetting.corner_light_percent.low;
  if (least_light_percent >= CLOSE_PERCENT) return [];
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
      return reason("corners_slight", "computed", { light_percent, clear_half_deg });
    case "dark":
      return reason("corners_dark", "computed", { light_percent, clear_half_deg, corner_half_deg });
    case "black":
      return reason("corners_black", "computed", { clear_half_deg, corner_half_deg, ...needed });
  }
}
