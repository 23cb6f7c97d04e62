import type { BalanceSteps } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { depth, depths, kelvin } from "./format.js";

/** Cómo se hace el balance de blancos, con las palabras de un briefing. */
export const balanceProcedure: Texts<BalanceSteps, string> = {
  lamps_on: () => "Encienda los focos de vídeo dentro del agua, a plena potencia, y espere un momento.",
  card_in_lamp_light: () =>
    "Ponga una tarjeta gris o blanca donde estará el motivo, de cara a la cámara e iluminada solo por los focos de vídeo.",
  fill_frame: () => "Llene el centro del encuadre con la tarjeta y haga el balance de blancos.",
  no_kelvin_fits: () => "Sin tarjeta, ningún valor Kelvin fijo sirve para estos focos de vídeo.",
  kelvin: (p) => `Sin tarjeta, ponga ${kelvin(p.cct_K)}; el agua de por medio se seguirá notando.`,
  keep_distance: () =>
    "Mantenga esa distancia: más cerca o más lejos, el agua quita otra cantidad de rojo. El balance de blancos vale solo mientras se mantenga la distancia.",
  lamps_away: () => "Apague los focos de vídeo, o apártelos de la tarjeta.",
  filter_first: () => "Si usa un filtro, móntelo primero: la cámara tiene que ver la tarjeta a través de él.",
  card_upright: () =>
    "Ponga una tarjeta gris o blanca en vertical delante del motivo, sin hacerle sombra y orientada como el motivo.",
  going_down: (p, u) => `Al bajar, haga el balance de blancos a ${depths(p.depths_m, u)}.`,
  coming_up: (p, u) => `Al subir, haga el balance de blancos a ${depths(p.depths_m, u)}.`,
  out_of_reach: (p, u) =>
    `A partir de ${depth(p.depth_m, u)} la cámara no logra dejar la tarjeta del todo neutra: quédese con lo más cercano que ofrezca y deje el resto para la corrección de color.`,
  leave_to_camera: () => "Deje el balance de blancos en automático y revise una toma antes de seguir.",
  set_kelvin: (p) => `Ponga el balance de blancos en ${kelvin(p.cct_K)} y no lo toque más.`,
  card_would_do_better: (p, u) =>
    `A partir de ${depth(p.depth_m, u)} sería claramente mejor un balance de blancos con tarjeta, si su cámara lo permite.`,
  balance_near: () =>
    "No se puede llegar al motivo: no vaya tras él. Sostenga la tarjeta, o lo que la sustituya, con el brazo extendido y orientada como el motivo.",
  light_changes: () =>
    "Repita el balance de blancos cuando cambie la luz: bajo una nube, junto a una pared en sombra, en otra agua.",
};
