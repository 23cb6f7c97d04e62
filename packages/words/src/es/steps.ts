import type { Gear, Mount } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { SaidSteps } from "../calculation-texts.js";
import type { Texts } from "../problems/texts.js";
import { textOf } from "../text-of.js";
import { dialShutter, setting, settings } from "./dial.js";
import { choiceOf, filterName, takeOff, theFilter } from "./filter-name.js";
import {
  capital,
  castOf,
  depth,
  depthNumber,
  depths,
  distance,
  errorFall,
  fromTo,
  kelvin,
  neutral,
  percent,
  shown,
  small,
  spoken,
  stops,
  strength,
} from "./format.js";
import { lampSteps } from "./lamp-steps.js";
import { waysToPay } from "./ways-to-pay.js";

/** Los pasos de un plan: qué hacer, y por qué. */
export const steps: Texts<SaidSteps, StepText> = {
  ...lampSteps,
  mount_filter: (p) => ({
    text: `${takeOff(p)}Monte ${filterName(p.filter)}${p.outside ? "" : " con la carcasa aún seca y abierta,"} y compruebe que está limpio.`,
    why: worth(p),
  }),
  keep_filter: (p) => ({
    text: `Deje ${theFilter(p.filter)} en el objetivo.${p.better ? ` ${capital(choiceOf(p.better))} es mejor, pero por tan poco que no vale la pena el cambio.` : ""}`,
    why: worth(p),
  }),
  carry_filter: (p, u) => ({
    text: `${takeOff(p)}Lleve ${filterName(p.filter)} limpio ${MOUNTS[p.mount].name}, para usarlo ${fromTo(p.from_m, p.to_m, u)}${p.from_start ? "; téngalo ya en el objetivo cuando empiece a filmar" : ""}.`,
    why: worth(p),
  }),
  no_filter: (p) => ({
    text: `${takeOff(p)}Deje el objetivo sin filtro de color.`,
    why: `Ningún filtro mejora los colores lo bastante para la luz que cuesta. Sin filtro queda un error de color ${strength(p.error)}.`,
  }),
  no_filter_for_lamps: (p) => ({
    text: `${takeOff(p)}Deje el objetivo sin filtro de color.`,
    why: "La luz la ponen sus focos de vídeo: un filtro solo le quitaría luz.",
  }),
  neutral_density: (p) => ({
    text:
      p.mount === "none"
        ? `Monte ${neutral(p.density)}; se queda puesto toda la inmersión.`
        : `Lleve ${neutral(p.density)} ${MOUNTS[p.mount].name}; empiece con él puesto en el objetivo.`,
    why: `Donde más luz hay, estos ajustes dejan entrar ${stops(p.stops)} de luz de más.`,
  }),
  set_frame: (p) => ({
    text: `Ponga el tiempo de exposición en ${dialShutter(p.exposure.shutter_s)}, la exposición y el balance de blancos en manual, y grabe en ${shown(p.bits)} bits.`,
    why: "Los automatismos van cambiando con la profundidad, y esas tomas no se pueden corregir todas a la vez.",
  }),
  start_exposure: (p) => ({
    text: `Empiece con ${setting(p)} y vigile las altas luces.`,
    why: `Un motivo gris mide allí EV ${shown(p.ev)} a ISO 100${p.behind ? " sin el filtro ND" : ""}.`,
  }),
  set_modes: (p) => ({
    text: `Ponga la exposición en ${p.exposure_mode === "auto" ? "automático" : `manual, con un tiempo de exposición de ${dialShutter(p.exposure.shutter_s)}`}, y el balance de blancos en ${{ auto: "automático", kelvin: "un valor Kelvin fijo", card: "personalizado, con tarjeta" }[p.white_balance_mode]}.`,
    why: "Los automatismos cambian con lo que hay en la imagen: compruébelos de vez en cuando.",
  }),
  exposure_by_itself: (p) => ({
    text:
      Math.abs(p.stops) < 1 / 3
        ? "Deje la exposición a la cámara y vigile las altas luces."
        : `Deje la exposición a la cámara, con una compensación de exposición de ${p.stops > 0 ? "+" : "-"}${stops(Math.abs(p.stops))} para el motivo, y vigile las altas luces.`,
    why: "La cámara mide la imagen entera, con el agua incluida.",
  }),
  balance_by_itself: (p) => ({
    text: "Deje el balance de blancos en automático y revise una toma antes de seguir.",
    why: `La cámara hace que la imagen entera salga gris de media, con el agua incluida: en el gris queda ${castOf(p.cast)}.`,
  }),
  balance_in_kelvin: (p) => ({
    text: `Ponga el balance de blancos en ${kelvin(p.cct_K)} y no lo toque más.`,
    why: `Ningún valor Kelvin fijo conoce el agua: en el gris queda ${castOf(p.cast)}.`,
  }),
  balance_on_card: (p, u) => ({
    text: `${p.near_m === undefined ? "Ponga la tarjeta vertical delante del motivo, fuera de su propia sombra. Llene con ella el centro del encuadre y haga el balance de blancos." : `No vaya tras el motivo: que su compañero sostenga la tarjeta a esa profundidad, a ${distance(p.near_m, u)} de la cámara y orientada como el motivo. Llene con ella el centro del encuadre y haga el balance de blancos.`}${p.cast > 0 ? " En la edición, corrija lo que quede." : ""}`,
    why: `El balance de blancos quita lo que el agua y el filtro le hacen al blanco${p.cast > 0 ? `, salvo ${castOf(p.cast)}` : ""}.`,
  }),
  balance_on_card_in_lamp_light: (p) => ({
    text: `Encienda los focos de vídeo, ponga la tarjeta donde estará el motivo y haga el balance de blancos.${p.cct_K === undefined ? "" : ` Sin tarjeta, ponga los ${kelvin(p.cct_K)} de los propios focos: es la segunda opción.`}`,
    why: `Sin tarjeta, el agua entre el foco, el motivo y la cámara deja ${castOf(p.cast)}.`,
  }),
  balance_again: (p, u) => ({
    text: `Repita el balance de blancos con la tarjeta a ${depths(p.depths_m, u)}.`,
    why: `Para entonces ya hay ${castOf(p.tolerance)}${p.asked ? `, más de la que usted admite: entre un balance y otro hacen falta ${depth(2, u)} y un minuto` : ""}.`,
  }),
  filter_in: (p) => ({
    text: `${capital(MOUNTS[p.mount].on)}, pase a ${setting(p)} y repita el balance de blancos.`,
    why: "A partir de aquí el filtro mejora los colores.",
  }),
  filter_out: (p) => ({
    text: `${capital(MOUNTS[p.mount].off)}, pase a ${setting(p)} y repita el balance de blancos.`,
    why: "A partir de aquí el filtro ya no mejora los colores.",
  }),
  neutral_off: (p) => ({
    text: `Quite el filtro ND y pase a ${setting(p)}.`,
    why: "Sin él ya no hay demasiada luz.",
  }),
  neutral_on: (p) => ({
    text: `Vuelva a poner el filtro ND y pase a ${setting(p)}.`,
    why: "A partir de aquí, sin él hay demasiada luz.",
  }),
  deep_exposure: (p, u) => ({
    text: `A medida que baja, exponga más: a ${depth(p.depth_m, u)}, con ${setting(p)}.`,
    why: `El motivo está ${stops(p.stops)} más oscuro que donde ajustó la cámara por última vez.`,
  }),
  shallow_exposure: (p, u) => ({
    text: `A medida que sube, exponga menos: a ${depth(p.depth_m, u)}, con ${setting(p)}.`,
    why: `El motivo está ${stops(p.stops)} más claro que donde ajustó la cámara por última vez.`,
  }),
  too_dark: (p, u) => ({
    text: `Aun con ${settings(p)}, aquí hay ${stops(p.shortfall_stops)} de luz de menos. ${p.ways.length > 0 ? capital(p.ways.map((way) => small(textOf(waysToPay, way, u))).join(" O bien: ")) : "Ningún ajuste lo compensa."}`,
    why: "Ahí la cámara está en su límite.",
  }),
  come_close: (p, u) => ({
    text: "Acérquese al motivo, con la flotabilidad controlada, antes de cambiar ninguna otra cosa.",
    why: `A través de ${distance(p.distance_m, u)} de esta agua solo queda un ${percent(p.percent)} del contraste.`,
  }),
  grade_red: (p, u) => ({
    text: `Espere en las imágenes un rojo bueno hasta unos ${depth(p.acceptable_m, u)}${p.gone_m === undefined ? " y poco más abajo" : depthNumber(p.acceptable_m, u) === depthNumber(p.gone_m, u) ? " y ninguno más abajo" : `, poco más abajo, y ninguno por debajo de ${depth(p.gone_m, u)}`}.`,
    why: "Ninguna edición recupera un rojo que no se grabó.",
  }),
  grade_no_red: (p, u) => ({
    text: `No espere un rojo pleno en las imágenes: ${p.gone_m === undefined ? "es débil desde el principio de esta inmersión" : depthNumber(p.gone_m, u) === "0" ? "se pierde desde la misma superficie" : `es débil desde el principio de esta inmersión y desaparece por debajo de ${depth(p.gone_m, u)}`}.`,
    why: "Ninguna edición recupera un rojo que no se grabó.",
  }),
  lamps_off_before_air: () => ({
    text: "Apague los focos de vídeo antes de que salgan del agua, y deje encendida una linterna de buceo para ver y ser visto.",
    why: "El agua los refrigera. En el aire se sobrecalientan y pueden fundir un filtro de plástico.",
  }),
  rinse: (p) => ({
    text: `Enjuague y seque ${spoken(p.gear.map((item) => GEAR[item]))} según ${p.gear.length === 1 ? "indica su fabricante" : "indican sus fabricantes"} antes de abrir nada. Después, busque en el material dominantes, altas luces quemadas y fallos de enfoque.`,
    why: "La sal raya el cristal, y una carcasa mojada gotea sobre el sensor al abrirla.",
  }),
};

const GEAR: Readonly<Record<Gear, string>> = {
  housing: "la carcasa",
  filter: "el filtro",
  lamps: "los focos de vídeo",
};

const MOUNTS: Readonly<Record<Mount, { on: string; off: string; name: string }>> = {
  flip: {
    on: "baje el filtro delante del objetivo",
    off: "aparte el filtro",
    name: "en su portafiltros abatible",
  },
  clip_on: { on: "encaje el filtro", off: "quite el filtro", name: "en su soporte de clip" },
};

const worth = (p: { with_e: number; without_e: number; loss_stops: number }): string =>
  `${capital(errorFall(p.without_e, p.with_e))} y cuesta ${stops(p.loss_stops)} de luz.`;
