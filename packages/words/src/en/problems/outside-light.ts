import type { OutsideCode } from "@sunfathom/contract";
import type { LightRefusals } from "@sunfathom/planner";
import type { FieldText, OutsideText, Texts } from "../../problems/texts.js";

/** Why the model has no answer to the light of a scene. */
export const outsideLight: Texts<Pick<LightRefusals, OutsideCode & keyof LightRefusals>, OutsideText> = {
  instant_out_of_range: ({ year, first_year, last_year }) => {
    const given = year === undefined ? "not a date" : `in the year ${year}`;
    return ofPlace(
      `The time is ${given}; the model knows the sun's position from ${first_year} to ${last_year}.`,
    );
  },
  local_time_malformed: ({ local_time, first_year, last_year }) =>
    ofPlace(
      `local_time "${local_time}" is not a date and time such as 2026-03-10T10:15, in the years ${first_year} to ${last_year}, without a UTC offset.`,
    ),
  local_time_skipped: ({ local_time, time_zone }) =>
    ofPlace(
      `The clocks of ${time_zone} never showed ${local_time}: they went forward over it. Give a time before or after the change.`,
    ),
  time_zone_unknown: ({ time_zone }) =>
    ofPlace(`time_zone "${time_zone}" is not a name of the IANA time zone database, such as Etc/GMT+9.`),
  secchi_depth_out_of_range: (range) => ofClarity("secchi_depth_m", range),
  visibility_out_of_range: (range) => ofClarity("visibility_m", range),
  water_hue_contradicts_measure: ({ measure, value_m, water_hue, min_m, max_m, fitting_hues }) => {
    const fitting = fitting_hues.join(" or ");
    return outside(
      `${measure} of ${value_m} does not go with ${hueName(water_hue)} water, which gives ${metres(min_m)} to ${metres(max_m)}. Water that is ${fitting_hues.map(hueName).join(" or ")} would fit.`,
      `${metres(min_m)} to ${metres(max_m)} with water_hue ${water_hue}, or water_hue ${fitting}`,
    );
  },
  card_samples_too_few: ({ span_m, least_span_m }) =>
    ofCards(
      `The card was at depths only ${span_m.toFixed(1)} m apart: use two depths at least ${least_span_m} m apart.`,
    ),
  card_samples_malformed: (p) => {
    switch (p.case) {
      case "not_with_all":
        return ofCards(
          `${p.given} of ${p.samples} card samples have ${p.field}: give it with all or with none.`,
        );
      case "clipped":
        return ofCards(
          `The picture of the card at ${p.depth_m} m is clipped (${p.value}): take it again, exposed darker.`,
        );
      case "dark":
        return ofCards(
          `The card at ${p.depth_m} m has a channel that recorded nothing (${p.value}): expose it brighter, or use a shallower card.`,
        );
      case "balance_unlocked":
        return ofCards(
          "The white balance may have changed between the pictures: shoot raw, lock it, or give red_gain, green_gain and blue_gain with each.",
        );
      default:
        return ofCards(`The card at ${p.depth_m} m has an impossible depth, exposure or gain.`);
    }
  },
  card_samples_contradict: ({ rms_ln, worst_depth_m }) =>
    ofCards(
      `No water explains these card samples: they miss the best fit by ${rms_ln.toFixed(2)} (natural logarithm), most at ${worst_depth_m} m. Look for shadow, video light, a card that was turned, or an automatic that was not locked.`,
    ),
  card_samples_outside_family: (p) => {
    const end = p.case === "clearer" ? "clearer than pure sea water" : "murkier than any published type";
    return ofCards(
      `The card samples point to water ${end}: check depths, exposures and the order of the pictures.`,
    );
  },
  sun_too_low: ({ elevation_deg, min_elevation_deg }) => ({
    detail:
      "The sun is too low for the daylight model: at dusk and dawn the light is weak, blue and quick to change. Plan with video lights, or ask for a higher sun.",
    message: `the sun is at ${elevation_deg.toFixed(1)} degrees, outside the model's range`,
    allowed: `a sun from ${min_elevation_deg} to 90 degrees above the horizon, or daylight_basis "none" to plan with video lights alone`,
  }),
  no_light: (p) => {
    if (p.case === "no_source") {
      return {
        detail: "There is no daylight and no video light: nothing to film by.",
        message: "there is no video light and no daylight",
        allowed: "at least one video light, or daylight",
      };
    }
    const named = p.filter === "kit" ? "a filter of the kit" : "the filter on the lens";
    if (p.case === "filter_passes_none") {
      return {
        detail: `No light that a camera sees gets through ${named}.`,
        message: "this filter lets nothing through from 400 to 720 nm, where cameras see",
        allowed: "a transmittance above 0 somewhere from 400 to 720 nm",
      };
    }
    return {
      detail: `At ${p.depth_m} m no light gets through ${named}.`,
      message: `this filter stops all the light that the water leaves at ${p.depth_m} m`,
      allowed: "a transmittance above 0 where this water is clear",
    };
  },
  no_balance: ({ channel, depth_m }) => ({
    detail: `At ${depth_m} m the camera's ${channel} channel may receive nothing.`,
    message: `no gain brings back what the ${channel} channel lacks at ${depth_m} m`,
    allowed: "a depth and a filter that leave each channel at least a part in 10^12 of the strongest",
  }),
  no_daylight_left: ({ depth_m, max_depth_m, is_daylit }) =>
    outside(
      `At ${depth_m} m this water leaves no daylight.`,
      `at most ${max_depth_m.toFixed(1)} m in this water${is_daylit ? ', or daylight_basis "none" to plan with video lights alone' : ""}`,
    ),
  no_sight: ({ distance_m, max_distance_m }) =>
    outside(
      `No light gets through ${distance_m} m of this water.`,
      `at most ${max_distance_m.toFixed(2)} m in this water`,
    ),
  filter_opaque: () =>
    outside(
      "This curve lets no visible light through.",
      "transmittance above 0 somewhere from 380 to 780 nm",
    ),
};

const hueName = (hue: string): string => hue.replace("_", "-");

const outside = (message: string, allowed: FieldText["allowed"]): OutsideText => ({
  detail: message,
  message,
  allowed,
});

const ofPlace = (message: string): OutsideText =>
  outside(message, "a place, and a time that its clocks show, between 1900 and 2100");

const ofCards = (message: string): OutsideText => outside(message, "card samples of one natural water");

const ofClarity = (field: string, range: LightRefusals["visibility_out_of_range"]): OutsideText => {
  const shown = `${metres(range.min_m)} to ${metres(range.max_m)}`;
  return outside(`${field} is ${range.value_m}; in natural water it is ${shown}.`, shown);
};

const metres = (value: number): string => `${value.toFixed(value >= 10 ? 0 : 1)} m`;
