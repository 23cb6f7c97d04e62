import type { Gear, Mount } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { SaidSteps } from "../calculation-texts.js";
import type { Texts } from "../problems/texts.js";
import { textOf } from "../text-of.js";
import { dialShutter, setting, settings } from "./dial.js";
import { filterName, takeOff } from "./filter-name.js";
import {
  aCast,
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
  spoken,
  stops,
  strength,
} from "./format.js";
import { lampSteps } from "./lamp-steps.js";
import { waysToPay } from "./ways-to-pay.js";

/** Die Schritte eines Plans: was zu tun ist, und warum. */
export const steps: Texts<SaidSteps, StepText> = {
  ...lampSteps,
  mount_filter: (p) => ({
    text: `${takeOff(p)}Bring ${filterName(p.filter, "wen")} an${p.outside ? "" : ", solange das Gehäuse trocken und offen ist,"} und prüf, ob er sauber ist.`,
    why: worth(p),
  }),
  keep_filter: (p) => ({
    text: `Lass ${filterName(p.filter, "wen")} auf dem Objektiv.${p.better ? ` ${capital(filterName(p.better, "wer"))} ist besser, aber so wenig, dass sich der Wechsel nicht lohnt.` : ""}`,
    why: worth(p),
  }),
  carry_filter: (p, u) => ({
    text: `${takeOff(p)}Nimm ${filterName(p.filter, "wen")} sauber ${MOUNTS[p.mount].name} mit, für den Bereich ${fromTo(p.from_m, p.to_m, u)}${p.from_start ? "; hab ihn schon auf dem Objektiv, wenn du zu filmen anfängst" : ""}.`,
    why: worth(p),
  }),
  no_filter: (p) => ({
    text: `${takeOff(p)}Lass das Objektiv ohne Farbfilter.`,
    why: `Kein Filter verbessert die Farben genug für das Licht, das er kostet. Ohne Filter bleibt ein ${strength(p.error)}er Farbfehler.`,
  }),
  no_filter_for_lamps: (p) => ({
    text: `${takeOff(p)}Lass das Objektiv ohne Farbfilter.`,
    why: "Das Licht kommt von deinen Videolampen: Ein Filter würde bloß etwas davon wegnehmen.",
  }),
  neutral_density: (p) => ({
    text:
      p.mount === "none"
        ? `Bring ${neutral(p.density)} an; er bleibt den ganzen Tauchgang drauf.`
        : `Nimm ${neutral(p.density)} ${MOUNTS[p.mount].name} mit; zu Beginn ist er vor dem Objektiv.`,
    why: `Wo es am hellsten ist, lassen diese Einstellungen ${stops(p.stops)} zu viel Licht herein.`,
  }),
  set_frame: (p) => ({
    text: `Stell die Belichtungszeit auf ${dialShutter(p.exposure.shutter_s)}, Belichtung und Weißabgleich auf manuell, und nimm mit ${shown(p.bits)} Bit auf.`,
    why: "Automatiken wandern mit der Tiefe mit; solche Aufnahmen lassen sich nicht gemeinsam korrigieren.",
  }),
  start_exposure: (p) => ({
    text: `Fang mit ${setting(p)} an, und prüf, ob helle Stellen ausfressen.`,
    why: `Auf ein graues Motiv misst man dort EV ${shown(p.ev)} bei ISO 100${p.behind ? " ohne den ND-Filter" : ""}.`,
  }),
  set_modes: (p) => ({
    text: `Stell die Belichtung auf ${p.exposure_mode === "auto" ? "Automatik" : `manuell mit ${dialShutter(p.exposure.shutter_s)} Belichtungszeit`} und den Weißabgleich auf ${{ auto: "Automatik", kelvin: "einen festen Kelvinwert", card: "manuell, auf eine Karte" }[p.white_balance_mode]}.`,
    why: "Automatiken richten sich nach dem, was im Bild ist: Sieh ab und zu nach.",
  }),
  exposure_by_itself: (p) => ({
    text:
      Math.abs(p.stops) < 1 / 3
        ? "Überlass die Belichtung der Kamera, und prüf, ob helle Stellen ausfressen."
        : `Überlass die Belichtung der Kamera, mit einer Belichtungskorrektur von ${p.stops > 0 ? "+" : "-"}${stops(Math.abs(p.stops))} fürs Motiv, und prüf, ob helle Stellen ausfressen.`,
    why: "Die Kamera misst das ganze Bild, samt Wasser.",
  }),
  balance_by_itself: (p) => ({
    text: "Lass den Weißabgleich auf Automatik, und sieh dir ein Bild an, bevor du weitermachst.",
    why: `Die Kamera macht das ganze Bild im Mittel grau, samt Wasser: Auf Grau bleibt ${aCast(p.cast)}.`,
  }),
  balance_in_kelvin: (p) => ({
    text: `Stell den Weißabgleich auf ${kelvin(p.cct_K)} und lass ihn dort.`,
    why: `Kein fester Kelvinwert kennt das Wasser: Auf Grau bleibt ${aCast(p.cast)}.`,
  }),
  balance_on_card: (p, u) => ({
    text: `${p.near_m === undefined ? "Halte die Karte aufrecht vor das Motiv, nicht in deinem Schatten. Füll die Bildmitte damit und mach den Weißabgleich." : `Schwimm dem Motiv nicht hinterher: Lass deinen Partner die Karte in seiner Tiefe halten, ${distance(p.near_m, u)} vor der Kamera und so gedreht wie das Motiv. Füll die Bildmitte damit und mach den Weißabgleich.`}${p.cast > 0 ? " Den Rest nimmst du in der Bearbeitung heraus." : ""}`,
    why: `Der Weißabgleich nimmt heraus, was Wasser und Filter aus Weiß machen${p.cast > 0 ? `, bis auf ${castOf(p.cast)}` : ""}.`,
  }),
  balance_on_card_in_lamp_light: (p) => ({
    text: `Schalte die Videolampen ein, halte die Karte dorthin, wo das Motiv sein wird, und mach den Weißabgleich.${p.cct_K === undefined ? "" : ` Ohne Karte stell ${kelvin(p.cct_K)} ein, den Wert der Lampen: die zweitbeste Lösung.`}`,
    why: `Ohne Karte hinterlässt das Wasser zwischen Lampe, Motiv und Kamera ${castOf(p.cast)}.`,
  }),
  balance_again: (p, u) => ({
    text: `Mach in ${depths(p.depths_m, u)} einen neuen Weißabgleich auf die Karte.`,
    why: `Bis dahin ist ${aCast(p.tolerance)} entstanden${p.asked ? `, mehr, als du zulässt: Zwischen zwei Abgleichen brauchst du ${depth(2, u)} und eine Minute` : ""}.`,
  }),
  filter_in: (p) => ({
    text: `${capital(MOUNTS[p.mount].on)}, stell ${setting(p)} ein und mach einen neuen Weißabgleich.`,
    why: "Ab hier verbessert der Filter die Farben.",
  }),
  filter_out: (p) => ({
    text: `${capital(MOUNTS[p.mount].off)}, stell ${setting(p)} ein und mach einen neuen Weißabgleich.`,
    why: "Ab hier verbessert der Filter die Farben nicht mehr.",
  }),
  neutral_off: (p) => ({
    text: `Nimm den ND-Filter ab und stell ${setting(p)} ein.`,
    why: "Ohne ihn ist es jetzt nicht mehr zu hell.",
  }),
  neutral_on: (p) => ({
    text: `Setz den ND-Filter wieder auf und stell ${setting(p)} ein.`,
    why: "Ohne ihn ist es ab hier zu hell.",
  }),
  deep_exposure: (p, u) => ({
    text: `Belichte auf dem Weg nach unten nach und nach reichlicher: in ${depth(p.depth_m, u)} mit ${setting(p)}.`,
    why: `Das Motiv ist um ${stops(p.stops)} dunkler als dort, wo du die Kamera zuletzt eingestellt hast.`,
  }),
  shallow_exposure: (p, u) => ({
    text: `Belichte auf dem Weg nach oben nach und nach knapper: in ${depth(p.depth_m, u)} mit ${setting(p)}.`,
    why: `Das Motiv ist um ${stops(p.stops)} heller als dort, wo du die Kamera zuletzt eingestellt hast.`,
  }),
  too_dark: (p, u) => ({
    text: `Selbst mit ${settings(p)} ist es hier um ${stops(p.shortfall_stops)} zu dunkel. ${p.ways.length > 0 ? p.ways.map((way) => textOf(waysToPay, way, u)).join(" Oder: ") : "Mit keiner Einstellung lässt sich das ausgleichen."}`,
    why: "Die Kamera ist dort am Ende.",
  }),
  come_close: (p, u) => ({
    text: "Geh näher ans Motiv, sicher austariert, bevor du irgendetwas anderes änderst.",
    why: `Durch ${distance(p.distance_m, u)} dieses Wassers bleiben nur ${percent(p.percent)} des Kontrasts.`,
  }),
  grade_red: (p, u) => ({
    text: `Rechne in den Bildern bis etwa ${depth(p.acceptable_m, u)} mit gutem Rot, ${p.gone_m === undefined ? "darunter mit wenig" : depthNumber(p.acceptable_m, u) === depthNumber(p.gone_m, u) ? "darunter mit keinem mehr" : `darunter mit wenig und unterhalb von ${depth(p.gone_m, u)} mit keinem mehr`}.`,
    why: "Keine Bearbeitung holt Rot zurück, das nicht aufgenommen wurde.",
  }),
  grade_no_red: (p, u) => ({
    text: `Rechne in den Bildern nicht mit vollem Rot: Es ist ${p.gone_m === undefined ? "auf diesem Tauchgang von Anfang an schwach" : depthNumber(p.gone_m, u) === "0" ? "schon von der Oberfläche an verloren" : `auf diesem Tauchgang von Anfang an schwach und unterhalb von ${depth(p.gone_m, u)} weg`}.`,
    why: "Keine Bearbeitung holt Rot zurück, das nicht aufgenommen wurde.",
  }),
  lamps_off_before_air: () => ({
    text: "Schalte die Videolampen aus, bevor sie aus dem Wasser kommen, und lass eine Tauchlampe an, um zu sehen und gesehen zu werden.",
    why: "Das Wasser kühlt sie. An der Luft überhitzen sie und können Kunststofffilter schmelzen.",
  }),
  rinse: (p) => ({
    text: `Spül und trockne ${spoken(p.gear.map((item) => GEAR[item]))} nach Angaben der Hersteller, bevor du etwas öffnest. Sieh die Aufnahmen dann auf Farbstiche, ausgefressene Lichter und Schärfe durch.`,
    why: "Salz zerkratzt Glas, und ein nasses Gehäuse tropft beim Öffnen auf den Sensor.",
  }),
};

const GEAR: Readonly<Record<Gear, string>> = {
  housing: "Gehäuse",
  filter: "Filter",
  lamps: "Videolampen",
};

const MOUNTS: Readonly<Record<Mount, { on: string; off: string; name: string }>> = {
  flip: { on: "klapp den Filter ein", off: "klapp den Filter weg", name: "im Klapphalter" },
  clip_on: { on: "steck den Filter auf", off: "nimm den Filter ab", name: "im Clip-Halter" },
};

const worth = (p: { with_e: number; without_e: number; loss_stops: number }): string =>
  `Er ${errorFall(p.without_e, p.with_e)} und kostet ${stops(p.loss_stops)} Licht.`;
