import type { LightCauses } from "@sunfathom/planner";
import type { CauseText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { lampCauses } from "./lamp-causes.js";

/** Was das Licht im Wasser unsicher macht. */
export const causes: Texts<LightCauses, CauseText> = {
  ...lampCauses,
  water_type_resolution: () => ({
    text: "Ein Wassertyp ist weit gefasst: Dieses Wasser kann irgendwo zwischen den Nachbartypen liegen",
    how_to_shrink:
      "Gib Sichtweite und Farbe des Wassers an, oder fotografiere eine Graukarte in zwei Tiefen.",
  }),
  kd_measurement: () => ({
    text: "Messfehler der diffusen Lichtschwächung",
    how_to_shrink: "Miss bei mehr Wellenlängen und in mehr Tiefen.",
  }),
  clarity_reading: () => ({
    text: "Wie gut du die Sichtweite geschätzt hast, also wie weit du etwas siehst",
    how_to_shrink: "Lies sie an einer markierten Leine ab, oder fotografiere eine Graukarte in zwei Tiefen.",
  }),
  beam_to_diffuse: () => ({
    text: "Aus der Sichtweite allein folgt nicht, wie schnell das Tageslicht mit der Tiefe abnimmt",
    how_to_shrink: "Lass eine Secchi-Scheibe hinab, oder fotografiere eine Graukarte in zwei Tiefen.",
  }),
  spectral_shape: () => ({
    text: "Wasser, das gleich aussieht, kann trotzdem andere Farben schlucken",
    how_to_shrink: "Fotografiere eine Graukarte in zwei Tiefen.",
  }),
  hue_name: () => ({
    text: "Dasselbe Wort für eine Farbe kann für recht verschiedenes Wasser stehen",
    how_to_shrink: "Fotografiere eine Graukarte in zwei Tiefen.",
  }),
  scattering_per_water: () => perWater,
  chlorophyll_relation: () => ({
    text: "Wasser mit gleich viel Chlorophyll dämpft das Licht unterschiedlich stark",
    how_to_shrink: "Lass eine Secchi-Scheibe hinab, oder fotografiere eine Graukarte in zwei Tiefen.",
  }),
  card_noise: () => ({
    text: "Streuung der Messwerte von der Karte",
    how_to_shrink: "Fotografiere die Karte in mehr Tiefen, mit fester Belichtung und festem Weißabgleich.",
  }),
  water_scattering: (p) => (p.known_by === "sight" ? asSeen : perWater),
  path_scattering: () => ({
    text: "Wie viel gestreutes Licht auf kurzem Weg noch ankommt",
    how_to_shrink: "Fotografiere eine Karte auf Armlänge und im Abstand des Motivs, und vergleiche.",
  }),
  sensor: () => ({
    text: "Wie viel grünes und blaues Licht der Rotkanal dieser Kamera mit aufnimmt",
    how_to_shrink: "Fotografiere mit dieser Kamera eine Farbtafel in der Tiefe.",
  }),
  daylight_level: () => ({
    text: "Wie hell der Himmel ist",
    how_to_shrink: "Gib die Bewölkung an, oder miss an der Oberfläche mit dem Belichtungsmesser.",
  }),
  upright_share: () => ({
    text: "Wie viel Licht von oben auf das Motiv fällt, je nach Stand der Sonne",
    how_to_shrink: "Gib an, wo die Sonne von der Kamera aus steht, oder miss in der Tiefe.",
  }),
  light_field: () => ({
    text: "Aus welchen Richtungen das Licht in der Tiefe kommt; das Modell vereinfacht das",
    how_to_shrink: "Miss in der Tiefe.",
  }),
  reference_sun: () => ({
    text: "Bei welchem Sonnenstand die Attenuation dieses Wassers gemessen wurde",
    how_to_shrink: "Miss am Tag selbst die Attenuation, oder fotografiere eine Graukarte in zwei Tiefen.",
  }),
  overhead: () => ({
    text: "Wie viel Tageslicht unter das dringt, was über dir ist",
    how_to_shrink:
      "Miss dort und im Freiwasser auf eine Graukarte und gib das Verhältnis an; unter Eis die Dicke von Eis und Schnee.",
  }),
  sea_floor: () => ({
    text: "Wie hell der Meeres- oder Seegrund ist",
    how_to_shrink: "Gib an, woraus der Grund ist und wie tief er liegt, oder seinen Reflexionsgrad.",
  }),
  filter_edge: () => ({
    text: "Welche Farben dieser Filter wirklich schluckt: Gerechnet wird nach seiner Art",
    how_to_shrink: "Fotografiere bei Tageslicht eine Graukarte mit und ohne ihn, oder gib seine Kurve an.",
  }),
  filter_width: () => ({
    text: "Wie viel dieser Filter von den Farben daneben schluckt: Gerechnet wird nach seiner Art",
    how_to_shrink: "Fotografiere bei Tageslicht eine Graukarte mit und ohne ihn, oder gib seine Kurve an.",
  }),
  filter_density: () => ({
    text: "Wie dicht dieser Filter ist: Bilder einer Karte verraten es nur ungefähr",
    how_to_shrink: "Gib seine Kurve an.",
  }),
  full_well: () => ({
    text: "Wie viele Photonen der Sensor je Pixel fasst",
    how_to_shrink: "Als Taucher gar nicht: Das ist von Kamera zu Kamera verschieden.",
  }),
};

const perWater: CauseText = {
  text: "Wie trüb dieses Wasser ist",
  how_to_shrink: "Sag, wie weit du darin siehst.",
};

const asSeen: CauseText = {
  text: "Wie weit du wirklich siehst; daraus folgt die Streuung",
  how_to_shrink: "Miss die Sichtweite an einer Leine.",
};
