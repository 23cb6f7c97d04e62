import type { ExposureLossReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { dialFNumber, settings } from "../dial.js";
import { shown } from "../format.js";

/** Reasons on exposure loss. */
export const exposureLossReasons: Texts<ExposureLossReasons, string> = {
  too_bright: (p) =>
    `At ${shown(p.depth_m, 1)} m there are ${shown(p.excess_stops, 1)} stops too much light at ${settings(p)}, the least that the camera is allowed. Use neutral density ${shown(p.density, 1)}; a higher ISO would make it worse.`,
  aperture_can_close: (p) =>
    `Closing the aperture to f/${dialFNumber(p.f_number)} would do instead: the scene fixes it more open than the lens goes.`,
  too_dark: (p) =>
    `At ${shown(p.depth_m, 1)} m ${shown(p.shortfall_stops, 1)} stops are missing even with ${settings(p)}. More light has to come from a higher sun, a shallower depth, a lamp or a longer shutter time.`,
  exposure_fits: (p) =>
    `At ${shown(p.depth_m, 1)} m the subject asks for EV ${shown(p.ev, 1)} at ISO 100: ${settings(p)}.`,
  levels_apart: (p) =>
    p.stops > 0
      ? `At ${shown(p.depth_m, 1)} m a meter that averages the picture asks for ${shown(p.stops, 1)} stops less exposure than the subject, for water and floor are brighter: expose for the subject, or follow the meter and keep the blue behind it.`
      : `At ${shown(p.depth_m, 1)} m a meter that averages the picture asks for ${shown(-p.stops, 1)} stops more exposure than the subject, for water and floor are darker: expose for the subject, or it burns out.`,
  auto_exposes_picture: (p) =>
    p.stops > 0
      ? `Automatic exposure goes by the whole picture: at ${shown(p.depth_m, 1)} m that leaves the subject ${shown(p.stops, 1)} stops too dark, for water and floor are brighter. Set exposure compensation to +${shown(p.stops, 1)}, or lock the exposure on the subject.`
      : `Automatic exposure goes by the whole picture: at ${shown(p.depth_m, 1)} m that leaves the subject ${shown(-p.stops, 1)} stops too bright, for water and floor are darker. Set exposure compensation to -${shown(-p.stops, 1)}, or lock the exposure on the subject.`,
  filter_makes_it_darker: (p) =>
    `The filter on the lens takes ${shown(p.stops, 1)} of the missing stops: take it off.`,
  any_filter_would_worsen: () => "A filter on the lens would take more light away and make it worse.",
  port_takes: (p) =>
    `The port takes ${shown(p.stops, 1)} stops, whatever its shape: light spreads as it leaves the water, and the window reflects a little. A meter in the housing has it in its reading already.`,
  water_takes_most: (p) =>
    `Of the ${shown(p.total_stops, 1)} stops between the surface and the sensor at ${shown(p.depth_m, 1)} m the water above takes ${shown(p.depth_stops, 1)}.`,
  haze_is_the_limit: (p) =>
    `Over ${shown(p.distance_m, 1)} m of this water ${shown(p.contrast_percent)} % of the contrast is left: haze, not colour, is the limit. Come closer before anything else.`,
};
