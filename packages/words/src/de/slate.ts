import type { NamedFilter } from "@sunfathom/planner";
import type { SlateTexts } from "../slate-texts.js";
import { dialIso, dialShutter, setting, settings } from "./dial.js";
import { kindName } from "./filter-name.js";
import { between, densityOf, depth, depths, distance, fromTo, kelvin, shown, stops } from "./format.js";
import { mountingHolders } from "./mounting-holders.js";

const short = ({ kind, density, id, shelf }: NamedFilter): string =>
  id ??
  (kind === "none"
    ? "kein Filter"
    : `${kindName(kind)}${density === undefined ? "" : ` ${densityOf(shelf?.from ?? density)}`}`);
const off = ({ instead_of }: { instead_of?: NamedFilter }): string =>
  instead_of ? `${short(instead_of)} ab. ` : "";
const noFilter = (p: { instead_of?: NamedFilter }): string => `${off(p)}Kein Farbfilter.`;

export const slate: SlateTexts = {
  title: ({ min_depth_m, max_depth_m }, u) => `Licht und Farbe ${between(min_depth_m, max_depth_m, u)}`,
  parts: { before: "Vorher", start: "Start", down: "Runter", up: "Hoch", after: "Danach" },
  filter: ({ filter }) =>
    filter.kind === "none"
      ? ["kein", "Farbfilter"]
      : filter.density === undefined
        ? [filter.id ?? kindName(filter.kind), kindName(filter.kind)]
        : [densityOf(filter.shelf?.from ?? filter.density), filter.id ?? kindName(filter.kind)],
  first_balance: ({ depth_m }, u) => [depth(depth_m, u), "erster Weißabgleich"],
  starting_iso: ({ iso }) => [`ISO ${dialIso(iso)}`, "zu Beginn"],
  at: ({ depth_m, text }, u) => `${depth(depth_m, u)}: ${text}`,
  steps: {
    mount_filter: (p) => `${off(p)}${short(p.filter)} drauf, sauber.`,
    keep_filter: (p) => `${short(p.filter)} bleibt drauf.`,
    carry_filter: (p, u) =>
      `${off(p)}${short(p.filter)} ${fromTo(p.from_m, p.to_m, u)}${p.from_start ? ", zu Beginn drauf" : ""}.`,
    no_filter: noFilter,
    no_filter_for_lamps: noFilter,
    lamps_would_help: () => "Videolampen mitnehmen, wenn du welche hast.",
    no_filter_fits: (p) => `${off(p)}Kein Farbfilter: Es lässt sich keiner montieren.`,
    fit_filter: (p) => `Halter: ${mountingHolders[p.holder].wer}.`,
    neutral_density: (p) =>
      `ND-Filter ${densityOf(p.density)} drauf${p.mount === "none" ? "" : ", zu Beginn"}.`,
    set_frame: (p) => `${dialShutter(p.exposure.shutter_s)}, alles manuell, ${shown(p.bits)} Bit.`,
    filter_lamps: (p) => `${off(p)}${short(p.filter)} auf jede Videolampe.`,
    keep_lamp_filters: (p) => `${short(p.filter)} bleibt auf den Videolampen.`,
    bare_lamps: (p) => `${short(p.filter)} von den Videolampen ab.`,
    start_exposure: (p) => `${setting(p)}. Lichter prüfen.`,
    balance_on_card: (p) =>
      p.far === undefined
        ? "Weißabgleich auf die Karte vor dem Motiv."
        : "Weißabgleich auf die Karte, auf Armlänge; dem Motiv nicht hinterherschwimmen.",
    set_modes: (p) =>
      `Belichtung ${p.exposure_mode === "auto" ? "automatisch" : `manuell, ${dialShutter(p.exposure.shutter_s)}`}; Weißabgleich ${{ auto: "automatisch", kelvin: "in Kelvin", card: "auf eine Karte" }[p.white_balance_mode]}.`,
    exposure_by_itself: (p) =>
      `Belichtung automatisch${Math.abs(p.stops) < 1 / 3 ? "" : `, Korrektur ${p.stops > 0 ? "+" : "-"}${stops(Math.abs(p.stops))}`}. Lichter prüfen.`,
    balance_by_itself: () => "Weißabgleich automatisch: ein Bild ansehen.",
    balance_in_kelvin: (p) => `Weißabgleich ${kelvin(p.cct_K)}.`,
    balance_on_card_in_lamp_light: (p) =>
      `Videolampen an: Weißabgleich auf die Karte am Motiv${p.cct_K === undefined ? "" : ` oder ${kelvin(p.cct_K)}`}.`,
    balance_again: (p, u) =>
      `${p.exposed ? "Belichtung, dann Weißabgleich" : "Neuer Weißabgleich"} in ${depths(p.depths_m, u)}.`,
    filter_in: (p) => `Filter ein, ${setting(p)}, Weißabgleich.`,
    filter_out: (p) => `Filter weg, ${setting(p)}, Weißabgleich.`,
    neutral_off: (p) => `ND-Filter ab, ${setting(p)}.`,
    neutral_on: (p) => `ND-Filter drauf, ${setting(p)}.`,
    deep_exposure: (p, u) => `in ${depth(p.to_m, u)} ${setting(p)}.`,
    shallow_exposure: (p, u) => `in ${depth(p.to_m, u)} ${setting(p)}.`,
    too_dark: (p) => `${settings(p)}, immer noch ${stops(p.shortfall_stops)} zu dunkel.`,
    come_close: () => "erst näher heran.",
    lamps_off: () => "Videolampen aus, am Rig lassen.",
    lamps_for_subject: () => "Nur Nahaufnahmen: kein Filter, Videolampen an, Weißabgleich in ihrem Licht.",
    lamps_from: (p, u) => `Videolampen ab ${depth(p.depth_m, u)}, mit neuem Weißabgleich.`,
    lamps_on: (p, u) =>
      `Videolampen im Wasser an, ${distance(p.distance_m, u)} vom Motiv${p.wide ? ", weit außen" : ""}.`,
    lamps_lead: (p) => `Videolampen an, Motiv in ihr Licht${p.haze ? ", Lampen weit außen" : ""}.`,
    lamps_hardly_show: (p) => (p.haze ? "Videolampen aus." : "Videolampen dürfen anbleiben."),
    lamps_with_daylight: (p) =>
      `Videolampen bleiben an, in diesem Abstand${p.haze ? ", Lampen weit außen" : ""}.`,
    lamps_reach: (p, u) =>
      `Videolampen reichen ${depth(p.dark_m, u)}, ${p.daylight ? "dann nur Tageslicht" : "dann Schwarz"}.`,
    lamps_only: (p) => `Diesen Abstand zum Motiv halten${p.haze ? ", Lampen weit außen" : ""}.`,
    mixing_zone: (p, u) => `${fromTo(p.from_m, p.to_m, u)}: Videolampen oder Tageslicht, nicht beides.`,
    grade_red: (p, u) =>
      `Gutes Rot in den Bildern bis ${depth(p.acceptable_m, u)}${p.gone_m === undefined ? "" : `, keins unter ${depth(p.gone_m, u)}`}.`,
    grade_no_red: (p, u) =>
      `Schwaches Rot in den Bildern${p.gone_m === undefined ? "" : `, keins unter ${depth(p.gone_m, u)}`}.`,
    lamps_off_before_air: () =>
      "Videolampen aus, bevor sie aus dem Wasser kommen; eine Tauchlampe bleibt an.",
    rinse: () => "Spülen und trocknen, dann erst öffnen. Aufnahmen prüfen.",
  },
  take: {
    lens_filter: (p) => short(p.filter),
    neutral_density: (p) => `ND-Filter ${densityOf(p.density)}`,
    lamp_filters: (p) => `${short(p.filter)} für jede Lampe`,
    lamp_filters_lacking: (p) => `${kindName(p.kind)} ${densityOf(p.density)} für jede Lampe`,
    lamp: () => "Videolampen",
    filter_mount: (p) => (p.mount === "flip" ? "Klapphalter" : "Clip-Halter"),
    dive_light: () => "Tauchlampe",
    card: () => "Karte",
    spares: () => "Akku, Speicherkarte, O-Ringe",
    holder: (p) => mountingHolders[p.holder].wer,
    rings: (p) => `Ringe ${p.rings.join(", ")}`,
    ring_lacking: (p) => `Step-Ring ${shown(p.from_mm)} auf ${shown(p.to_mm)} mm`,
  },
  taken: ({ items }) => `Mitnehmen: ${items.join(", ")}.`,
  cautions: {
    ascent_first: "Dein Aufstieg und dein Sicherheitsstopp gehen vor.",
    not_a_dive_planner: "Hier geht es um Licht und Farbe: Ausbildung und örtliche Regeln entscheiden.",
    overhead_by_training:
      "Höhlen, Wracks, Eis: nur mit Ausbildung, Führung und Backup-Lampen; Videolampen sind keine.",
    hover_to_balance: "Einstellen nur austariert, Hände weg vom Riff; Buddy, Tiefe und Gas gehen vor.",
    closer_under_control: "Näher heran nur, wenn die Tarierung sitzt; nichts berühren.",
    lamps_in_water_only: "Videolampen nur im Wasser an: An der Luft überhitzen sie und verbrennen dich.",
    lamps_not_into_eyes: "Nie in die Augen leuchten.",
    lamps_stay_on_rig: "Lampen und Akkus bleiben am Rig: Trimm.",
    batteries_by_maker:
      "Akkus nach Herstellerangabe laden: keine beschädigten, gefluteten; nie unbeaufsichtigt.",
    filter_on_dry_land: "Filter im Gehäuse oder hinter dem Objektiv nur an Land im Trockenen wechseln.",
    filter_flip_practised: "Filterwechsel vorher an der Oberfläche üben.",
    mount_makers_instructions: "Die Hersteller sagen, was Objektiv und Gehäuse vertragen.",
    mount_sensor_dust: "Staub, Folie und Klebeband weg von Sensor, Kontakten, Bajonett und Verschluss.",
    mount_flat_port_edges: "Ein Planport macht bei weitem Bildwinkel die Ränder unscharf.",
  },
  more: ({ count }) => `Noch ${shown(count)} im Plan.`,
  description: ({ min_depth_m, max_depth_m }, u) =>
    `Eine Tafel zum Filmen ${between(min_depth_m, max_depth_m, u)}: drei Zahlen zum Merken, was vorher, zu Beginn, auf dem Weg nach unten, nach oben und danach zu tun ist, und die Hinweise zur Sicherheit.`,
};
