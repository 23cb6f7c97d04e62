/** English texts of cautions. */
export const CAUTIONS_EN = {
  not_a_dive_planner:
    "This is advice on light and colour, not a dive plan. Depth, time, gas and ascent follow your training, your instructor and local rules.",
  lamps_in_water_only:
    "Lamps made for diving are cooled by water: switch them on in water only. In air they overheat, can burn, and can melt a plastic filter.",
  lamps_not_into_eyes: "Never look into a lamp or point it at the eyes of divers or animals.",
  lamps_stay_on_rig:
    "Leave lamps and batteries on the rig even when they are not used: taking them off changes its trim. Change the rig only where its handling can be tried out first.",
  filter_on_dry_land:
    "A filter inside the housing or behind the lens is changed on dry land only; never open a housing near the water's edge.",
  hover_to_balance:
    "Balance white and change filters only while you hover under control; skip a balance before you neglect your buddy, your depth or your gas.",
  filter_flip_practised:
    "Practise the change of filter at the surface: task load at depth comes before the picture.",
} as const;

export type CautionCode = keyof typeof CAUTIONS_EN;
