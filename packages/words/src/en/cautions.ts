import type { CautionCode } from "@sunfathom/planner";

/** Cautions that several decisions give. */
export const cautions: Readonly<Record<CautionCode, string>> = {
  not_a_dive_planner:
    "This is advice on light and colour, not a dive plan. Depth, time, gas and ascent follow your training, your instructor and local rules.",
  ascent_first:
    "Your ascent and safety stop come first. Depths given for the way up are depths you pass anyway: never change your ascent for one.",
  overhead_by_training:
    "Dive at night, in caves and wrecks or under ice only with the training, the guide and the backup lights for it. Filming lights are no backup lights.",
  hover_to_balance:
    "Set a white balance only while you hover under control and touch nothing. Skip it before you neglect your buddy, your depth or your gas.",
  closer_under_control:
    "Come closer only with your buoyancy under control: touch nothing, and leave animals their room.",
  lamps_in_water_only:
    "Video lights made for diving are cooled by water: switch them on in water only. In air they overheat, can burn, and can melt a plastic filter.",
  lamps_not_into_eyes: "Never look into a video light or point it at the eyes of divers or animals.",
  lamps_stay_on_rig:
    "Leave video lights and batteries on the rig even when you do not use them: taking them off changes its trim. After any change to the rig, try out how it handles before you rely on it.",
  batteries_by_maker:
    "Follow the makers' instructions for batteries and chargers. Never charge them unattended, and never use any that are damaged or were flooded.",
  filter_on_dry_land:
    "Change a filter inside the housing or behind the lens on dry land only; never open a housing near the water's edge.",
  filter_flip_practised:
    "Change a filter under water only while you hover under control and touch nothing. Practise it at the surface first: at depth, your task load matters more than the picture.",
};
