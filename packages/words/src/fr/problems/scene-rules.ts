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

/** Ce qui ne va pas quand une règle entre champs d’une scène n’est pas respectée. */
export const sceneRuleTexts: Texts<SceneRuleParameters, FieldText> = {
  one_water_basis: ({ given }) =>
    text(
      given === 0 ? "L’eau n’est pas décrite." : `L’eau est décrite de ${given} façons.`,
      `un seul de ceux-ci : ${waterWays}`,
    ),
  water_companions: (p) =>
    p.case === "missing"
      ? text(missing(p.missing), `${p.field} avec ${p.missing}`)
      : text(
          `${p.field} n’a pas d’effet sans ${either(p.goes_with)}.`,
          `avec ${either(p.goes_with)}, ou pas du tout`,
        ),
  kd_samples_rising: notRising("kd_samples"),
  card_exposure_whole: notWhole,
  card_gains_whole: notWhole,
  sun_with_basis_sun: ({ daylight_basis }) =>
    text(
      `Vous avez indiqué la hauteur du soleil, mais daylight_basis vaut ${daylight_basis}.`,
      "l’omettre, ou daylight_basis sun",
    ),
  place_with_basis_place_time: ({ field, daylight_basis }) =>
    text(
      `${field} n’a pas d’effet quand daylight_basis vaut ${daylight_basis}.`,
      "l’omettre, ou daylight_basis place_time",
    ),
  place_and_time_whole: (p) =>
    p.case === "missing"
      ? text(
          `Il manque ${p.field} : la hauteur du soleil découle du lieu et de l’heure.`,
          "latitude_deg et longitude_deg",
        )
      : text(
          {
            twice: "Vous avez indiqué l’heure de deux façons.",
            half: "local_time et time_zone vont ensemble : il manque l’un des deux.",
            not_given: "Il manque l’heure.",
          }[p.case],
          "time, ou local_time et time_zone",
        ),
  day_exists: () => text("Ce mois n’a pas ce jour.", "un jour du calendrier"),
  one_depth: (p) =>
    text(
      p.case === "missing"
        ? missing(p.field)
        : p.case === "twice"
          ? "Vous avez indiqué la profondeur de deux façons."
          : "Il manque la profondeur.",
      "depth_m, ou min_depth_m avec max_depth_m",
    ),
  depths_in_order: ({ min_depth_m, max_depth_m }) =>
    text(
      `${asGiven(min_depth_m)} m est plus profond que max_depth_m, ${asGiven(max_depth_m)} m.`,
      `${asGiven(max_depth_m)} m au plus`,
    ),
  one_sun_side: () =>
    text("Vous avez indiqué le côté du soleil de deux façons.", "sun_side, ou camera_heading_deg"),
  heading_with_place_time: ({ daylight_basis }) =>
    text(
      `Quand daylight_basis vaut ${daylight_basis}, on ignore où est le soleil : un cap n’a pas d’effet.`,
      "avec le lieu et l’heure, ou sun_side à la place",
    ),
  one_bottom: () => text("Vous avez indiqué le fond de deux façons.", "bottom, ou bottom_reflectance"),
  bottom_with_depth: () =>
    text(
      "bottom vaut none : une profondeur du fond n’a pas d’effet.",
      "l’omettre, ou indiquer la nature du fond",
    ),
  bottom_below_camera: ({ bottom_depth_m, deepest_m }) =>
    text(
      `Le fond à ${asGiven(bottom_depth_m)} m est au-dessus du sujet le plus profond, à ${asGiven(deepest_m)} m.`,
      `au moins ${asGiven(deepest_m)} m`,
    ),
  bottom_reflectance_rising: notRising("bottom_reflectance"),
  iso_limits_in_order: limitsInOrder("pas au-dessus de"),
  iso_within_limits: withinLimits,
  f_number_limits_in_order: limitsInOrder("pas au-dessus de"),
  f_number_within_limits: withinLimits,
  white_balance_cct_K_limits_in_order: limitsInOrder("au-dessous de"),
  one_shutter: () =>
    text(
      "Vous avez indiqué le temps de pose de deux façons.",
      "shutter_s, ou shutter_angle_deg avec frame_rate_fps",
    ),
  shutter_within_frame: ({ frame_rate_fps, frame_s }) =>
    text(
      `À ${asGiven(frame_rate_fps)} images par seconde, une image dure ${asGiven(frame_s)} s : le temps de pose ne peut pas être plus long.`,
      `${asGiven(frame_s)} s au plus`,
    ),
  shutter_not_too_short: ({ shutter_s, shortest_s }) =>
    text(
      `La cadence et l’angle d’obturation donnent un temps de pose de 1/${grouped(Number((1 / shutter_s).toPrecision(2)))} s, ce qui est trop court.`,
      `un angle plus grand ou une cadence plus lente : au moins ${asGiven(shortest_s)} s`,
    ),
  one_recording_curve: () =>
    text(
      "Vous avez indiqué la courbe d’enregistrement de deux façons.",
      "recording_curve, ou recording_curve_points",
    ),
  recording_curve_points_rising: ({ field, value, before, least_rise }) =>
    text(
      `Dans recording_curve_points, ${field} doit aller en croissant : ${asGiven(value)} vient après ${asGiven(before)}.`,
      least_rise > 0
        ? `au moins ${asGiven(least_rise)} de plus que ${asGiven(before)}`
        : `plus de ${asGiven(before)}`,
    ),
  recording_curve_points_whole: ({ wanted, light_share }) =>
    text(
      `La courbe ${wanted === 0 ? "commence" : "finit"} à un light_share de ${asGiven(light_share)} : une lumière plus ${wanted === 0 ? "faible" : "forte"} n’a pas de niveau.`,
      `${wanted} au ${wanted === 0 ? "premier" : "dernier"} point`,
    ),
  ...sensorRules,
  kelvin_with_mode: (p) =>
    p.case === "missing"
      ? text(
          "white_balance_mode vaut kelvin, mais il manque white_balance_kelvin_K.",
          "white_balance_kelvin_K, ou white_balance_mode card ou auto",
        )
      : text(
          `Avec white_balance_mode ${p.white_balance_mode}, une valeur en kelvins ne sert pas.`,
          "l’omettre, ou white_balance_mode kelvin",
        ),
  kelvin_within_limits: ({ white_balance_kelvin_K, min_K, max_K }) =>
    text(
      `La balance des blancs de l’appareil ne se règle pas sur ${white_balance_kelvin_K} K.`,
      `de ${min_K} à ${max_K}, ou d’autres limites dans white_balance_min_cct_K et white_balance_max_cct_K`,
    ),
  auto_exposure_free: ({ fixed }) =>
    text(
      `${fixed.join(", ")} sont tous imposés : l’exposition automatique n’a plus rien à régler.`,
      "exposure_mode manual, ou omettre l’un d’eux",
    ),
  card_balance_not_auto: () =>
    text(
      "Avec white_balance_mode auto, l’appareil change sans cesse sa balance des blancs : elle n’est pas verrouillée d’une prise de la charte à l’autre.",
      "white_balance_mode card ou kelvin pour des images raw ou une seule balance, ou omettre locked_balance",
    ),
  one_lens_filter: () => text("Vous avez indiqué le filtre d’objectif de deux façons.", oneFilter),
  one_filter_strength: () =>
    text(
      "Vous avez indiqué la densité du filtre de deux façons.",
      "filter_density ou filter_stops, pas les deux",
    ),
  lens_filter_pair: halfFilter("au filtre de l’objectif"),
  filter_transmittance_rising: notRising("filter_transmittance"),
  filter_samples_agree: (p) =>
    text(
      p.case === "brighter"
        ? `Dans le ${COLOURS[p.colour]}, la charte est plus claire de ${asGiven(p.stops)} IL avec le filtre que sans, ce qu’aucun filtre ne peut faire.`
        : `Cette paire et une paire précédente diffèrent de ${asGiven(p.stops)} IL dans le ${COLOURS[p.colour]}.`,
      "photographier la charte avec et sans le filtre dans la même lumière, à la même exposition et à la même balance des blancs, et donner des valeurs linéaires",
    ),
  kit_ids_unique: repeatedId,
  kit_filters: (p) => {
    if (p.case === "half") return halfFilter("à ce filtre du matériel")(p);
    if (p.case === "lamp")
      return text("Cet élément est un phare vidéo, pas un filtre.", "aucun champ de filtre");
    return text(
      p.case === "twice" ? "Vous avez indiqué le filtre de deux façons." : "Le filtre n’est pas décrit.",
      oneFilter,
    );
  },
  kit_curves_rising: notRising("filter_transmittance"),
  lamp_colour: ({ fields }) =>
    text("Vous avez indiqué la couleur du phare vidéo de deux façons.", either(fields)),
  lamp_filter_pair: halfFilter("au filtre du phare vidéo"),
  lamps_once: () =>
    text(
      "Vous avez indiqué les phares vidéo de deux façons.",
      "`lamps`, ou des champs qui commencent par `lamp_`",
    ),
  lamp_complete: (p) => text(missing(p.missing), "lamp_flux_lm avec lamp_distance_m"),
  lead_distance_with_stops: () =>
    text(
      "wanted_lead_distance_m n’a pas d’effet sans wanted_lead_stops.",
      "avec wanted_lead_stops, ou pas du tout",
    ),
  overhead_parts: ({ field, goes_with }) =>
    text(
      `${field} n’a pas d’effet sans overhead ${either(goes_with)}.`,
      `avec overhead ${either(goes_with)}, ou pas du tout`,
    ),
  cave_is_dark: ({ daylight_basis }) =>
    text(
      `Une grotte n’a pas de lumière du jour, mais daylight_basis vaut ${daylight_basis}.`,
      "overhead cavern là où la lumière du jour arrive, ou daylight_basis none",
    ),
  mounting_kinds: (p) => text(missing(p.missing), "port_kind et lens_kind"),
};

const COLOURS = { red: "rouge", green: "vert", blue: "bleu" };

const oneFilter =
  "filter_kind et filter_density (ou filter_stops), ou filter_transmittance, ou filter_samples";
