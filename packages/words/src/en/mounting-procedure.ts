import type { MountingSteps } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";

/** What to do to mount a filter. Common practice. */
export const mountingProcedure: Texts<MountingSteps, string> = {
  cut_practice: () => "Practise the cut on a cheap lighting gel until it fits without force or gaps.",
  cut_sheet: () =>
    "Cut the filter sheet between clean paper with a sharp blade, and handle it by the edges only.",
  slide_in: () => "Blow it clean and slide it flat into the holder behind the lens.",
  tape_on: () =>
    "Blow it clean and tape it flat over the opening. Keep all tape clear of the electrical contacts and the faces of the mount.",
  refocus: () => "Refocus with the sheet in place, and check the first pictures at depth for sharpness.",
  sheet_set: () =>
    "Keep the sheet with the glass filter of the same density, so that the set stays together.",
  sheet_renew: () =>
    "Inspect the sheet before each trip, and replace it when it is scratched, faded or curled.",
  tape_renew: () =>
    "Put on new tape for every trip, and take off what the old one leaves: warmth and damp loosen it.",
  dry_land_only: () => "Change it on dry land only, away from sand and spray.",
  chain_assemble: () =>
    "Screw the rings on by hand in the order given, without force; a trace of silicone grease keeps them from seizing.",
  wall_test: () =>
    "Take a picture of a white wall at the widest setting and the smallest aperture, and look at the corners.",
  clear_of_port: () =>
    "Slide the lens slowly into the housing, and check that nothing touches the port before you close it.",
  no_grit: () => "Rinse filter and window before you put the filter on: sand between them scratches both.",
  no_bubbles: () =>
    "Once in the water, take the filter off or tilt it to let out the air between it and the window.",
  tether: () => "Tie the filter on with a short line so that you cannot lose it.",
  change_practised: () => "Practise the change at the surface, with gloves if you wear them.",
  rinse: () => "After the dive, rinse filter and holder in fresh water, and dry them apart.",
};
