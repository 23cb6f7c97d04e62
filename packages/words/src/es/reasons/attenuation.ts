import type { AttenuationReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, shown, stops } from "../format.js";

/** Razones sobre la atenuación. */
export const attenuationReasons: Texts<AttenuationReasons, string> = {
  red_goes_first: (p, u) =>
    `A ${depth(p.depth_m, u)}, esta agua le ha quitado al canal rojo ${stops(p.red_stops)}, al verde ${stops(p.green_stops)} y al azul ${stops(p.blue_stops)}.`,
  no_daylight_relative: () =>
    "Aquí no hay luz del día, así que las pérdidas se calculan para un cielo uniforme de 5500 K. No se da ninguna iluminancia.",
  sun_path: (p) =>
    `El sol inclinado alarga el recorrido por el agua: el coseno medio del recorrido es ${shown(p.mu0, 2)}, y en las tablas 0,90.`,
};
