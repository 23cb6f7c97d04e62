import type { FilterHolder, TripAdviceReasons, TripPlanCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import type { TripSayings } from "../trip-texts.js";
import { filterName } from "./filter-name.js";
import { depth, plural, shown, spoken, stops } from "./format.js";
import { summary } from "./summary.js";

/** Pourquoi des filtres partagés sont répartis ainsi. */
export const tripAdviceReasons: Texts<TripAdviceReasons, string> = {
  trip_handed_out: (p) =>
    `${p.pieces} ${plural(p.pieces, { one: "filtre", other: "filtres" })} pour ${p.guests} ${plural(p.guests, { one: "client", other: "clients" })} : à chaque plongée, celui qui serait le plus mal loti est servi au mieux, puis le suivant, et ainsi de suite. À égalité, l’id des clients décide. Un filtre compte s’il va sur l’appareil et apporte assez pour qu’on le monte.`,
  trip_shelf_short: (p) =>
    `${p.times === 1 ? "Une fois" : `${p.times} fois`}, un client part sans un filtre qui l’aiderait, parce qu’il n’en reste pas.`,
  trip_nothing_fits: (p) =>
    `Avec les bagues disponibles, aucun filtre partagé ne va sur ${p.guests.length === 1 ? "l’appareil" : "les appareils"} de ${spoken(p.guests)}. Si une bague peut aider, \`rings_to_get\` l’indique.`,
  trip_with_care: (p) =>
    `Sur ${p.guests.length === 1 ? "l’appareil" : "les appareils"} de ${spoken(p.guests)}, un filtre va, mais demande des précautions : \`filter-mounting\` dit lesquelles.`,
  trip_fit_not_asked: (p) =>
    `${p.guests} ${plural(p.guests, { one: "appareil est décrit", other: "appareils sont décrits" })} sans \`port_kind\` ni \`lens_kind\` : on suppose que tout filtre va dessus.`,
  trip_thread_assumed: (p) =>
    `Aucun filetage n’est indiqué pour ${spoken(p.pieces)} : on suppose celui de chaque objectif ou hublot. Indiquez \`filter_thread_mm\` pour savoir ce qui va.`,
  trip_sun_assumed: (p) =>
    `${spoken(p.dives)} : ni le lieu ni la hauteur du soleil ne sont indiqués ; on suppose le soleil à ${shown(p.elevation_deg)} degrés.`,
  trip_no_daylight: (p) =>
    `${spoken(p.dives)} : il n’y a pas de lumière du jour, aucun filtre n’est donc attribué. Demandez \`dive-advice\` avec vos phares vidéo.`,
  trip_stays_on: () =>
    "On suppose que les filtres restent montés toute la plongée ; les erreurs de couleur sont la moyenne à la plus petite profondeur, à la plus grande et au milieu. Si vous pouvez changer au fond, demandez `dive-advice` pour cette plongée.",
  trip_spread_shared: (p) =>
    `L’incertitude des erreurs de couleur ${p.with_filter ? "avec filtre" : "sans filtre"} a été calculée pour ${p.guest} à la plongée ${p.dive}, où l’erreur est la plus grande, et reprise pour les autres.`,
};

const HELD: Readonly<Record<FilterHolder, string>> = {
  screw_on_lens: "vissé sur l’objectif",
  screw_on_port: "vissé sur le hublot",
  flip: "dans un porte-filtre basculant sur le hublot",
  clip_on: "clipsé sur le hublot",
  rear_sheet: "en gélatine derrière l’objectif",
  action_camera: "dans son cadre devant la vitre de la caméra",
};

const withRings = (rings: readonly string[]): string =>
  rings.length === 0
    ? ""
    : ` avec ${rings.length === 1 ? "la bague d’adaptation" : "les bagues d’adaptation"} ${spoken(rings)}`;

/** Le plan d’un client pour une plongée, en quelques phrases. */
export const tripPlan: Texts<TripPlanCodes, string> = {
  ...summary,
  trip_mount: (p) =>
    `Montez ${filterName(p.filter)}${p.from === "shelf" ? ", pris parmi les filtres partagés" : ""}${p.holder === undefined ? "" : `, ${HELD[p.holder]}`}${withRings(p.rings)}.`,
  trip_too_bright: (p, u) =>
    `À ${depth(p.depth_m, u)}, il y a encore ${stops(p.excess_stops)} de lumière en trop : exposez moins longtemps ou prenez un filtre ND.`,
  trip_without_daylight: () =>
    "Il n’y a pas de lumière du jour : laissez les filtres de couleur à terre et filmez avec des phares vidéo.",
};

/** Ce que disent les caisses et les calendriers. */
export const tripSays: Texts<TripSayings, string> = {
  trip_crate: ({ guest, pieces }) =>
    pieces.length === 0
      ? `${guest} : aucun filtre.`
      : `${guest} : ${pieces.map((p) => `${p.piece}${withRings(p.rings)} pour ${spoken(p.dives)}`).join(" ; ")}.`,
  trip_event: ({ dive, piece }) => `${dive} : ${piece ?? "sans filtre"}`,
  trip_uses: ({ guest, piece, rings }) => `${guest} : ${piece ?? "sans filtre"}${withRings(rings)}`,
};
