import type { OutsideCode } from "@sunfathom/contract";
import type { LightRefusals } from "@sunfathom/planner";
import type { FieldText, OutsideText, Texts } from "../../problems/texts.js";
import { asGiven, either, shown, unit } from "../format.js";

/** Warum das Modell zum Licht einer Szene keine Antwort hat. */
export const outsideLight: Texts<Pick<LightRefusals, OutsideCode & keyof LightRefusals>, OutsideText> = {
  instant_out_of_range: ({ year, first_year, last_year }) => {
    const given = year === undefined ? "ist kein Datum" : `liegt im Jahr ${year}`;
    return ofPlace(
      `Der Zeitpunkt ${given}; der Sonnenstand lässt sich hier von ${first_year} bis ${last_year} berechnen.`,
    );
  },
  local_time_malformed: ({ local_time, first_year, last_year }) =>
    ofPlace(
      `local_time "${local_time}" ist kein Datum mit Uhrzeit wie 2026-03-10T10:15, in den Jahren ${first_year} bis ${last_year}, ohne Zeitversatz.`,
    ),
  local_time_skipped: ({ local_time, time_zone }) =>
    ofPlace(
      `Die Uhren in ${time_zone} haben nie ${local_time} gezeigt: Beim Vorstellen fiel diese Zeit aus. Gib eine Zeit vor oder nach der Umstellung an.`,
    ),
  time_zone_unknown: ({ time_zone }) =>
    ofPlace(`time_zone "${time_zone}" ist kein Name aus der Zeitzonen-Datenbank der IANA, wie Etc/GMT+9.`),
  secchi_depth_out_of_range: (range) => ofClarity("secchi_depth_m", range),
  visibility_out_of_range: (range) => ofClarity("visibility_m", range),
  water_hue_contradicts_measure: ({ measure, value_m, water_hue, min_m, max_m, fitting_hues }) => {
    return outside(
      `${measure} von ${asGiven(value_m)} passt nicht zu ${hueName(water_hue)} Wasser: Dort sind es ${metres(min_m)} bis ${metres(max_m)}. So weit sieht man in ${either(fitting_hues.map(hueName))} Wasser.`,
      `${metres(min_m)} bis ${metres(max_m)} mit water_hue ${water_hue}, oder water_hue ${either(fitting_hues)}`,
    );
  },
  card_samples_too_few: ({ span_m, least_span_m }) =>
    ofCards(
      `Zwischen den Tiefen, in denen die Karte aufgenommen wurde, liegen ${shown(span_m, 1)} m; nötig sind zwei Tiefen, die mindestens ${least_span_m} m auseinanderliegen.`,
    ),
  card_samples_malformed: (p) => {
    switch (p.case) {
      case "not_with_all":
        return ofCards(
          `${p.field} steht bei ${p.given} von ${p.samples} Kartenaufnahmen; gib es bei allen an oder bei keiner.`,
        );
      case "clipped":
        return ofCards(
          `Das Bild der Karte in ${asGiven(p.depth_m)} m ist ausgefressen (${asGiven(p.value)}): Nimm es knapper belichtet neu auf.`,
        );
      case "dark":
        return ofCards(
          `Bei der Karte in ${asGiven(p.depth_m)} m hat ein Kanal nichts aufgenommen (${asGiven(p.value)}); belichte sie reichlicher, oder bleib flacher.`,
        );
      case "balance_unlocked":
        return ofCards(
          "Der Weißabgleich kann sich zwischen den Bildern verändert haben: Nimm Raw, stell ihn fest, oder gib bei jedem red_gain, green_gain und blue_gain an.",
        );
      default:
        return ofCards(
          `Bei der Karte in ${asGiven(p.depth_m)} m kann Tiefe, Belichtung oder Verstärkung nicht stimmen.`,
        );
    }
  },
  card_samples_contradict: ({ rms_ln, worst_depth_m }) =>
    ofCards(
      `Kein Wasser erklärt diese Kartenaufnahmen: Selbst vom am besten passenden Wasser weichen sie um ${shown(rms_ln, 2)} ab (natürlicher Logarithmus), am meisten in ${asGiven(worst_depth_m)} m. Such nach Schatten, Lampenlicht, einer gekippten Karte oder einer Automatik.`,
    ),
  card_samples_outside_family: (p) => {
    const end =
      p.case === "clearer" ? "klarer ist als reines Meerwasser" : "trüber ist als jeder veröffentlichte Typ";
    return ofCards(
      `Die Kartenaufnahmen verlangen ein Wasser, das ${end}; prüf Tiefen, Belichtungen und die Reihenfolge der Bilder.`,
    );
  },
  sun_too_low: ({ elevation_deg, min_elevation_deg }) => ({
    detail:
      "Bei so tiefer Sonne gilt das Tageslichtmodell nicht: In der Dämmerung ist das Licht schwach, blau und ändert sich schnell. Plane mit Lampen, oder frag nach einer höheren Sonne.",
    message: `die Sonne steht bei ${shown(elevation_deg, 1)} Grad, außerhalb des Bereichs des Modells`,
    allowed: `eine Sonne ${min_elevation_deg} bis 90 Grad über dem Horizont, oder daylight_basis "none", um mit Lampen allein zu planen`,
  }),
  no_light: (p) => {
    if (p.case === "no_source") {
      return {
        detail: "Ohne Tageslicht und ohne Lampen gibt es kein Licht zum Filmen.",
        message: "keine Lampe ist angegeben, und Tageslicht gibt es nicht",
        allowed: "mindestens eine Lampe, oder Tageslicht",
      };
    }
    const named = p.filter === "kit" ? "einen Filter der Ausrüstung" : "den Filter auf dem Objektiv";
    if (p.case === "filter_passes_none") {
      return {
        detail: `Durch ${named} kommt kein Licht, das eine Kamera sieht.`,
        message: "zwischen 400 und 720 nm, wo Kameras sehen, lässt dieser Filter nichts durch",
        allowed: "irgendwo zwischen 400 und 720 nm eine Transmission über 0",
      };
    }
    return {
      detail: `In ${asGiven(p.depth_m)} m kommt durch ${named} kein Licht.`,
      message: `dieser Filter hält alles Licht auf, das das Wasser in ${asGiven(p.depth_m)} m übrig lässt`,
      allowed: "eine Transmission über 0, wo dieses Wasser klar ist",
    };
  },
  no_balance: ({ channel, depth_m }) => ({
    detail: `In ${asGiven(depth_m)} m bekommt der ${CHANNELS[channel]} der Kamera womöglich nichts ab.`,
    message: `keine Verstärkung bringt zurück, was dem ${CHANNELS[channel]} in ${asGiven(depth_m)} m fehlt`,
    allowed: "eine Tiefe und ein Filter, die jedem Kanal mindestens ein 10^12-tel des stärksten lassen",
  }),
  no_daylight_left: ({ depth_m, max_depth_m, is_daylit }) =>
    outside(
      `In ${asGiven(depth_m)} m ist in diesem Wasser vom Tageslicht nichts mehr übrig.`,
      `höchstens ${shown(max_depth_m, 1)} m in diesem Wasser${is_daylit ? ', oder daylight_basis "none", um mit Lampen allein zu planen' : ""}`,
    ),
  no_sight: ({ distance_m, max_distance_m }) =>
    outside(
      `Durch ${asGiven(distance_m)} m dieses Wassers dringt kein Licht.`,
      `höchstens ${shown(max_distance_m, 2)} m in diesem Wasser`,
    ),
  filter_opaque: () =>
    outside(
      "Diese Kurve lässt kein sichtbares Licht durch.",
      "irgendwo zwischen 380 und 780 nm eine Transmission über 0",
    ),
};

const HUES: Readonly<Record<string, string>> = {
  blue: "blauem",
  blue_green: "blaugrünem",
  green: "grünem",
  brown: "braunem",
};
const hueName = (hue: string): string => HUES[hue] ?? hue;

const CHANNELS = { red: "Rotkanal", green: "Grünkanal", blue: "Blaukanal" };

const outside = (message: string, allowed: FieldText["allowed"]): OutsideText => ({
  detail: message,
  message,
  allowed,
});

const ofPlace = (message: string): OutsideText =>
  outside(message, "ein Ort und eine Zeit, die seine Uhren zeigen, zwischen 1900 und 2100");

const ofCards = (message: string): OutsideText =>
  outside(message, "Kartenaufnahmen aus ein und demselben natürlichen Wasser");

const ofClarity = (field: string, range: LightRefusals["visibility_out_of_range"]): OutsideText => {
  const natural = `${metres(range.min_m)} bis ${metres(range.max_m)}`;
  return outside(
    `${field} ist ${asGiven(range.value_m)}; in natürlichem Wasser sind es ${natural}.`,
    natural,
  );
};

const metres = (value: number): string => unit(shown(value, value >= 10 ? 0 : 1), "m");
