import type { ColourRecoveryReasons, RedQuality } from "@sunfathom/planner";
import type { Texts, TextUnits } from "../../problems/texts.js";
import { depth, depthNumber, percent, plural, shown } from "../format.js";

const QUALITY: Readonly<Record<RedQuality, string>> = {
  excellent: "hervorragend",
  acceptable: "brauchbar",
  poor: "schwach",
  gone: "verloren",
};

/** Bis wohin Rot brauchbar ist und ab wo verloren: schon an der Oberfläche, oder beides in einer Tiefe. */
function reach(p: ColourRecoveryReasons["red_is_gone"], u?: TextUnits): string {
  const [good, gone] = [depthNumber(p.acceptable_m, u), depthNumber(p.gone_m, u)];
  if (gone === "0") return "geht Rot fast schon an der Oberfläche im Rauschen unter";
  if (good === "0")
    return `ist Rot von der Oberfläche an schwach und geht ab etwa ${depth(p.gone_m, u)} im Rauschen unter`;
  return `ist Rot bis etwa ${depth(p.acceptable_m, u)} brauchbar und geht ${good === gone ? "darunter" : `ab etwa ${depth(p.gone_m, u)}`} im Rauschen unter`;
}

/** Gründe dazu, wie viel Farbe zurückkommt. */
export const colourRecoveryReasons: Texts<ColourRecoveryReasons, string> = {
  red_record: (p, u) =>
    `In ${depth(p.depth_m, u)} ohne Filter ${plural(Math.round(p.share * 100), { one: "ist", other: "sind" })} ${percent(p.share * 100)} vom Signal des Rotkanals rotes Licht über 600 nm. Auf einem Grau von 18 % ist dieses Licht ${shown(p.snr, 1)}-mal so stark wie sein Rauschen: ${QUALITY[p.quality]}. Für Rot ist ein Verhältnis von 21 hervorragend und 5,3 brauchbar (nach ISO 12232).`,
  filter_helps_red: (p, u) =>
    `In ${depth(p.depth_m, u)} bringt der Filter kein rotes Licht dazu, aber du kannst Rot reichlicher belichten, bevor Blau und Grün ausfressen. Rotes Licht ist ${shown(p.with_snr, 1)}-mal so stark wie sein Rauschen statt ${shown(p.without_snr, 1)}-mal.`,
  filter_does_not_help_red: (p, u) =>
    `In ${depth(p.depth_m, u)} hilft der Filter dem Rot kaum: Es fehlt das Licht, um es reichlicher zu belichten. Rotes Licht ist mit Filter ${shown(p.with_snr, 1)}-mal so stark wie sein Rauschen, ohne ${shown(p.without_snr, 1)}-mal. Ein Filter hilft dem Rot nur, wo Licht übrig ist.`,
  same_settings_no_gain: (p) =>
    `Bei gleicher ISO, Blende und Belichtungszeit macht ein Filter Rot kaum sauberer. Er hält nur etwas Grün und Blau vom Rotkanal fern: Rotes Licht ist mit ihm ${shown(p.with_snr, 1)}-mal so stark wie sein Rauschen, ohne ihn ${shown(p.without_snr, 1)}-mal.`,
  red_is_gone: (p, u) =>
    `${p.with_filter ? "Mit dem Filter" : "Ohne Filter"} ${reach(p, u)}. Keine Bearbeitung holt Rot zurück, das nicht aufgenommen wurde.`,
  red_codes: (p, u) =>
    `In ${depth(p.depth_m, u)} verteilt sich eine Blendenstufe Rot um das mittlere Grau auf ${shown(p.codes_8)} Tonwerte bei 8 Bit und ${shown(p.codes_10)} bei 10 Bit. Bei weniger als etwa 20 entstehen beim Aufziehen Streifen.`,
};
