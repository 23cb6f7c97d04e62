import type { CircumstanceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, shown, wholeStops } from "../format.js";

/** English texts of what light, place and camera of a dive ask for beside the plan. */
export const circumstanceReasons: Texts<CircumstanceReasons, string> = {
  dense_for_balance: (p, u) =>
    `It takes so dense a filter because the camera's white balance has its limits: with it a card comes out neutral down to about ${depth(p.with_m, u)}, without it ${p.without ? `only to ${depth(p.without.to_m, u)}` : "nowhere on this dive"}. A weaker one saves light and leaves more of a cast, deeper down first.`,
  mouth_is_brighter: (p) =>
    `Towards the mouth the water outside is about ${wholeStops(p.stops)} brighter than what you film inside. For a blue mouth with dark rock around it, expose for the water and let the rest go black.${p.lamps ? ` For a dive farther in, darker by more than ${wholeStops(p.lamps.spare_stops)}, leave the filter ashore and film by your video lights.` : ""}`,
  filter_beside_lights: () =>
    "Your video lights do not outshine daylight here: they bring red, and the filter holds back the blue and green that daylight brings too much of. Where they outshine it, from closer by, you would film without a filter.",
  subject_against_light: (p) =>
    `Against the sun the whole picture is about ${wholeStops(p.stops)} brighter than a grey subject. This plan shows the subject in colour, and the water behind it comes out pale. For a silhouette, close by as much for the water; white balance and filter hardly matter to it then.`,
  low_sun_moves: (p) =>
    `With the sun at ${shown(p.elevation_deg)} degrees the light changes fast, at the same depth, too. Set exposure and white balance again every ten minutes.`,
  cloud_lights_evenly: () =>
    "Under a closed cloud the light comes evenly from above: which way you face hardly matters, and pictures come out flat. Where the sun breaks through, set exposure and white balance again.",
  weed_tints: () =>
    "Weed swallows light and tints what is left: under it, set exposure and white balance again, and look for gaps where the light comes down.",
  blue_is_missing: (p, u) =>
    `In this water blue is missing, more than red: at ${depth(p.depth_m, u)} the camera gets less of it than of anything else. No filter adds any. Holding back green, this one lets the camera lift blue and red alike.`,
  automatic_colours: (p) =>
    `Automatic colours are best with little water in the picture: come close${p.sun_behind ? ", keep the sun behind you" : ""} and fill the frame with the subject. In the edit, set the white point on something that was grey or white down there: pale sand, a slate, a tank.`,
};
