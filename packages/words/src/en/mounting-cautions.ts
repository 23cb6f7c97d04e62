import type { MountingCautionCode } from "@sunfathom/planner";

/** Cautions on where a filter goes. */
export const mountingCautions: Readonly<Record<MountingCautionCode, string>> = {
  mount_makers_instructions:
    "Follow the makers' instructions for filters, lenses and housings: check that lens and housing allow what you add.",
  mount_sensor_dust:
    "The sensor is right behind the lens: work in a clean, still place, keep dust and fingers off, and never let a sheet or tape touch contacts, mount or shutter.",
  mount_flat_port_edges:
    "With a field wider than about 90 degrees in air, a flat port smears colours and sharpness towards the edges; a dome is the better port.",
};
