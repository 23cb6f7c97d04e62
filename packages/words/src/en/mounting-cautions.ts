import type { MountingCautionCode } from "@sunfathom/planner";

/** Cautions on where a filter goes. */
export const mountingCautions: Readonly<Record<MountingCautionCode, string>> = {
  mount_makers_instructions:
    "Filters, lenses and housings follow their makers' instructions: check that the lens and the housing allow what is added.",
  mount_sensor_dust:
    "Behind the lens is the sensor: work in a clean, still place, keep dust and fingers off, and never let a sheet or tape touch contacts, mount or shutter.",
  mount_flat_port_edges:
    "Beyond about 90 degrees of field in air a flat port smears colours and sharpness towards the edges; a dome is the better port.",
};
