import type { ColourRecoveryReasons, RedQuality } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, percent, shown } from "../format.js";

const QUALITY: Readonly<Record<RedQuality, string>> = {
  excellent: "hervorragend",
  acceptable: "brauchbar",
  poor: "schwach",
  gone: "verloren",
};

/** Gründe dazu, wie viel Farbe zurückkommt. */
export const colourRecoveryReasons: Texts<ColourRecoveryReasons, string> = {
  red_record: (p, u) =>
    `In ${depth(p.depth_m, u)} ohne Filter sind ${percent(p.share * 100)} vom Signal des Rotkanals rotes Licht über 600 nm. Auf einem Grau von 18 % ist dieses Licht das ${shown(p.snr, 1)}-Fache des Rauschens: ${QUALITY[p.quality]}. Für Rot ist 21 hervorragend und 5,3 brauchbar (nach ISO 12232).`,
  filter_helps_red: (p, u) =>
    `In ${depth(p.depth_m, u)} bringt der Filter kein rotes Licht dazu, aber du kannst Rot höher belichten, bevor Blau und Grün ausfressen. Rotes Licht ist das ${shown(p.with_snr, 1)}-Fache des Rauschens statt des ${shown(p.without_snr, 1)}-Fachen.`,
  filter_does_not_help_red: (p, u) =>
    `In ${depth(p.depth_m, u)} hilft der Filter dem Rot kaum: Es fehlt das Licht, um es höher zu belichten. Rotes Licht ist mit Filter das ${shown(p.with_snr, 1)}-Fache des Rauschens, ohne das ${shown(p.without_snr, 1)}-Fache. Ein Filter hilft dem Rot nur, wo Licht übrig ist.`,
  same_settings_no_gain: (p) =>
    `Bei gleicher ISO, Blende und Belichtungszeit macht ein Filter Rot kaum sauberer. Er hält nur etwas Grün und Blau vom Rotkanal fern: Rotes Licht ist mit ihm das ${shown(p.with_snr, 1)}-Fache des Rauschens, ohne ihn das ${shown(p.without_snr, 1)}-Fache.`,
  red_is_gone: (p, u) =>
    `${p.with_filter ? "Mit dem Filter" : "Ohne Filter"} ist Rot bis etwa ${depth(p.acceptable_m, u)} brauchbar und geht ab etwa ${depth(p.gone_m, u)} im Rauschen unter. Keine Bearbeitung holt Rot zurück, das nicht aufgenommen wurde.`,
  red_codes: (p, u) =>
    `In ${depth(p.depth_m, u)} hat eine Blendenstufe Rot um das mittlere Grau ${shown(p.codes_8)} Tonwerte bei 8 Bit und ${shown(p.codes_10)} bei 10 Bit. Bei weniger als etwa 20 entstehen Streifen, wenn du sie spreizt.`,
};
