/** Words that many questions share. */

/** "3 mm, 5 mm and 7 mm" */
export const list = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts[parts.length - 1]}`;

/** For parts that hold commas themselves. */
export const series = (parts: readonly string[]): string => parts.join("; ");

const WATERS_EN = {
  IB: "clear blue ocean water (Jerlov type IB)",
  II: "blue ocean water (Jerlov type II)",
  "1C": "clear coastal water (Jerlov type 1C)",
  "3C": "green coastal water (Jerlov type 3C)",
  "5C": "turbid green coastal water (Jerlov type 5C)",
  "7C": "very turbid coastal water (Jerlov type 7C)",
};

const DECIMALS = ["as a whole number", "to one decimal", "to two decimals", "to three decimals"];

export const COMMON_EN = {
  water: WATERS_EN,
  scene: (p: { water: string; sun: string }) =>
    `You dive in ${p.water}. The sun stands ${p.sun} above the horizon and the sky is clear.`,
  /** The unit of an answer, as it reads. */
  unit: (code: string): string => code,
  /** A template's name, as the title of its questions. */
  title: (p: { template: string }): string => p.template.replaceAll("_", " "),
  /** Behind the stem of a numeric question. */
  answerIn: (p: { unit: string; decimals: number }) =>
    `Answer${p.unit === "" ? "" : ` in ${p.unit},`} ${DECIMALS[p.decimals] ?? `to ${p.decimals} decimals`}.`,
  chooseAll: "Choose every right answer.",
  sources: (p: { sources: string[] }) => `Sources: ${series(p.sources)}.`,
  right: "Right.",
  wrongNumber: "That is not it.",
  partlyRight: "Not all of it is right.",
  blank: "You left this one blank.",
  missed: "This one is right as well.",
};

/** Sources that are not part of the model. */
export const CITATIONS_EN = {
  density: "Density, transmittance and stops: by definition (ISO 5-2; a stop is a factor of two)",
  iso_speed: "ISO 12232: doubling the ISO speed halves the exposure needed",
  f_number: "ISO 517: the light through a lens goes with the square of the f-number",
  mired: "Micro reciprocal degree: 1 000 000 divided by the colour temperature in kelvin, by definition",
  inverse_square: "Inverse-square law, for a light that is small compared with its distance",
  snell: "Snell's law, refractive index of sea water 1.34 (Quan & Fry 1995, Applied Optics 34, 3477)",
  mean_sensor:
    "Colour channels of a camera: mean of 11 cameras published by the Academy of Motion Picture Arts and Sciences",
  light_field:
    "Daylight at depth: refraction at the surface, Gershun's law, photon tracing with the phase function of Fournier & Jonasz 1999",
  path_attenuation: "Short paths through water: absorption and half of scattering, an assumption",
  filter_shapes: "Filters: typical curves of coloured filters, an assumption, as no standard publishes any",
  filter_merit: "Colour error of a 24-patch chart after white balance, exposure and grade (CIEDE2000)",
  camera_recording: "ISO 12232 for exposure; sensor noise of a typical camera, an assumption",
  vignetting: "Geometry of round openings",
  rear_sheet: "Focus shift of a flat sheet: (1 - 1/n) of its thickness, a textbook formula of optics",
  lens_formula: "Lens formula for far subjects, any textbook of optics",
  shutter_angle:
    "Shutter angle: the share of 360° of a frame's time for which the shutter is open, by definition",
  rec_709: "ITU-R BT.709: signal over light",
  code_values: "Code values: two to the power of the bits, by definition; a stop is a factor of two of light",
  lit_haze: "Backscatter of video lights: single scattering along the line of sight",
  common_practice: "Common practice of the trade, no published source",
};
export type CitationId = keyof typeof CITATIONS_EN;

/** Of sources that are part of the model, by their ids, where they are not said as the model says them. */
export const MODEL_CITATIONS_EN: Readonly<Record<string, string>> = {};
