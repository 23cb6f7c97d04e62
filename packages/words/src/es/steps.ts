import type { Gear, Holds, StepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { textOf } from "../text-of.js";
import { autoSteps } from "./auto-steps.js";
import { changeSteps } from "./change-steps.js";
import { dialShutter, setting, settings } from "./dial.js";
import { choiceOf, filterName, takeOff, theFilter } from "./filter-name.js";
import { worth } from "./filter-worth.js";
import {
  capital,
  castOf,
  depth,
  depthNumber,
  depths,
  distance,
  kelvin,
  shareOf,
  shown,
  small,
  spoken,
  stops,
  strength,
} from "./format.js";
import { lampSteps } from "./lamp-steps.js";
import { waysToPay } from "./ways-to-pay.js";

/** Los pasos de un plan: qué hacer, y por qué. */
export const steps: Texts<StepCodes, StepText> = {
  ...autoSteps,
  ...lampSteps,
  ...changeSteps,
  mount_filter: (p, u) => ({
    text: `${takeOff(p)}Monte ${filterName(p.filter)}${p.densest ? ", o el más denso que encuentre," : ""}${p.outside ? "" : " con la carcasa aún seca y abierta,"} y compruebe que está limpio.`,
    why: worth(p, u),
  }),
  keep_filter: (p, u) => ({
    text: `Deje ${theFilter(p.filter)} en el objetivo.${p.better ? ` ${capital(choiceOf(p.better))} es mejor, pero por tan poco que no vale la pena el cambio.` : ""}`,
    why: worth(p, u),
  }),
  no_filter: (p) => ({
    text: `${takeOff(p)}Deje el objetivo sin filtro de color.`,
    why: `Ningún filtro mejora los colores lo bastante para la luz que cuesta. Sin filtro queda un error de color ${strength(p.error)}.`,
  }),
  no_filter_for_lamps: (p) => ({
    text: `${takeOff(p)}Deje el objetivo sin filtro de color.`,
    why: "La luz la ponen sus focos de vídeo: un filtro solo le quitaría luz.",
  }),
  lamps_would_help: (p) => ({
    text: "Si tiene focos de vídeo, llévelos y haga el plan con ellos.",
    why: `Sin ellos, con cualquier filtro queda un error de color ${strength(p.error)}: los colores que faltan son aquí demasiado débiles.`,
  }),
  set_frame: (p) => ({
    text: `Ponga el tiempo de exposición en ${dialShutter(p.exposure.shutter_s)}, la exposición y el balance de blancos en manual, y grabe en ${p.log ? "log, con " : ""}${shown(p.bits)} bits.`,
    why: "Los automatismos van cambiando con la profundidad, y esas tomas no se pueden corregir todas a la vez.",
  }),
  start_exposure: (p) => ({
    text: `Empiece con ${setting(p)} y vigile las altas luces.${p.against_sun ? " El propio sol saldrá quemado: escóndalo detrás del motivo." : ""}${p.log ? " El log se ve apagado: sitúe el blanco según la tabla del fabricante, con cebra o forma de onda." : ""}`,
    why: `La medición de un motivo gris da allí EV ${shown(p.ev)} a ISO 100${p.behind ? " sin el filtro ND" : ""}.`,
  }),
  balance_on_card: (p, u) => ({
    text: `${p.sun_behind ? "Tenga el sol a la espalda. " : ""}${p.far ? "Deje que el motivo venga y no vaya tras él. Sostenga la tarjeta con el brazo extendido, orientada como el motivo." : "Ponga la tarjeta en vertical delante del motivo, sin hacerle sombra."} Llene con ella el centro del encuadre y haga el balance de blancos.${p.bands ? " Aquí las olas le mueven y proyectan franjas de sol: espere un momento de calma con la tarjeta iluminada por igual." : ""}${p.cast > 0 ? " Lo que quede solo se quita en la edición." : ""}${p.holds ? ` Manténgalo hasta ${depth(p.holds.to_m, u)}.` : ""}`,
    why: `El balance de blancos quita lo que el agua y el filtro le hacen al blanco${p.cast > 0 ? `, salvo ${castOf(p.cast)}` : ""}.${p.far ? ` Los ${distance(p.far.distance_m, u)} de agua hasta el motivo dejan en él ${castOf(p.far.cast)} que solo se quita en la edición.` : ""}${below(p)}`,
  }),
  balance_on_card_in_lamp_light: (p) => ({
    text: `Ponga la tarjeta donde estará el motivo, a la luz de los focos de vídeo, y haga el balance de blancos.${p.cct_K === undefined ? "" : ` Sin tarjeta, ponga los ${kelvin(p.cct_K)} de los propios focos: es la segunda opción.`}`,
    why: `Sin tarjeta, el agua entre el foco, el motivo y la cámara deja ${castOf(p.cast)}.`,
  }),
  balance_again: (p, u) => ({
    text: `${p.exposed ? "Ajuste primero la exposición y repita" : "Repita"} el balance de blancos con la tarjeta a ${depths(p.depths_m, u)}.${p.holds ? ` Mantenga ${p.depths_m.length > 1 ? "el último" : "este"} hasta ${depth(p.holds.to_m, u)}.` : ""}`,
    why: `Para entonces ya hay ${castOf(p.tolerance)}${p.asked ? `. Con más balances no quedaría tiempo para filmar` : ""}.${below(p)}`,
  }),
  deep_exposure: (p, u) => ({
    text: `A medida que baja, exponga cada vez más: a ${depth(p.to_m, u)}, con ${setting(p)}.`,
    why: "Ahí el motivo está más oscuro.",
  }),
  shallow_exposure: (p, u) => ({
    text: `A medida que sube, exponga cada vez menos: de vuelta a ${depth(p.to_m, u)}, con ${setting(p)}.`,
    why: "Ahí el motivo está más claro.",
  }),
  too_dark: (p, u) => ({
    text: `Aun con ${settings(p)}, aquí hay ${stops(p.shortfall_stops)} de luz de menos. ${p.ways.length > 0 ? capital(p.ways.map((way) => small(textOf(waysToPay, way, u))).join(" O bien: ")) : "Ningún ajuste lo compensa."}`,
    why: "Ahí la cámara está en su límite.",
  }),
  come_close: (p, u) => ({
    text: "Acérquese al motivo todo lo que pueda con la flotabilidad controlada antes de ajustar nada: aquí nada ayuda más.",
    why: `${capital(shareOf(p.percent))} del contraste llega a través de ${distance(p.distance_m, u)} de esta agua.`,
  }),
  grade_red: (p, u) => ({
    text: `Espere en las imágenes un rojo aprovechable hasta unos ${depth(p.acceptable_m, u)}${p.gone_m === undefined ? "; más abajo, poco" : depthNumber(p.acceptable_m, u) === depthNumber(p.gone_m, u) ? "; más abajo, ninguno" : `; más abajo, poco, y por debajo de ${depth(p.gone_m, u)}, ninguno`}.${p.left ? ` Aun donde es aprovechable queda un error de color ${strength(p.left.error)}.` : ""}`,
    why: "Ninguna edición recupera un rojo que no se grabó.",
  }),
  grade_no_red: (p, u) => ({
    text: p.from_start
      ? "No espere rojo en las imágenes: a esta profundidad no queda nada."
      : `No espere un rojo pleno en las imágenes: es débil desde el principio de esta inmersión${p.gone_m === undefined ? "" : ` y desaparece por debajo de ${depth(p.gone_m, u)}`}.`,
    why: "Ninguna edición recupera un rojo que no se grabó.",
  }),
  lamps_off_before_air: () => ({
    text: "Apague los focos de vídeo antes de que salgan del agua; la linterna de buceo sigue encendida.",
    why: "Así sigue viendo y le siguen viendo.",
  }),
  rinse: (p) => ({
    text: `Enjuague y seque ${spoken(p.gear.map((item) => GEAR[item]))} según ${p.gear.length === 1 ? "indica su fabricante" : "indican sus fabricantes"} antes de abrir nada. Después, busque en las tomas dominantes, altas luces quemadas y fallos de enfoque${p.profile ? ", y aplique su perfil" : ""}.`,
    why: "La sal seca y la arenilla rayan el cristal, y una carcasa mojada gotea sobre el sensor al abrirla.",
  }),
};

/** Por qué no sigue otro balance en un largo tramo hacia abajo. */
const below = ({ holds }: { holds?: Holds }): string => (holds?.because ? BELOW[holds.because] : "");

const BELOW: Readonly<Record<NonNullable<Holds["because"]>, string>> = {
  limit:
    " Más abajo, el balance de blancos de la cámara llega a su límite: uno nuevo quitaría solo parte de la dominante.",
  at_limit:
    " Más abajo, el balance de blancos de la cámara está en su límite: uno nuevo no aportaría nada visible.",
  little: " Más abajo no aparece una dominante que merezca uno nuevo.",
};

const GEAR: Readonly<Record<Gear, string>> = {
  housing: "la carcasa",
  filter: "el filtro",
  lamps: "los focos de vídeo",
};
