import type { Gear, Holds, StepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { textOf } from "../text-of.js";
import { autoSteps } from "./auto-steps.js";
import { changeSteps } from "./change-steps.js";
import { dialShutter, setting, settings } from "./dial.js";
import { filterName, takeOff, theFilter } from "./filter-name.js";
import { worth } from "./filter-worth.js";
import {
  castOf,
  depth,
  depthNumber,
  depths,
  distance,
  hardlyAny,
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

/** Les étapes d’un plan : quoi faire, et pourquoi. */
export const steps: Texts<StepCodes, StepText> = {
  ...autoSteps,
  ...lampSteps,
  ...changeSteps,
  mount_filter: (p, u) => ({
    text: `${takeOff(p)}Montez ${filterName(p.filter)}${p.densest ? ", ou le plus dense que vous trouviez," : ""}${p.outside ? "" : " tant que le caisson est sec et ouvert,"} et vérifiez que le filtre est propre.`,
    why: worth(p, u),
  }),
  keep_filter: (p, u) => ({
    text: `Laissez ${theFilter(p.filter)} sur l’objectif.${p.better ? ` Vous feriez un peu mieux avec ${filterName(p.better)}, mais pas assez pour en changer.` : ""}`,
    why: worth(p, u),
  }),
  no_filter: (p) => ({
    text: `${takeOff(p)}Laissez l’objectif sans filtre de couleur.`,
    why: `Aucun filtre n’améliore assez les couleurs pour la lumière qu’il coûte. Sans filtre, il reste une erreur de couleur ${strength(p.error)}.`,
  }),
  no_filter_for_lamps: (p) => ({
    text: `${takeOff(p)}Laissez l’objectif sans filtre de couleur.`,
    why: "La lumière vient de vos phares vidéo : un filtre ne ferait qu’en retirer un peu.",
  }),
  lamps_would_help: (p) => ({
    text: "Si vous avez des phares vidéo, emportez-les et refaites le plan avec eux.",
    why: `Sans eux, quel que soit le filtre, il reste une erreur de couleur ${strength(p.error)} : les couleurs qui manquent sont trop faibles ici.`,
  }),
  set_frame: (p) => ({
    text: `Réglez le temps de pose sur ${dialShutter(p.exposure.shutter_s)}, l’exposition et la balance des blancs en manuel, et enregistrez en ${p.log ? "log, sur " : ""}${shown(p.bits)} bits.`,
    why: "Les automatismes dérivent avec la profondeur : les plans ne s’étalonnent plus ensemble.",
  }),
  start_exposure: (p) => ({
    text: `Commencez à ${setting(p)}, et surveillez les hautes lumières.${p.against_sun ? " Le soleil lui-même sera brûlé : cachez-le derrière le sujet." : ""}${p.log ? " Le log paraît terne : placez le blanc d’après le tableau du fabricant, avec les zébras ou l’oscilloscope." : ""}`,
    why: `À cet endroit, la mesure sur un sujet gris donne IL ${shown(p.ev)} pour 100 ISO${p.behind ? " sans le filtre ND" : ""}.`,
  }),
  balance_on_card: (p, u) => ({
    text: `${p.sun_behind ? "Gardez le soleil dans le dos. " : ""}${p.far ? "Laissez venir le sujet, ne le poursuivez pas. Tenez la charte à bout de bras, tournée comme le sujet." : "Tenez la charte à la verticale devant le sujet, hors de votre ombre."} Remplissez-en le centre de l’image et faites la balance des blancs.${p.bands ? " Ici, les vagues vous ballottent et projettent des bandes de soleil : attendez un moment calme où la charte est éclairée uniformément." : ""}${p.cast > 0 ? " Seule la retouche corrige le reste." : ""}${p.holds ? ` Gardez cette balance jusqu’à ${depth(p.holds.to_m, u)}.` : ""}`,
    why: `La balance des blancs corrige ce que l’eau et le filtre font au blanc${p.cast > 0 ? `, à ${castOf(p.cast)} près` : ""}.${p.far ? ` L’eau jusqu’au sujet (${distance(p.far.distance_m, u)}) y laisse ${castOf(p.far.cast)}, que seule la retouche corrige.` : ""}${below(p)}`,
  }),
  balance_on_card_in_lamp_light: (p) => ({
    text: `Tenez la charte là où sera le sujet, à la lumière des phares vidéo, et faites la balance des blancs.${p.cct_K === undefined ? "" : ` Sans charte, réglez sur ${kelvin(p.cct_K)}, la valeur des phares : c’est un pis-aller.`}`,
    why: `Sans charte, l’eau entre le phare, le sujet et l’appareil laisse ${castOf(p.cast)}.`,
  }),
  balance_again: (p, u) => ({
    text: `${p.exposed ? "Réglez d’abord l’exposition, puis refaites" : "Refaites"} la balance des blancs sur la charte à ${depths(p.depths_m, u)}.${p.holds ? ` Gardez ${p.depths_m.length > 1 ? "la dernière" : "celle-ci"} jusqu’à ${depth(p.holds.to_m, u)}.` : ""}`,
    why: `D’ici là, ${castOf(p.tolerance)} se sera installée${p.asked ? ". Des balances plus fréquentes ne laisseraient pas le temps de filmer" : ""}.${below(p)}`,
  }),
  deep_exposure: (p, u) => ({
    text: `En descendant, exposez de plus en plus : à ${depth(p.to_m, u)}, ${setting(p)}.`,
    why: "Le sujet y est plus sombre.",
  }),
  shallow_exposure: (p, u) => ({
    text: `En remontant, exposez de moins en moins : de retour à ${depth(p.to_m, u)}, ${setting(p)}.`,
    why: "Le sujet y est plus clair.",
  }),
  too_dark: (p, u) => ({
    text: `Même à ${settings(p)}, il manque ici ${stops(p.shortfall_stops)} de lumière. ${p.ways.length > 0 ? p.ways.map((way, index) => small(textOf(waysToPay, way, u), index)).join(" Ou bien : ") : "Aucun réglage ne le rattrape."}`,
    why: "L’appareil y est au bout de ses possibilités.",
  }),
  come_close: (p, u) => ({
    text: "Approchez-vous du sujet autant que vous le pouvez, bien stabilisé, avant de régler quoi que ce soit : ici, c’est ce qui aide le plus.",
    why: `À travers ${distance(p.distance_m, u)} de cette eau, il ${hardlyAny(p.percent) ? "ne reste" : "reste"} ${shareOf(p.percent)} du contraste.`,
  }),
  grade_red: (p, u) => ({
    text: `Dans les images, comptez sur un rouge utilisable jusqu’à ${depth(p.acceptable_m, u)} environ, ${p.gone_m === undefined ? "et sur peu de rouge ensuite" : depthNumber(p.acceptable_m, u) === depthNumber(p.gone_m, u) ? "et sur aucun au-delà" : `sur peu de rouge ensuite, et sur aucun au-delà de ${depth(p.gone_m, u)}`}.${p.left ? ` Même là, il reste une erreur de couleur ${strength(p.left.error)}.` : ""}`,
    why: "Aucune retouche ne ramène un rouge qui n’a pas été enregistré.",
  }),
  grade_no_red: (p, u) => ({
    text: p.from_start
      ? "Dans les images, ne comptez pas sur du rouge : il n’en reste pas à cette profondeur."
      : `Dans les images, ne comptez pas sur un rouge franc : il est faible dès le début de cette plongée${p.gone_m === undefined ? "" : ` et perdu au-delà de ${depth(p.gone_m, u)}`}.`,
    why: "Aucune retouche ne ramène un rouge qui n’a pas été enregistré.",
  }),
  lamps_off_before_air: () => ({
    text: "Éteignez les phares vidéo avant qu’ils ne sortent de l’eau ; la lampe de plongée reste allumée.",
    why: "Vous continuez à voir et à être vu.",
  }),
  rinse: (p) => ({
    text: `Rincez et séchez ${spoken(p.gear.map((item) => GEAR[item]))} comme le ${p.gear.length === 1 ? "dit la notice" : "disent les notices"} avant d’ouvrir quoi que ce soit. Vérifiez ensuite dans les images les dominantes, les hautes lumières brûlées et la netteté${p.profile ? ", puis étalonnez avec votre profil" : ""}.`,
    why: "Le sel séché et les grains de sable rayent le verre, et un caisson mouillé goutte sur le capteur quand on l’ouvre.",
  }),
};

/** Pourquoi aucune autre balance ne suit sur un long trajet vers le bas. */
const below = ({ holds }: { holds?: Holds }): string => (holds?.because ? BELOW[holds.because] : "");

const BELOW: Readonly<Record<NonNullable<Holds["because"]>, string>> = {
  limit:
    " Plus bas, la balance des blancs de l’appareil est à sa limite : une nouvelle n’enlèverait qu’une partie de la dominante.",
  at_limit:
    " Plus bas, la balance des blancs de l’appareil est à sa limite : une nouvelle n’apporterait rien de visible.",
  little: " Plus bas, la dominante reste trop faible pour mériter une nouvelle balance.",
};

const GEAR: Readonly<Record<Gear, string>> = {
  housing: "le caisson",
  filter: "le filtre",
  lamps: "les phares vidéo",
};
