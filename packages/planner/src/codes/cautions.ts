/** Cautions that several decisions give. */
export type CautionCode =
  | "not_a_dive_planner"
  | "ascent_first"
  | "overhead_by_training"
  | "hover_to_balance"
  | "closer_under_control"
  | "lamps_in_water_only"
  | "lamps_not_into_eyes"
  | "lamps_stay_on_rig"
  | "batteries_by_maker"
  | "filter_on_dry_land"
  | "filter_flip_practised";

/** Cautions on where a filter goes. */
export type MountingCautionCode = "mount_makers_instructions" | "mount_sensor_dust" | "mount_flat_port_edges";
