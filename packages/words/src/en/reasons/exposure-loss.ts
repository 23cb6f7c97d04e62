import type { ExposureLossReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { dialFNumber, settings } from "../dial.js";
import { depth, distance, neutral, shown, stops } from "../format.js";

/** Reasons on exposure loss. */
export const exposureLossReasons: Texts<ExposureLossReasons, string> = {
  too_bright: (p, u) =>
    `At ${depth(p.depth_m, u)} it is ${stops(p.excess_stops)} too bright even with ${settings(p)}, the least exposure you allow the camera. Use ${neutral(p.density)}; a higher ISO would make it worse.`,
  aperture_can_close: (p) =>
    `You could close the aperture to f/${dialFNumber(p.f_number)} instead: what you set holds it more open than it need be.`,
  too_dark: (p, u) =>
    `At ${depth(p.depth_m, u)} it is ${stops(p.shortfall_stops)} too dark even with ${settings(p)}. More light has to come from a dive under a higher sun, shallower water, a video light or a longer exposure time.`,
  exposure_fits: (p, u) =>
    `At ${depth(p.depth_m, u)} the subject meters EV ${shown(p.ev, 1)} at ISO 100: ${settings(p)}.`,
  levels_apart: (p, u) =>
    p.stops > 0
      ? `At ${depth(p.depth_m, u)} a meter that averages the picture sets ${stops(p.stops)} less exposure than the subject needs, because water and bottom are brighter. Expose for the subject, or follow the meter if the blue of the background matters more to you.`
      : `At ${depth(p.depth_m, u)} a meter that averages the picture sets ${stops(-p.stops)} more exposure than the subject needs, because water and bottom are darker. Expose for the subject, or it burns out.`,
  auto_exposes_picture: (p, u) =>
    p.stops > 0
      ? `Automatic exposure meters the whole picture. At ${depth(p.depth_m, u)} that leaves the subject ${stops(p.stops)} too dark, because water and bottom are brighter. Set exposure compensation to +${stops(p.stops)}, or lock the exposure on the subject.`
      : `Automatic exposure meters the whole picture. At ${depth(p.depth_m, u)} that leaves the subject ${stops(-p.stops)} too bright, because water and bottom are darker. Set exposure compensation to -${stops(-p.stops)}, or lock the exposure on the subject.`,
  filter_makes_it_darker: (p) =>
    `The filter on the lens costs ${stops(p.stops)} of the light that is missing: take it off.`,
  any_filter_would_worsen: () => "A filter on the lens would cost more light and make it worse.",
  port_takes: (p) =>
    `The port costs ${stops(p.stops)}, whatever its shape: light spreads as it leaves the water, and the window reflects a little. A meter inside the housing already reads that.`,
  water_takes_most: (p, u) =>
    `Between the surface and the sensor at ${depth(p.depth_m, u)}, ${stops(p.total_stops)} are lost; ${stops(p.depth_stops)} of that to the water above.`,
  haze_is_the_limit: (p, u) =>
    `Through ${distance(p.distance_m, u)} of this water ${shown(p.contrast_percent)} % of the contrast is left: haze is the limit here, not colour. Come closer before you change anything else.`,
};
