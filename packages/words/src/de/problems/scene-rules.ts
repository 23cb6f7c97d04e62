import type { SceneRuleParameters } from "@sunfathom/contract";
import { type FieldText, type Texts, fieldText as text } from "../../problems/texts.js";
import { asGiven, either, grouped } from "../format.js";
import {
  halfFilter,
  limitsInOrder,
  missing,
  notRising,
  notWhole,
  repeatedId,
  withinLimits,
} from "./rule-parts.js";
import { sensorRules } from "./sensor-rules.js";
import { waterWays } from "./water-ways.js";

/** Was falsch ist, wo eine Regel zwischen Feldern einer Szene verletzt ist. */
export const sceneRuleTexts: Texts<SceneRuleParameters, FieldText> = {
  one_water_basis: ({ given }) =>
    text(
      given === 0
        ? "Das Wasser ist nicht beschrieben."
        : `Das Wasser ist auf ${given} Arten zugleich beschrieben.`,
      `genau eines von: ${waterWays}`,
    ),
  water_companions: (p) =>
    p.case === "missing"
      ? text(missing(p.missing), `${p.field} zusammen mit ${p.missing}`)
      : text(
          `${p.field} hat ohne ${either(p.goes_with)} keine Wirkung.`,
          `mit ${either(p.goes_with)}, oder gar nicht`,
        ),
  kd_samples_rising: notRising("kd_samples"),
  card_exposure_whole: notWhole,
  card_gains_whole: notWhole,
  sun_with_basis_sun: ({ daylight_basis }) =>
    text(
      `Die Höhe der Sonne ist angegeben, aber daylight_basis ist ${daylight_basis}.`,
      "weglassen, oder daylight_basis sun",
    ),
  place_with_basis_place_time: ({ field, daylight_basis }) =>
    text(
      `${field} hat keine Wirkung, wenn daylight_basis ${daylight_basis} ist.`,
      "weglassen, oder daylight_basis place_time",
    ),
  place_and_time_whole: (p) =>
    p.case === "missing"
      ? text(`${p.field} fehlt: Die Höhe der Sonne folgt aus Ort und Zeit.`, "latitude_deg und longitude_deg")
      : text(
          {
            twice: "Die Zeit ist doppelt angegeben.",
            half: "local_time und time_zone gehören zusammen: Eines von beiden fehlt.",
            not_given: "Die Zeit ist nicht angegeben.",
          }[p.case],
          "time, oder local_time und time_zone",
        ),
  day_exists: () => text("Diesen Tag hat der Monat nicht.", "ein Tag, den es im Kalender gibt"),
  one_depth: (p) =>
    text(
      p.case === "missing"
        ? missing(p.field)
        : `Die Tiefe ist ${p.case === "twice" ? "doppelt" : "nicht"} angegeben.`,
      "depth_m, oder min_depth_m zusammen mit max_depth_m",
    ),
  depths_in_order: ({ min_depth_m, max_depth_m }) =>
    text(
      `${asGiven(min_depth_m)} m ist tiefer als max_depth_m, ${asGiven(max_depth_m)} m.`,
      `höchstens ${asGiven(max_depth_m)} m`,
    ),
  one_sun_side: () => text("Wo die Sonne steht, ist doppelt angegeben.", "sun_side, oder camera_heading_deg"),
  heading_with_place_time: ({ daylight_basis }) =>
    text(
      `Wenn daylight_basis ${daylight_basis} ist, ist die Richtung der Sonne nicht bekannt, und eine Blickrichtung hat keine Wirkung.`,
      "mit Ort und Zeit, oder stattdessen sun_side",
    ),
  one_bottom: () => text("Der Meeresgrund ist doppelt angegeben.", "bottom, oder bottom_reflectance"),
  bottom_with_depth: () =>
    text(
      "Eine Tiefe des Meeresgrunds hat keine Wirkung, wenn bottom none ist.",
      "weglassen, oder angeben, woraus der Grund ist",
    ),
  bottom_below_camera: ({ bottom_depth_m, deepest_m }) =>
    text(
      `Der Meeresgrund in ${asGiven(bottom_depth_m)} m liegt flacher als dein tiefstes Motiv, in ${asGiven(deepest_m)} m.`,
      `mindestens ${asGiven(deepest_m)} m`,
    ),
  bottom_reflectance_rising: notRising("bottom_reflectance"),
  iso_limits_in_order: limitsInOrder("nicht über"),
  iso_within_limits: withinLimits,
  f_number_limits_in_order: limitsInOrder("nicht über"),
  f_number_within_limits: withinLimits,
  white_balance_cct_K_limits_in_order: limitsInOrder("unter"),
  one_shutter: () =>
    text(
      "Die Belichtungszeit ist doppelt angegeben.",
      "shutter_s, oder shutter_angle_deg mit frame_rate_fps",
    ),
  shutter_within_frame: ({ frame_rate_fps, frame_s }) =>
    text(
      `Bei ${asGiven(frame_rate_fps)} Bildern pro Sekunde dauert ein Bild ${asGiven(frame_s)} s, und die Belichtungszeit kann nicht länger sein.`,
      `höchstens ${asGiven(frame_s)} s`,
    ),
  shutter_not_too_short: ({ shutter_s, shortest_s }) =>
    text(
      `Aus Bildrate und Shutterwinkel ergibt sich eine Belichtungszeit von 1/${grouped(Number((1 / shutter_s).toPrecision(2)))} s, und das ist zu kurz.`,
      `ein größerer Winkel oder eine niedrigere Rate: mindestens ${asGiven(shortest_s)} s`,
    ),
  one_recording_curve: () =>
    text("Die Aufnahmekurve ist doppelt angegeben.", "recording_curve, oder recording_curve_points"),
  recording_curve_points_rising: ({ field, value, before, least_rise }) =>
    text(
      `In recording_curve_points muss ${field} ansteigen: Auf ${asGiven(before)} folgt ${asGiven(value)}.`,
      least_rise > 0
        ? `mindestens ${asGiven(least_rise)} über ${asGiven(before)}`
        : `über ${asGiven(before)}`,
    ),
  recording_curve_points_whole: ({ wanted, light_share }) =>
    text(
      `Die Kurve ${wanted === 0 ? "beginnt" : "endet"} bei light_share ${asGiven(light_share)}: ${wanted === 0 ? "Dunkleres" : "Helleres"} Licht hat keinen Tonwert.`,
      `${wanted} beim ${wanted === 0 ? "ersten" : "letzten"} Punkt`,
    ),
  ...sensorRules,
  kelvin_with_mode: (p) =>
    p.case === "missing"
      ? text(
          "white_balance_mode ist kelvin, aber white_balance_kelvin_K fehlt.",
          "white_balance_kelvin_K, oder white_balance_mode card oder auto",
        )
      : text(
          `white_balance_mode ${p.white_balance_mode} nimmt keinen Wert in Kelvin.`,
          "weglassen, oder white_balance_mode kelvin",
        ),
  kelvin_within_limits: ({ white_balance_kelvin_K, min_K, max_K }) =>
    text(
      `${white_balance_kelvin_K} K liegt außerhalb des Einstellbereichs des Weißabgleichs.`,
      `${min_K} bis ${max_K}, oder andere Grenzen in white_balance_min_cct_K und white_balance_max_cct_K`,
    ),
  auto_exposure_free: ({ fixed }) =>
    text(
      `${fixed.join(", ")} sind festgelegt: Die Belichtungsautomatik hat nichts mehr einzustellen.`,
      "exposure_mode manual, oder eines davon weglassen",
    ),
  card_balance_not_auto: () =>
    text(
      "Mit white_balance_mode auto ändert die Kamera ihren Weißabgleich ständig: Er ist von einer Aufnahme der Karte zur nächsten nicht fest.",
      "white_balance_mode card oder kelvin für Raw-Bilder oder einen einzigen Weißabgleich, oder locked_balance weglassen",
    ),
  one_lens_filter: () => text("Der Filter auf dem Objektiv ist doppelt angegeben.", oneFilter),
  one_filter_strength: () =>
    text("Die Dichte des Filters ist doppelt angegeben.", "filter_density oder filter_stops, nicht beides"),
  lens_filter_pair: halfFilter("beim Filter auf dem Objektiv"),
  filter_transmittance_rising: notRising("filter_transmittance"),
  filter_samples_agree: (p) =>
    text(
      p.case === "brighter"
        ? `Die Karte ist mit Filter im ${COLOURS[p.colour]} um ${asGiven(p.stops)} Blendenstufen heller als ohne; das kann kein Filter.`
        : `Dieses Paar und ein früheres unterscheiden sich im ${COLOURS[p.colour]} um ${asGiven(p.stops)} Blendenstufen.`,
      "die Karte mit und ohne Filter im selben Licht aufnehmen, mit gleicher Belichtung und gleichem Weißabgleich, und lineare Werte angeben",
    ),
  kit_ids_unique: repeatedId,
  kit_filters: (p) => {
    if (p.case === "half") return halfFilter("bei diesem Filter der Ausrüstung")(p);
    if (p.case === "lamp") return text("Das ist eine Videolampe, kein Filter.", "keine Filter-Felder");
    return text(
      p.case === "twice" ? "Der Filter ist doppelt angegeben." : "Der Filter ist nicht beschrieben.",
      oneFilter,
    );
  },
  kit_curves_rising: notRising("filter_transmittance"),
  lamp_colour: ({ fields }) => text("Die Farbe der Lampe ist doppelt angegeben.", either(fields)),
  lamp_filter_pair: halfFilter("beim Filter auf der Videolampe"),
  lamps_once: () => text("Lampen sind doppelt angegeben.", "lamps, oder Felder, die mit lamp_ beginnen"),
  lamp_complete: (p) => text(missing(p.missing), "lamp_flux_lm zusammen mit lamp_distance_m"),
  lead_distance_with_stops: () =>
    text(
      "wanted_lead_distance_m bewirkt ohne wanted_lead_stops nichts.",
      "mit wanted_lead_stops, oder gar nicht",
    ),
  overhead_parts: ({ field, goes_with }) =>
    text(
      `${field} hat ohne overhead ${either(goes_with)} keine Wirkung.`,
      `mit overhead ${either(goes_with)}, oder gar nicht`,
    ),
  cave_is_dark: ({ daylight_basis }) =>
    text(
      `In einer Höhle gibt es kein Tageslicht, aber daylight_basis ist ${daylight_basis}.`,
      "overhead cavern, wo Tageslicht hinkommt, oder daylight_basis none",
    ),
  mounting_kinds: (p) => text(missing(p.missing), "port_kind und lens_kind"),
};

const COLOURS = { red: "Rot", green: "Grün", blue: "Blau" };

const oneFilter =
  "filter_kind und filter_density (oder filter_stops), oder filter_transmittance, oder filter_samples";
