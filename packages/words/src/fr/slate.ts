import type { NamedFilter } from "@sunfathom/planner";
import type { SlateTexts } from "../slate-texts.js";
import { dialIso, dialShutter, setting, settings } from "./dial.js";
import { kindName } from "./filter-name.js";
import {
  between,
  capital,
  densityOf,
  depth,
  depths,
  distance,
  fromTo,
  kelvin,
  shown,
  spoken,
  stops,
} from "./format.js";
import { mountingHolders } from "./mounting-holders.js";

const short = ({ kind, density, id, shelf }: NamedFilter): string =>
  id ??
  (kind === "none"
    ? "sans filtre"
    : `${kindName(kind)}${density === undefined ? "" : ` ${densityOf(shelf?.from ?? density)}`}`);
const the = (filter: NamedFilter): string => `${filter.id === undefined ? "le " : ""}${short(filter)}`;
const name = (filter: NamedFilter): string => capital(short(filter));
const off = ({ instead_of }: { instead_of?: NamedFilter }): string =>
  instead_of ? `Ôtez ${the(instead_of)}. ` : "";
const noFilter = (p: { instead_of?: NamedFilter }): string => `${off(p)}Pas de filtre coloré.`;

export const slate: SlateTexts = {
  title: ({ min_depth_m, max_depth_m }, u) => `Lumière et couleur ${between(min_depth_m, max_depth_m, u)}`,
  parts: { before: "Avant", start: "Début", down: "Descente", up: "Remontée", after: "Après" },
  filter: ({ filter }) =>
    filter.kind === "none"
      ? ["aucun", "filtre coloré"]
      : filter.density === undefined
        ? [filter.id ?? kindName(filter.kind), kindName(filter.kind)]
        : [densityOf(filter.shelf?.from ?? filter.density), filter.id ?? kindName(filter.kind)],
  first_balance: ({ depth_m }, u) => [depth(depth_m, u), "première balance"],
  starting_iso: ({ iso }) => [`${dialIso(iso)} ISO`, "pour commencer"],
  at: ({ depth_m, text }, u) => `${depth(depth_m, u)} : ${text}`,
  steps: {
    mount_filter: (p) => `${off(p)}${name(p.filter)} monté, propre.`,
    keep_filter: (p) => `${name(p.filter)} : il reste monté.`,
    carry_filter: (p, u) =>
      `${off(p)}${name(p.filter)} ${fromTo(p.from_m, p.to_m, u)}${p.from_start ? ", monté au début" : ""}.`,
    no_filter: noFilter,
    no_filter_for_lamps: noFilter,
    lamps_would_help: () => "Prenez des phares vidéo si vous en avez.",
    no_filter_fits: (p) => `${off(p)}Pas de filtre coloré : aucun ne se monte.`,
    fit_filter: (p) => `Montage : ${mountingHolders[p.holder]}.`,
    neutral_density: (p) =>
      `Filtre ND ${densityOf(p.density)} monté${p.mount === "none" ? "" : " au début"}.`,
    set_frame: (p) => `${dialShutter(p.exposure.shutter_s)}, tout en manuel, ${shown(p.bits)} bits.`,
    filter_lamps: (p) => `${off(p)}${name(p.filter)} sur chaque phare.`,
    keep_lamp_filters: (p) => `${name(p.filter)} : il reste sur les phares.`,
    bare_lamps: (p) => `Ôtez ${the(p.filter)} des phares.`,
    start_exposure: (p) => `${setting(p)}. Vérifiez les hautes lumières.`,
    balance_on_card: (p) =>
      p.far === undefined
        ? "Balance des blancs sur la charte, devant le sujet."
        : "Balance des blancs sur la charte, à bout de bras ; ne poursuivez pas le sujet.",
    set_modes: (p) =>
      `Exposition ${p.exposure_mode === "auto" ? "automatique" : `manuelle, ${dialShutter(p.exposure.shutter_s)}`} ; balance des blancs ${{ auto: "automatique", kelvin: "en kelvins", card: "sur une charte" }[p.white_balance_mode]}.`,
    exposure_by_itself: (p) =>
      `Exposition automatique${Math.abs(p.stops) < 1 / 3 ? "" : `, correction ${p.stops > 0 ? "+" : "−"}${stops(Math.abs(p.stops))}`}. Vérifiez les hautes lumières.`,
    balance_by_itself: () => "Balance des blancs automatique : regardez une image.",
    balance_in_kelvin: (p) => `Balance des blancs à ${kelvin(p.cct_K)}.`,
    balance_on_card_in_lamp_light: (p) =>
      `Phares allumés : balance des blancs sur la charte là où sera le sujet${p.cct_K === undefined ? "" : `, ou ${kelvin(p.cct_K)}`}.`,
    balance_again: (p, u) =>
      `${p.exposed ? "Exposition, puis balance des blancs" : "Refaites la balance des blancs"} à ${depths(p.depths_m, u)}.`,
    filter_in: (p) => `filtre mis, ${setting(p)}, balance des blancs.`,
    filter_out: (p) => `filtre ôté, ${setting(p)}, balance des blancs.`,
    neutral_off: (p) => `filtre ND ôté, ${setting(p)}.`,
    neutral_on: (p) => `filtre ND mis, ${setting(p)}.`,
    deep_exposure: (p, u) => `à ${depth(p.to_m, u)}, ${setting(p)}.`,
    shallow_exposure: (p, u) => `à ${depth(p.to_m, u)}, ${setting(p)}.`,
    too_dark: (p) => `${settings(p)}, encore trop sombre de ${stops(p.shortfall_stops)}.`,
    come_close: () => "approchez-vous d’abord.",
    lamps_off: () => "Phares éteints, sur le caisson.",
    lamps_for_subject: () =>
      "Gros plans seulement : pas de filtre, phares allumés, balance des blancs à leur lumière.",
    lamps_from: (p, u) => `Phares dès ${depth(p.depth_m, u)}, avec une nouvelle balance des blancs.`,
    lamps_on: (p, u) =>
      `Phares allumés dans l’eau, à ${distance(p.distance_m, u)} du sujet${p.wide ? ", écartés" : ""}.`,
    lamps_lead: (p) => `Phares allumés, sujet dans leur lumière${p.haze ? ", phares écartés" : ""}.`,
    lamps_hardly_show: (p) => (p.haze ? "Phares éteints." : "Les phares peuvent rester allumés."),
    lamps_with_daylight: (p) => `Phares allumés, à cette distance${p.haze ? ", phares écartés" : ""}.`,
    lamps_reach: (p, u) =>
      `Les phares portent à ${depth(p.dark_m, u)}, ${p.daylight ? "puis lumière du jour seule" : "puis noir"}.`,
    lamps_only: (p) => `Gardez cette distance au sujet${p.haze ? ", phares écartés" : ""}.`,
    mixing_zone: (p, u) =>
      `${capital(fromTo(p.from_m, p.to_m, u))} : phares ou lumière du jour, pas les deux.`,
    grade_red: (p, u) =>
      `Bon rouge dans les images jusqu’à ${depth(p.acceptable_m, u)}${p.gone_m === undefined ? "" : `, plus rien au-delà de ${depth(p.gone_m, u)}`}.`,
    grade_no_red: (p, u) =>
      `Rouge faible dans les images${p.gone_m === undefined ? "" : `, plus rien au-delà de ${depth(p.gone_m, u)}`}.`,
    lamps_off_before_air: () =>
      "Éteignez les phares avant de les sortir de l’eau ; gardez une lampe allumée.",
    rinse: () => "Rincez et séchez avant d’ouvrir. Vérifiez les images.",
  },
  take: {
    lens_filter: (p) => short(p.filter),
    neutral_density: (p) => `filtre ND ${densityOf(p.density)}`,
    lamp_filters: (p) => `${short(p.filter)} pour chaque phare`,
    lamp_filters_lacking: (p) => `${kindName(p.kind)} ${densityOf(p.density)} pour chaque phare`,
    lamp: () => "phares",
    filter_mount: (p) => (p.mount === "flip" ? "support basculant" : "support à clip"),
    dive_light: () => "lampe de plongée",
    card: () => "charte",
    spares: () => "accu, carte mémoire, joints toriques",
    holder: (p) => mountingHolders[p.holder],
    rings: (p) => `bagues ${p.rings.join(", ")}`,
    ring_lacking: (p) => `bague d’adaptation de ${shown(p.from_mm)} à ${shown(p.to_mm)} mm`,
  },
  taken: ({ items }) => `Emportez : ${spoken(items)}.`,
  cautions: {
    ascent_first: "Votre remontée et votre palier de sécurité passent avant tout.",
    not_a_dive_planner:
      "Il s’agit de lumière et de couleur : formation et règles locales décident de la plongée.",
    overhead_by_training:
      "Grottes, épaves, glace : seulement avec formation, guide et lampes de secours ; un phare n’en est pas une.",
    hover_to_balance:
      "Ne réglez que stabilisé, sans toucher le récif ; binôme, profondeur et gaz passent avant.",
    closer_under_control: "N’approchez que stabilisé, sans rien toucher.",
    lamps_in_water_only: "Phares allumés dans l’eau seulement : à l’air, ils surchauffent et brûlent.",
    lamps_not_into_eyes: "Ne les braquez jamais dans les yeux.",
    lamps_stay_on_rig: "Phares et accus restent sur le caisson : équilibre.",
    batteries_by_maker: "Accus selon la notice : aucun endommagé ni noyé, aucun chargé sans surveillance.",
    filter_on_dry_land:
      "Changez un filtre dans le caisson ou derrière l’objectif à terre et au sec seulement.",
    filter_flip_practised: "Essayez d’abord le changement de filtre en surface.",
    mount_makers_instructions: "Les notices disent ce que l’objectif et le caisson admettent.",
    mount_sensor_dust:
      "Poussière, gélatine et adhésif loin du capteur, des contacts, de la monture et de l’obturateur.",
    mount_flat_port_edges: "Un hublot plan brouille les bords d’un champ large.",
  },
  more: ({ count }) => `Le plan en compte encore ${shown(count)}.`,
  description: ({ min_depth_m, max_depth_m }, u) =>
    `Une plaquette immergeable pour filmer ${between(min_depth_m, max_depth_m, u)} : trois nombres à retenir, que faire avant la plongée, au début, à la descente, à la remontée et après, et les précautions.`,
};
