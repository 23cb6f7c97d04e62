import type { CircumstanceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { shown, wholeStops } from "../format.js";
import type { FilterCircumstance } from "./filter-circumstances.js";

/** English texts of what light, place and camera of a dive ask for beside the plan. */
export const circumstanceReasons: Texts<Omit<CircumstanceReasons, FilterCircumstance>, string> = {
  mouth_is_brighter: (p) =>
    `Towards the mouth the water outside is about ${wholeStops(p.stops)} brighter: for a blue mouth framed in black, expose for it.${p.lamps ? ` For a dive farther in, darker by more than ${wholeStops(p.lamps.spare_stops)}, leave the filter ashore and film by your video lights.` : ""}`,
  subject_against_light: (p) =>
    `Against the sun the picture is about ${wholeStops(p.stops)} brighter than the subject. For a silhouette, close by as much: filter and white balance hardly matter then.`,
  low_sun_moves: (p) =>
    `With the sun at ${shown(p.elevation_deg)} degrees the light changes fast: set exposure and white balance again every ten minutes.`,
  cloud_lights_evenly: () =>
    "Under a closed cloud it hardly matters which way you face, and pictures come out flat. Where the sun breaks through, set exposure and white balance again.",
  weed_tints: () => "Weed swallows light and tints the rest: set exposure and white balance again under it.",
  automatic_colours: (p) =>
    `Automatic colours need little water in the picture: come close${p.sun_behind ? ", with the sun behind you" : ""}. In the edit, set the white point on pale sand, a slate or a tank.`,
};
