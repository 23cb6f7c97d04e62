import type { FilterHolder, TripAdviceReasons, TripPlanCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import type { TripSayings } from "../trip-texts.js";
import { filterName } from "./filter-name.js";
import { capital, depth, howOften, plural, shown, spoken, stops } from "./format.js";
import { summary } from "./summary.js";

/** Por qué un estante compartido se reparte así. */
export const tripAdviceReasons: Texts<TripAdviceReasons, string> = {
  trip_handed_out: (p) =>
    `${p.pieces} ${plural(p.pieces, { one: "filtro", other: "filtros" })} para ${p.guests} ${plural(p.guests, { one: "huésped", other: "huéspedes" })}: en cada inmersión, quien saldría peor parado recibe lo mejor posible; luego el siguiente, y así sucesivamente. Si hay empate, deciden los ids de los huéspedes. Un filtro cuenta si encaja en la cámara y mejora lo bastante como para montarlo.`,
  trip_shelf_short: (p) =>
    `${capital(howOften(p.times))}, un huésped va sin un filtro que le ayudaría, porque no queda ninguno.`,
  trip_nothing_fits: (p) =>
    `Con los anillos que hay, ningún filtro del estante encaja en ${p.guests.length === 1 ? "la cámara" : "las cámaras"} de ${spoken(p.guests)}. Si un anillo sirviera, \`rings_to_get\` dice cuál.`,
  trip_with_care: (p) =>
    `En ${p.guests.length === 1 ? "la cámara" : "las cámaras"} de ${spoken(p.guests)} un filtro encaja, pero pide cuidado: \`filter-mounting\` dice con qué.`,
  trip_fit_not_asked: (p) =>
    `${p.guests} ${plural(p.guests, { one: "cámara viene", other: "cámaras vienen" })} sin \`port_kind\` ni \`lens_kind\`: se supone que todo filtro encaja.`,
  trip_thread_assumed: (p) =>
    `No se indica la rosca de ${spoken(p.pieces)}: se supone la de cada objetivo o puerto. Con \`filter_thread_mm\` se sabe qué encaja.`,
  trip_sun_assumed: (p) =>
    `${spoken(p.dives)}: no se indica ni el lugar ni la altura del sol; se supone que el sol está a ${shown(p.elevation_deg)} grados.`,
  trip_no_daylight: (p) =>
    `${spoken(p.dives)}: no hay luz del día, así que no se reparte ningún filtro. Pregunte a \`dive-advice\` con sus focos de vídeo.`,
  trip_stays_on: () =>
    "Se supone que los filtros quedan puestos toda la inmersión, y los errores de color son el promedio a las profundidades mínima, media y máxima. Si puede cambiar el filtro bajo el agua, pregunte a `dive-advice` por esa inmersión.",
  trip_spread_shared: (p) =>
    `La incertidumbre de los errores de color ${p.with_filter ? "con filtro" : "sin filtro"} se calculó para ${p.guest} en ${p.dive}, donde queda el mayor, y se aplica a los demás.`,
};

const HELD: Readonly<Record<FilterHolder, string>> = {
  screw_on_lens: "enroscado en el objetivo",
  screw_on_port: "enroscado en el puerto",
  flip: "en un portafiltros abatible en el puerto",
  clip_on: "con clip en el puerto",
  rear_sheet: "como lámina detrás del objetivo",
  action_camera: "en su marco sobre la ventana de la cámara",
};

const withRings = (rings: readonly string[]): string =>
  rings.length === 0
    ? ""
    : ` con ${rings.length === 1 ? "el anillo adaptador" : "los anillos adaptadores"} ${spoken(rings)}`;

/** El plan de un huésped para una inmersión, en unas pocas frases. */
export const tripPlan: Texts<TripPlanCodes, string> = {
  ...summary,
  trip_mount: (p) =>
    `Monte ${filterName(p.filter)}${p.from === "shelf" ? " del estante" : ""}${p.holder === undefined ? "" : `, ${HELD[p.holder]}`}${withRings(p.rings)}.`,
  trip_too_bright: (p, u) =>
    `A ${depth(p.depth_m, u)} aún hay ${stops(p.excess_stops)} de luz de más: acorte el tiempo de exposición o use un filtro ND.`,
  trip_without_daylight: () => "No hay luz del día: no monte filtros de color y filme con focos de vídeo.",
};

/** Lo que dicen las cajas y los calendarios. */
export const tripSays: Texts<TripSayings, string> = {
  trip_crate: ({ guest, pieces }) =>
    pieces.length === 0
      ? `${guest}: sin filtros.`
      : `${guest}: ${pieces.map((p) => `${p.piece}${withRings(p.rings)} para ${spoken(p.dives)}`).join("; ")}.`,
  trip_event: ({ dive, piece }) => `${dive}: ${piece ?? "sin filtro"}`,
  trip_uses: ({ guest, piece, rings }) => `${guest}: ${piece ?? "sin filtro"}${withRings(rings)}`,
};
