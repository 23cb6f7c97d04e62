import type { Gear, Holds, StepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { textOf } from "../text-of.js";
import { autoSteps } from "./auto-steps.js";
import { changeSteps } from "./change-steps.js";
import { dialShutter, setting, settings } from "./dial.js";
import { filterName, takeOff } from "./filter-name.js";
import { worth } from "./filter-worth.js";
import {
  aCast,
  capital,
  castOf,
  depth,
  depthNumber,
  depths,
  distance,
  kelvin,
  shareOf,
  shown,
  spoken,
  stops,
  strength,
} from "./format.js";
import { lampSteps } from "./lamp-steps.js";
import { waysToPay } from "./ways-to-pay.js";

/** Die Schritte eines Plans: was zu tun ist, und warum. */
export const steps: Texts<StepCodes, StepText> = {
  ...autoSteps,
  ...lampSteps,
  ...changeSteps,
  mount_filter: (p, u) => ({
    text: `${takeOff(p)}Bring ${filterName(p.filter, "wen")}${p.densest ? ", oder den dichtesten, den du bekommst," : ""} an${p.outside ? "" : ", solange das Gehäuse trocken und offen ist,"} und prüf, ob er sauber ist.`,
    why: worth(p, u),
  }),
  keep_filter: (p, u) => ({
    text: `Lass ${filterName(p.filter, "den")} auf dem Objektiv.${p.better ? ` ${capital(filterName(p.better, "wer"))} ist zu wenig besser für einen Wechsel.` : ""}`,
    why: worth(p, u),
  }),
  no_filter: (p) => ({
    text: `${takeOff(p)}Lass das Objektiv ohne Farbfilter.`,
    why: `Kein Filter verbessert die Farben genug für das Licht, das er kostet. Ohne Filter bleibt ein ${strength(p.error)}er Farbfehler.`,
  }),
  no_filter_for_lamps: (p) => ({
    text: `${takeOff(p)}Lass das Objektiv ohne Farbfilter.`,
    why: "Das Licht kommt von deinen Videolampen: Ein Filter würde bloß etwas davon wegnehmen.",
  }),
  lamps_would_help: (p) => ({
    text: "Hast du Videolampen, dann nimm sie mit und mach den Plan mit ihnen.",
    why: `Ohne sie bleibt mit jedem Filter ein ${strength(p.error)}er Farbfehler: Die fehlenden Farben sind hier zu schwach.`,
  }),
  set_frame: (p) => ({
    text: `Stell die Belichtungszeit auf ${dialShutter(p.exposure.shutter_s)}, Belichtung und Weißabgleich auf manuell, und nimm ${p.log ? "in Log " : ""}mit ${shown(p.bits)} Bit auf.`,
    why: "Automatiken wandern mit der Tiefe; das lässt sich nicht gemeinsam korrigieren.",
  }),
  start_exposure: (p) => ({
    text: `Fang mit ${setting(p)} an, und prüf, ob helle Stellen ausfressen.${p.against_sun ? " Die Sonne selbst frisst aus: Versteck sie hinter dem Motiv." : ""}${p.log ? " Log sieht flau aus: Leg Weiß nach der Tabelle des Herstellers, mit Zebra oder Waveform." : ""}`,
    why: `Auf ein graues Motiv misst man dort EV ${shown(p.ev)} bei ISO 100${p.behind ? " ohne den ND-Filter" : ""}.`,
  }),
  balance_on_card: (p, u) => ({
    text: `${p.sun_behind ? "Hab die Sonne im Rücken. " : ""}${p.far ? "Lass das Motiv zu dir kommen, und schwimm ihm nicht hinterher. Halte die Karte auf Armlänge, so gedreht wie das Motiv." : "Halte die Karte aufrecht vor das Motiv, aber nicht in deinen Schatten."} Füll die Bildmitte damit und mach den Weißabgleich.${p.bands ? " Wellen bewegen dich hier und werfen Lichtbänder: Warte auf einen ruhigen Moment, in dem die Karte gleichmäßig hell ist." : ""}${p.cast > 0 ? " Den Rest nimmt nur die Bearbeitung heraus." : ""}${p.holds ? ` Behalte diesen Weißabgleich bis ${depth(p.holds.to_m, u)}.` : ""}`,
    why: `Der Weißabgleich nimmt heraus, was Wasser und Filter aus Weiß machen${p.cast > 0 ? `, bis auf ${castOf(p.cast)}` : ""}.${p.far ? ` Die ${distance(p.far.distance_m, u)} Wasser bis zum Motiv hinterlassen ${castOf(p.far.cast)}: Den nimmt nur die Bearbeitung heraus.` : ""}${below(p)}`,
  }),
  balance_on_card_in_lamp_light: (p) => ({
    text: `Halte die Karte im Licht der Videolampen dorthin, wo das Motiv sein wird, und mach den Weißabgleich.${p.cct_K === undefined ? "" : ` Ohne Karte stell ${kelvin(p.cct_K)} ein, den Wert der Lampen: die zweitbeste Lösung.`}`,
    why: `Ohne Karte hinterlässt das Wasser zwischen Lampe, Motiv und Kamera ${castOf(p.cast)}.`,
  }),
  balance_again: (p, u) => ({
    text: `${
      p.exposed
        ? `Stell in ${depths(p.depths_m, u)} erst die Belichtung ein und mach dann einen neuen Weißabgleich auf die Karte.`
        : `Mach in ${depths(p.depths_m, u)} einen neuen Weißabgleich auf die Karte.`
    }${p.holds ? ` Behalte ${p.depths_m.length > 1 ? "den letzten" : "ihn"} bis ${depth(p.holds.to_m, u)}.` : ""}`,
    why: `Bis dahin ist ${aCast(p.tolerance)} entstanden${p.asked ? `. Noch mehr Weißabgleiche ließen keine Zeit zum Filmen` : ""}.${below(p)}`,
  }),
  deep_exposure: (p, u) => ({
    text: `Belichte auf dem Weg nach unten nach und nach reichlicher: in ${depth(p.to_m, u)} mit ${setting(p)}.`,
    why: "Dort ist das Motiv dunkler.",
  }),
  shallow_exposure: (p, u) => ({
    text: `Belichte auf dem Weg nach oben nach und nach knapper: zurück in ${depth(p.to_m, u)} mit ${setting(p)}.`,
    why: "Dort ist das Motiv heller.",
  }),
  too_dark: (p, u) => ({
    text: `Selbst mit ${settings(p)} ist es hier um ${stops(p.shortfall_stops)} zu dunkel. ${p.ways.length > 0 ? p.ways.map((way) => textOf(waysToPay, way, u)).join(" Oder: ") : "Mit keiner Einstellung lässt sich das ausgleichen."}`,
    why: "Dort ist die Kamera an ihrer Grenze.",
  }),
  come_close: (p, u) => ({
    text: "Geh so nah ans Motiv, wie du sicher austariert kannst, bevor du etwas einstellst: Das hilft hier am meisten.",
    why: `Durch ${distance(p.distance_m, u)} dieses Wassers bleibt vom Kontrast ${shareOf(p.percent)}.`,
  }),
  grade_red: (p, u) => ({
    text: `Rechne in den Bildern bis etwa ${depth(p.acceptable_m, u)} mit brauchbarem Rot, ${p.gone_m === undefined ? "darunter mit wenig" : depthNumber(p.acceptable_m, u) === depthNumber(p.gone_m, u) ? "darunter mit keinem mehr" : `darunter mit wenig und unterhalb von ${depth(p.gone_m, u)} mit keinem mehr`}.${p.left ? ` Auch dort bleiben ${strength(p.left.error)}e Farbfehler.` : ""}`,
    why: "Keine Bearbeitung holt Rot zurück, das nicht aufgenommen wurde.",
  }),
  grade_no_red: (p, u) => ({
    text: p.from_start
      ? "Rechne in den Bildern nicht mit Rot: In dieser Tiefe ist keines mehr da."
      : `Rechne in den Bildern nicht mit vollem Rot: Es ist auf diesem Tauchgang von Anfang an schwach${p.gone_m === undefined ? "" : ` und unterhalb von ${depth(p.gone_m, u)} weg`}.`,
    why: "Keine Bearbeitung holt Rot zurück, das nicht aufgenommen wurde.",
  }),
  lamps_off_before_air: () => ({
    text: "Schalte die Videolampen aus, bevor sie aus dem Wasser kommen; die Tauchlampe bleibt an.",
    why: "So siehst du weiter und wirst gesehen.",
  }),
  rinse: (p) => ({
    text: `Spül und trockne ${spoken(p.gear.map((item) => GEAR[item]))} nach Angaben der Hersteller, bevor du etwas öffnest. Sieh die Aufnahmen dann auf Farbstiche, ausgefressene Lichter und Schärfe durch${p.profile ? " und wende dein Profil an" : ""}.`,
    why: "Getrocknetes Salz und Sand zerkratzen Glas, und ein nasses Gehäuse tropft beim Öffnen auf den Sensor.",
  }),
};

/** Warum auf einem langen Weg nach unten kein weiterer Weißabgleich folgt. */
const below = ({ holds }: { holds?: Holds }): string => (holds?.because ? BELOW[holds.because] : "");

const BELOW: Readonly<Record<NonNullable<Holds["because"]>, string>> = {
  limit:
    " Tiefer ist der Weißabgleich der Kamera an seiner Grenze: Ein neuer nähme nur einen Teil des Farbstichs heraus.",
  at_limit: " Tiefer ist der Weißabgleich der Kamera an seiner Grenze: Ein neuer brächte nichts Sichtbares.",
  little: " Tiefer kommt zu wenig Farbstich hinzu, als dass sich ein neuer lohnte.",
};

const GEAR: Readonly<Record<Gear, string>> = {
  housing: "Gehäuse",
  filter: "Filter",
  lamps: "Videolampen",
};
