import { z } from "zod/v3";
import { withoutDefault } from "../field/annotation.js";
import { choice, list } from "../field/choice.js";
import { withOptional } from "../field/optional.js";
import { quantity } from "../field/quantity.js";
import { lampDefaults, wantedLeadFrom_m } from "./defaults.js";
import { FilterKind, filterDensity } from "./lens-filter.js";
import { beamMedia, ledNames } from "./values.js";

export const BeamMedium = z.enum(beamMedia).describe("Where a beam angle was measured.");

export const LedName = z
  .enum(ledNames)
  .describe(
    "LED illuminant of the CIE (CIE 015:2018): B1 to B5 blue-pumped, BH1 blue hybrid, RGB1 mixed, V1 and V2 violet-pumped.",
  );

/** @param prefix of the names of fields, where one is named by another */
const lampFieldsNamed = (prefix: "" | "lamp_") => ({
  flux_lm: quantity({
    description: "Luminous flux of one video light, without a filter.",
    unit: "lm",
    min: 1,
    max: 200000,
    example: 4000,
  }),
  count: quantity({
    description: "How many of these video lights are on.",
    unit: "1",
    min: 1,
    max: 16,
    integer: true,
    example: 2,
    default: lampDefaults.count,
  }),
  beam_angle_deg: quantity({
    description: "Full angle of the beam.",
    unit: "deg",
    min: 5,
    max: 180,
    example: 100,
    default: lampDefaults.beam_angle_deg,
  }),
  beam_angle_medium: choice(BeamMedium, {
    description: "Where the beam angle was measured: water narrows the beam behind a flat port.",
    example: "water",
    default: lampDefaults.beam_angle_medium,
  }),
  cct_K: quantity({
    description: `Colour temperature of the video light. Not with \`${prefix}led\`.`,
    unit: "K",
    min: 1500,
    max: 20000,
    example: 5600,
    default: lampDefaults.cct_K,
  }),
  led: choice(LedName, {
    description: `Spectrum of the video light, by the name of a CIE LED illuminant. In place of \`${prefix}cct_K\`.`,
    example: "LED-B4",
  }),
  distance_m: quantity({
    description: "From the video light to the subject, through water.",
    unit: "m",
    min: 0.05,
    max: 20,
    example: 0.8,
  }),
  filter_kind: choice(FilterKind, {
    description: `Kind of the filter in front of the video light. With \`${prefix}filter_density\`; no filter when left out.`,
    example: "blue",
  }),
  filter_density: quantity({
    ...filterDensity,
    description: `Peak optical density of the filter in front of the video light, above that of its clear glass, in the band that its kind absorbs. With \`${prefix}filter_kind\`.`,
  }),
});

export const lampFields = lampFieldsNamed("");

/** Fields that not every lamp has. */
const mayBeAbsent = ["cct_K", "led", "filter_kind", "filter_density"] as const;

export const Lamp = z
  .object({
    ...withOptional(lampFields, ["count", "beam_angle_deg", "beam_angle_medium", ...mayBeAbsent]),
  })
  .strict()
  .describe("Equal video lights at one distance, switched on.");

export const ResolvedLamp = z
  .object({
    ...withOptional(lampFields, mayBeAbsent),
  })
  .describe("Equal video lights at one distance, with every default filled in.");

const exampleLamp = { flux_lm: 4000, count: 2, beam_angle_deg: 100, cct_K: 5600, distance_m: 0.8 };

/**
 * Groups of equal lamps in one scene: pairs for wide and for close, a spot, a focus light, one behind the subject and a
 * partner's. Each costs as much as all else in a scene, and with six a plan takes five times as long as a usual one.
 */
const mostLampGroups = 6;

export const lampsField = {
  lamps: list(Lamp, {
    description: "Video lights that are switched on; none when left out or empty.",
    maxItems: mostLampGroups,
    example: [exampleLamp],
  }),
};

export const resolvedLampsField = {
  lamps: list(ResolvedLamp, {
    description: "Video lights that are switched on; empty when there are none.",
    maxItems: mostLampGroups,
    example: [{ ...exampleLamp, beam_angle_medium: "water" }],
  }),
};

/** The question the other way round: what light would do. */
export const wantedLeadFields = {
  wanted_lead_stops: quantity({
    description:
      "By how many stops the video lights should outshine daylight on the subject, in the green channel: `mixed-light` then says how many lumens that needs.",
    unit: "stop",
    min: -5,
    max: 10,
    example: 3,
  }),
  wanted_lead_distance_m: quantity({
    description: `From those video lights to the subject. With \`wanted_lead_stops\`; by default that of the nearest one, or ${wantedLeadFrom_m} m without one.`,
    unit: "m",
    min: 0.05,
    max: 20,
    example: 0.8,
  }),
};

const flat = lampFieldsNamed("lamp_");

/**
 * One group of lamps in flat fields, for scenes that must fit a query string. Without defaults: a lamp that nobody
 * names has none.
 */
export const flatLampFields = {
  lamp_flux_lm: flat.flux_lm,
  lamp_count: withoutDefault(flat.count),
  lamp_beam_angle_deg: withoutDefault(flat.beam_angle_deg),
  lamp_beam_angle_medium: withoutDefault(flat.beam_angle_medium),
  lamp_cct_K: withoutDefault(flat.cct_K),
  lamp_led: flat.led,
  lamp_distance_m: flat.distance_m,
  lamp_filter_kind: flat.filter_kind,
  lamp_filter_density: flat.filter_density,
};
