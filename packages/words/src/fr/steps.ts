import type { Gear, Mount } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { SaidSteps } from "../calculation-texts.js";
import type { Texts } from "../problems/texts.js";
import { textOf } from "../text-of.js";
import { dialShutter, setting, settings } from "./dial.js";
import { filterName, takeOff, theFilter } from "./filter-name.js";
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

/** Les étapes d’un plan : quoi faire, et pourquoi. */
export const steps: Texts<SaidSteps, StepText> = {
  ...lampSteps,
  mount_filter: (p) => ({
    text: `${takeOff(p)}Montez ${filterName(p.filter)}${p.outside ? "" : " tant que le caisson est sec et ouvert,"} et vérifiez qu’il est propre.`,
    why: worth(p),
  }),
  keep_filter: (p) => ({
    text: `Laissez ${theFilter(p.filter)} sur l’objectif.${p.better ? ` Vous feriez un peu mieux avec ${filterName(p.better)}, mais trop peu pour en changer.` : ""}`,
    why: worth(p),
  }),
  carry_filter: (p, u) => ({
    text: `${takeOff(p)}Emportez ${filterName(p.filter)}, propre, ${MOUNTS[p.mount].name}, pour servir ${fromTo(p.from_m, p.to_m, u)}${p.from_start ? " ; qu’il soit déjà devant l’objectif quand vous commencez à filmer" : ""}.`,
    why: worth(p),
  }),
  no_filter: (p) => ({
    text: `${takeOff(p)}Laissez l’objectif sans filtre de couleur.`,
    why: `Aucun filtre n’améliore assez les couleurs pour la lumière qu’il coûte. Sans filtre, il reste une erreur de couleur ${strength(p.error)}.`,
  }),
  no_filter_for_lamps: (p) => ({
    text: `${takeOff(p)}Laissez l’objectif sans filtre de couleur.`,
    why: "La lumière vient de vos phares vidéo : un filtre ne ferait qu’en retirer un peu.",
  }),
  neutral_density: (p) => ({
    text:
      p.mount === "none"
        ? `Montez ${neutral(p.density)} ; il reste en place pendant toute la plongée.`
        : `Emportez ${neutral(p.density)} ${MOUNTS[p.mount].name} ; au départ, il est déjà devant l’objectif.`,
    why: `Là où il fait le plus clair, ces réglages laissent entrer ${stops(p.stops)} de trop.`,
  }),
  set_frame: (p) => ({
    text: `Réglez le temps de pose sur ${dialShutter(p.exposure.shutter_s)}, l’exposition et la balance des blancs en manuel, et enregistrez en ${shown(p.bits)} bits.`,
    why: "Les automatismes dérivent avec la profondeur, et leurs images ne s’étalonnent pas ensemble.",
  }),
  start_exposure: (p) => ({
    text: `Commencez à ${setting(p)}, et surveillez les hautes lumières.`,
    why: `À cet endroit, la mesure sur un sujet gris donne un IL de ${shown(p.ev)} à 100 ISO${p.behind ? " sans le filtre ND" : ""}.`,
  }),
  set_modes: (p) => ({
    text: `Réglez l’exposition ${p.exposure_mode === "auto" ? "en automatique" : `en manuel, avec un temps de pose de ${dialShutter(p.exposure.shutter_s)}`}, et la balance des blancs ${{ auto: "en automatique", kelvin: "sur une valeur en kelvins", card: "en manuel, sur une charte" }[p.white_balance_mode]}.`,
    why: "Les automatismes dérivent avec ce qu’il y a dans l’image : contrôlez de temps en temps.",
  }),
  exposure_by_itself: (p) => ({
    text:
      Math.abs(p.stops) < 1 / 3
        ? "Laissez l’exposition à l’appareil, et surveillez les hautes lumières."
        : `Laissez l’exposition à l’appareil, avec une correction d’exposition de ${p.stops > 0 ? "+" : "−"}${stops(Math.abs(p.stops))} pour le sujet, et surveillez les hautes lumières.`,
    why: "L’appareil mesure toute l’image, eau comprise.",
  }),
  balance_by_itself: (p) => ({
    text: "Laissez la balance des blancs en automatique, et regardez une image avant de continuer.",
    why: `L’appareil ramène toute l’image à un gris moyen, eau comprise : il reste ${castOf(p.cast)} sur un gris.`,
  }),
  balance_in_kelvin: (p) => ({
    text: `Réglez la balance des blancs sur ${kelvin(p.cct_K)}, et n’y touchez plus.`,
    why: `Aucun réglage en kelvins ne connaît l’eau : il reste ${castOf(p.cast)} sur un gris.`,
  }),
  balance_on_card: (p, u) => ({
    text: `${p.near_m === undefined ? "Tenez la charte à la verticale devant le sujet, hors de votre ombre. Remplissez-en le centre de l’image et faites la balance des blancs." : `Ne poursuivez pas le sujet : faites tenir la charte par votre binôme à cette profondeur, à ${distance(p.near_m, u)} de l’appareil et tournée comme le sujet. Remplissez-en le centre de l’image et faites la balance des blancs.`}${p.cast > 0 ? " Corrigez le reste à la retouche." : ""}`,
    why: `La balance des blancs corrige ce que l’eau et le filtre font au blanc${p.cast > 0 ? `, à ${castOf(p.cast)} près` : ""}.`,
  }),
  balance_on_card_in_lamp_light: (p) => ({
    text: `Allumez les phares vidéo, tenez la charte là où sera le sujet et faites la balance des blancs.${p.cct_K === undefined ? "" : ` Sans charte, réglez sur ${kelvin(p.cct_K)}, la valeur des phares : c’est un pis-aller.`}`,
    why: `Sans charte, l’eau entre le phare, le sujet et l’appareil laisse ${castOf(p.cast)}.`,
  }),
  balance_again: (p, u) => ({
    text: `Refaites la balance des blancs sur la charte à ${depths(p.depths_m, u)}.`,
    why: `D’ici là s’est installée ${castOf(p.tolerance)}${p.asked ? `, plus que vous n’acceptez : il faut ${depth(2, u)} et une minute entre deux balances` : ""}.`,
  }),
  filter_in: (p) => ({
    text: `${capital(MOUNTS[p.mount].on)}, réglez ${setting(p)} et refaites la balance des blancs.`,
    why: "À partir d’ici, le filtre améliore les couleurs.",
  }),
  filter_out: (p) => ({
    text: `${capital(MOUNTS[p.mount].off)}, réglez ${setting(p)} et refaites la balance des blancs.`,
    why: "À partir d’ici, le filtre n’améliore plus les couleurs.",
  }),
  neutral_off: (p) => ({
    text: `Retirez le filtre ND et réglez ${setting(p)}.`,
    why: "Sans lui, il n’y a plus trop de lumière.",
  }),
  neutral_on: (p) => ({
    text: `Remettez le filtre ND et réglez ${setting(p)}.`,
    why: "À partir d’ici, sans lui, il y a trop de lumière.",
  }),
  deep_exposure: (p, u) => ({
    text: `En descendant, exposez peu à peu davantage : à ${depth(p.depth_m, u)}, ${setting(p)}.`,
    why: `Le sujet reçoit ${stops(p.stops)} de moins qu’à votre dernier réglage.`,
  }),
  shallow_exposure: (p, u) => ({
    text: `En remontant, exposez peu à peu moins : à ${depth(p.depth_m, u)}, ${setting(p)}.`,
    why: `Le sujet reçoit ${stops(p.stops)} de plus qu’à votre dernier réglage.`,
  }),
  too_dark: (p, u) => ({
    text: `Même à ${settings(p)}, il manque ici ${stops(p.shortfall_stops)} de lumière. ${p.ways.length > 0 ? p.ways.map((way, index) => small(textOf(waysToPay, way, u), index)).join(" Ou bien : ") : "Aucun réglage ne le rattrape."}`,
    why: "L’appareil y est au bout de ses possibilités.",
  }),
  come_close: (p, u) => ({
    text: "Approchez-vous du sujet, bien stabilisé, avant de changer quoi que ce soit d’autre.",
    why: `À travers ${distance(p.distance_m, u)} de cette eau, il ne reste que ${percent(p.percent)} du contraste.`,
  }),
  grade_red: (p, u) => ({
    text: `Dans les images, comptez sur un bon rouge jusqu’à ${depth(p.acceptable_m, u)} environ, ${p.gone_m === undefined ? "et sur peu de rouge ensuite" : depthNumber(p.acceptable_m, u) === depthNumber(p.gone_m, u) ? "et sur aucun au-delà" : `sur peu de rouge ensuite, et sur aucun au-delà de ${depth(p.gone_m, u)}`}.`,
    why: "Aucune retouche ne ramène un rouge qui n’a pas été enregistré.",
  }),
  grade_no_red: (p, u) => ({
    text: `Dans les images, ne comptez pas sur un rouge franc : il est ${p.gone_m === undefined ? "faible dès le début de cette plongée" : depthNumber(p.gone_m, u) === "0" ? "perdu dès la surface" : `faible dès le début de cette plongée et perdu au-delà de ${depth(p.gone_m, u)}`}.`,
    why: "Aucune retouche ne ramène un rouge qui n’a pas été enregistré.",
  }),
  lamps_off_before_air: () => ({
    text: "Éteignez les phares vidéo avant qu’ils ne sortent de l’eau, et gardez une lampe de plongée allumée pour voir et être vu.",
    why: "C’est l’eau qui les refroidit. À l’air, ils surchauffent et peuvent faire fondre un filtre en plastique.",
  }),
  rinse: (p) => ({
    text: `Rincez et séchez ${spoken(p.gear.map((item) => GEAR[item]))} comme le ${p.gear.length === 1 ? "dit la notice" : "disent les notices"} avant d’ouvrir quoi que ce soit. Vérifiez ensuite dans les images les dominantes, les hautes lumières brûlées et la netteté.`,
    why: "Le sel raye le verre, et un caisson mouillé goutte sur le capteur quand on l’ouvre.",
  }),
};

const GEAR: Readonly<Record<Gear, string>> = {
  housing: "le caisson",
  filter: "le filtre",
  lamps: "les phares vidéo",
};

const MOUNTS: Readonly<Record<Mount, { on: string; off: string; name: string }>> = {
  flip: {
    on: "basculez le filtre devant l’objectif",
    off: "escamotez le filtre",
    name: "sur son support basculant",
  },
  clip_on: { on: "clipsez le filtre", off: "retirez le filtre", name: "sur son support à clip" },
};

const worth = (p: { with_e: number; without_e: number; loss_stops: number }): string =>
  `Il ${errorFall(p.without_e, p.with_e)} et coûte ${stops(p.loss_stops)} de lumière.`;
