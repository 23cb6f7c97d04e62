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
    ? "sin filtro"
    : `${kindName(kind)}${density === undefined ? "" : ` ${densityOf(shelf?.from ?? density)}`}`);
const name = (filter: NamedFilter): string => capital(short(filter));
const off = ({ instead_of }: { instead_of?: NamedFilter }): string =>
  instead_of ? `Fuera el ${short(instead_of)}. ` : "";
const noFilter = (p: { instead_of?: NamedFilter }): string => `${off(p)}Sin filtro de color.`;
export const slate: SlateTexts = {
  title: ({ min_depth_m, max_depth_m }, u) => `Luz y color ${between(min_depth_m, max_depth_m, u)}`,
  parts: { before: "Antes", start: "Inicio", down: "Bajada", up: "Subida", after: "Después" },
  filter: ({ filter }) =>
    filter.kind === "none"
      ? ["ninguno", "filtro de color"]
      : filter.density === undefined
        ? [filter.id ?? kindName(filter.kind), kindName(filter.kind)]
        : [densityOf(filter.shelf?.from ?? filter.density), filter.id ?? kindName(filter.kind)],
  first_balance: ({ depth_m }, u) => [depth(depth_m, u), "primer balance"],
  starting_iso: ({ iso }) => [`ISO ${dialIso(iso)}`, "para empezar"],
  at: ({ depth_m, text }, u) => `${depth(depth_m, u)}: ${text}`,
  steps: {
    mount_filter: (p) => `${off(p)}${name(p.filter)} puesto y limpio.`,
    keep_filter: (p) => `${name(p.filter)}: déjelo puesto.`,
    carry_filter: (p, u) =>
      `${off(p)}${name(p.filter)} ${fromTo(p.from_m, p.to_m, u)}${p.from_start ? ", puesto al empezar" : ""}.`,
    no_filter: noFilter,
    no_filter_for_lamps: noFilter,
    lamps_would_help: () => "Lleve focos de vídeo si los tiene.",
    no_filter_fits: (p) => `${off(p)}Sin filtro de color: no se puede montar ninguno.`,
    fit_filter: (p) => `Montaje: ${mountingHolders[p.holder]}.`,
    neutral_density: (p) =>
      `Filtro ND ${densityOf(p.density)} puesto${p.mount === "none" ? "" : " al empezar"}.`,
    set_frame: (p) => `${dialShutter(p.exposure.shutter_s)}, todo manual, ${shown(p.bits)} bits.`,
    filter_lamps: (p) => `${off(p)}${name(p.filter)} en cada foco.`,
    keep_lamp_filters: (p) => `${name(p.filter)}: déjelo en los focos.`,
    bare_lamps: (p) => `Quite el ${short(p.filter)} de los focos.`,
    start_exposure: (p) => `${setting(p)}. Vigile las altas luces.`,
    balance_on_card: (p) =>
      p.far === undefined
        ? "Balance de blancos con la tarjeta, ante el motivo."
        : "Balance de blancos con la tarjeta, brazo extendido; no vaya tras el motivo.",
    set_modes: (p) =>
      `Exposición ${p.exposure_mode === "auto" ? "automática" : `manual, ${dialShutter(p.exposure.shutter_s)}`}; balance de blancos ${{ auto: "automático", kelvin: "en kelvin", card: "con una tarjeta" }[p.white_balance_mode]}.`,
    exposure_by_itself: (p) =>
      `Exposición automática${Math.abs(p.stops) < 1 / 3 ? "" : `, compensación ${p.stops > 0 ? "+" : "-"}${stops(Math.abs(p.stops))}`}. Vigile las altas luces.`,
    balance_by_itself: () => "Balance de blancos automático: mire una imagen.",
    balance_in_kelvin: (p) => `Balance de blancos a ${kelvin(p.cct_K)}.`,
    balance_on_card_in_lamp_light: (p) =>
      `Focos encendidos: balance de blancos con la tarjeta junto al motivo${p.cct_K === undefined ? "" : `, o ${kelvin(p.cct_K)}`}.`,
    balance_again: (p, u) =>
      `${p.exposed ? "Exposición y luego balance de blancos" : "Balance de blancos otra vez"} a ${depths(p.depths_m, u)}.`,
    filter_in: (p) => `ponga el filtro, ${setting(p)}, balance de blancos.`,
    filter_out: (p) => `quite el filtro, ${setting(p)}, balance de blancos.`,
    neutral_off: (p) => `quite el filtro ND, ${setting(p)}.`,
    neutral_on: (p) => `ponga el filtro ND, ${setting(p)}.`,
    deep_exposure: (p, u) => `a ${depth(p.to_m, u)}, ${setting(p)}.`,
    shallow_exposure: (p, u) => `a ${depth(p.to_m, u)}, ${setting(p)}.`,
    too_dark: (p) => `${settings(p)}, aún con ${stops(p.shortfall_stops)} de luz de menos.`,
    come_close: () => "primero, acérquese.",
    lamps_off: () => "Focos apagados, en el equipo.",
    lamps_for_subject: () =>
      "Solo primeros planos: sin filtro, focos encendidos, balance de blancos a su luz.",
    lamps_from: (p, u) => `Focos desde ${depth(p.depth_m, u)}, con otro balance de blancos.`,
    lamps_on: (p, u) =>
      `Focos encendidos en el agua, a ${distance(p.distance_m, u)} del motivo${p.wide ? ", brazos bien abiertos" : ""}.`,
    lamps_lead: (p) => `Focos encendidos, motivo en su luz${p.haze ? ", brazos bien abiertos" : ""}.`,
    lamps_hardly_show: (p) => (p.haze ? "Focos apagados." : "Los focos pueden quedar encendidos."),
    lamps_with_daylight: (p) => `Focos encendidos, a esa distancia${p.haze ? ", brazos bien abiertos" : ""}.`,
    lamps_reach: (p, u) =>
      `Los focos alcanzan ${depth(p.dark_m, u)}; después, ${p.daylight ? "solo luz del día" : "negro"}.`,
    lamps_only: (p) => `Mantenga esa distancia al motivo${p.haze ? ", brazos bien abiertos" : ""}.`,
    mixing_zone: (p, u) => `${capital(fromTo(p.from_m, p.to_m, u))}: focos o luz del día, no ambos.`,
    grade_red: (p, u) =>
      `Buen rojo en las imágenes hasta ${depth(p.acceptable_m, u)}${p.gone_m === undefined ? "" : `, nada por debajo de ${depth(p.gone_m, u)}`}.`,
    grade_no_red: (p, u) =>
      `Rojo débil en las imágenes${p.gone_m === undefined ? "" : `, nada por debajo de ${depth(p.gone_m, u)}`}.`,
    lamps_off_before_air: () => "Apague los focos antes de sacarlos del agua; deje una linterna encendida.",
    rinse: () => "Enjuague y seque antes de abrir nada. Revise las tomas.",
  },
  take: {
    lens_filter: (p) => short(p.filter),
    neutral_density: (p) => `filtro ND ${densityOf(p.density)}`,
    lamp_filters: (p) => `${short(p.filter)} para cada foco`,
    lamp_filters_lacking: (p) => `${kindName(p.kind)} ${densityOf(p.density)} para cada foco`,
    lamp: () => "focos",
    filter_mount: (p) => (p.mount === "flip" ? "portafiltros abatible" : "soporte de clip"),
    dive_light: () => "linterna",
    card: () => "tarjeta",
    spares: () => "batería, tarjeta de memoria, juntas tóricas",
    holder: (p) => mountingHolders[p.holder],
    rings: (p) => `anillos ${p.rings.join(", ")}`,
    ring_lacking: (p) => `anillo adaptador de ${shown(p.from_mm)} a ${shown(p.to_mm)} mm`,
  },
  taken: ({ items }) => `Lleve ${spoken(items)}.`,
  cautions: {
    ascent_first: "Su ascenso y su parada de seguridad van primero.",
    not_a_dive_planner: "Esto trata de luz y color: deciden su formación y las normas locales.",
    overhead_by_training:
      "Cuevas, pecios, hielo: solo con formación, guía y luces de reserva; los focos no lo son.",
    hover_to_balance:
      "Ajuste solo suspendido, manos lejos del arrecife; compañero, profundidad y gas van primero.",
    closer_under_control: "Acérquese solo con la flotabilidad controlada, sin tocar nada.",
    lamps_in_water_only: "Focos encendidos solo en el agua: fuera se sobrecalientan y queman.",
    lamps_not_into_eyes: "Nunca enfoque a los ojos.",
    lamps_stay_on_rig: "Focos y baterías se quedan en el equipo: dan equilibrio.",
    batteries_by_maker:
      "Baterías según el fabricante: nunca dañadas ni inundadas, nunca cargando sin vigilancia.",
    filter_on_dry_land:
      "Cambie un filtro de dentro de la carcasa o de detrás del objetivo solo en tierra y en seco.",
    filter_flip_practised: "Practique antes el cambio de filtro en la superficie.",
    mount_makers_instructions: "Los fabricantes dicen qué admiten el objetivo y la carcasa.",
    mount_sensor_dust: "Polvo, lámina y cinta, lejos de sensor, contactos, montura y obturador.",
    mount_flat_port_edges: "Un puerto plano emborrona los bordes de un campo amplio.",
  },
  more: ({ count }) => `${shown(count)} más en el plan.`,
  description: ({ min_depth_m, max_depth_m }, u) =>
    `Una tablilla para filmar ${between(min_depth_m, max_depth_m, u)}: tres números para recordar, qué hacer antes, al empezar, al bajar, al subir y después, y las advertencias.`,
};
