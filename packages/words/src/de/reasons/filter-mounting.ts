import type { FilterMountingReasons, PupilBasis, StepRing } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { distance, near, percent, plural, shown, unit } from "../format.js";
import { mountingHolders } from "../mounting-holders.js";

const mm = (value: number, decimals = 1): string => unit(shown(value, decimals), "mm");

/** Gründe dafür, wo ein Filter hinkommt. */
export const filterMountingReasons: Texts<FilterMountingReasons, string> = {
  mount_asked_does_not_fit: (p) =>
    `Was du wolltest, ${mountingHolders[p.asked].wer}, passt nicht an diese Kamera. Nimm stattdessen ${mountingHolders[p.instead].wen}.`,
  mount_nothing_fits: () =>
    "So wie es ist, passt kein Halter; die Gründe darunter sagen, was sich ändern müsste.",
  mount_no_room_for_two: () =>
    "Der ND-Filter bleibt an Land: Neben dem Farbfilter ist kein Platz für ihn, oder die Ecken werden dunkel.",

  mount_on_lens: () =>
    "Der Filter kommt im Gehäuse aufs Objektiv: in Luft und vor Stößen sicher, aber fest für den ganzen Tauchgang.",
  mount_outside_fixed: () =>
    "Der Filter sitzt im Wasser vor der planen Scheibe und bleibt den ganzen Tauchgang dort.",
  mount_outside_changed: () =>
    "Der Filter sitzt im Wasser vor der planen Scheibe; du kannst ihn in der Tiefe wegklappen oder abnehmen und wieder aufsetzen.",
  mount_over_window: () =>
    "Ein Rahmen, der für diese Kamera gemacht ist, hält den Filter über ihrem Fenster, dicht am Objektiv.",
  mount_behind_lens: () =>
    "Eine Folie hinter dem Objektiv braucht vorn keinen Platz: Sie passt zu gewölbten Frontlinsen und jedem Domeport und hat keinen Rand, der die Ecken abdunkelt. Sie bleibt den ganzen Tauchgang drin.",

  mount_window_is_port: () =>
    "Bei dieser Kamera ist das eigene Fenster der Port: An ein Objektiv dahinter kommst du nicht heran.",
  mount_front_bulges: () =>
    "Die Frontlinse eines Fisheyes wölbt sich vor und lässt keinen Platz für ein Gewinde: Der Filter kommt hinter das Objektiv.",
  mount_lens_without_thread: () =>
    "Das Objektiv hat kein Filtergewinde: Anschrauben lässt sich daran nichts.",
  mount_field_too_wide: (p) =>
    `Das Objektiv sieht ${shown(p.field_deg)} Grad: Kein planer Filter davor ist groß genug. Der Filter kommt hinter das Objektiv.`,
  mount_hits_dome: (p) =>
    `Liegt die Eintrittspupille in der Mitte des Domes, würden sich Rand und Dome um ${mm(-p.clearance_mm, 0)} überschneiden: Für diesen Filter ist hinter diesem Dome kein Platz.`,
  mount_near_dome: (p) =>
    `Zwischen Rand und Dome bleiben nur etwa ${mm(p.clearance_mm, 0)} frei: Probier es langsam von Hand, bevor du das Gehäuse schließt.`,
  mount_not_before_dome: () =>
    "Auf einem Dome sitzt kein planer Filter, und einer für den ganzen Bildwinkel wäre riesig. Er kommt nach innen.",
  mount_port_without_thread: () =>
    "Von diesem Port ist außen kein Gewinde bekannt; einen Filter kannst du also nicht daraufschrauben.",
  mount_flip_seat_unknown: () =>
    "Von diesem Port ist außen kein Gewinde bekannt. Prüf, ob sich der Klapphalter daran festklemmen lässt, oder gib `port_thread_mm` oder `port_outer_diameter_mm` an.",
  mount_clip_seat_unknown: () =>
    "Ohne den Außendurchmesser des Ports lässt sich nicht sagen, ob ein Clip darauf hält. Miss nach und gib `port_outer_diameter_mm` an.",
  mount_frame_for_housing: () =>
    "Der Rahmen muss für das Tauchgehäuse dieser Kamera gemacht sein, nicht für die nackte Kamera. Probier ihn vor der Reise aus.",
  mount_holder_too_small: (p) =>
    `Der Halter ist innen ${mm(p.inner_mm)} weit, der Port außen ${mm(p.port_mm)}: Er passt nicht darüber.`,
  mount_holder_too_large: (p) =>
    `Der Halter ist innen ${mm(p.inner_mm)} weit, der Port außen ${mm(p.port_mm)}: Er hat keinen Halt.`,
  mount_holder_loose: (p) =>
    `Der Halter ist ${mm(p.inner_mm - p.port_mm)} weiter als der Port: Füttere ihn mit Gummi aus, bis er hält, und sichere ihn mit einer Leine.`,
  mount_holder_to_ask_for: (p) =>
    `Frag nach einem Halter für einen Port mit ${mm(p.port_mm)} Außendurchmesser.`,
  mount_dome_room_unknown: () =>
    "Ohne den Radius des Domes ist unbekannt, wie viel Platz zwischen Rand und Dome ist. Probier es langsam von Hand, oder gib `dome_radius_mm` an.",
  mount_not_an_action_camera: () =>
    "Rahmen sind für Actioncams und ihre Gehäuse gemacht, nicht für den Port einer größeren Kamera.",
  mount_lens_stays_on: () => "Das Objektiv dieser Kamera lässt sich nicht abnehmen: Dahinter kommt nichts.",
  mount_fixed_for_dive: () =>
    "Dort kannst du den Filter in der Tiefe nicht wechseln: Nimm einen, der für den ganzen Tiefenbereich taugt.",
  mount_other_change: (p) =>
    `Dort wechselst du den Filter, indem du ${CHANGES[p.allowed]}, nicht so, wie du wolltest.`,

  rings_not_needed: (p) =>
    `Filter und Anschluss haben beide ein Gewinde von ${mm(p.thread_mm)}: Du brauchst keinen Ring.`,
  rings_filter_thread_assumed: (p) =>
    `Du hast kein Filtergewinde angegeben; angenommen sind ${mm(p.thread_mm)}, wie beim Anschluss.`,
  rings_close: (p) =>
    `Deine Step-Ringe führen zum Filter: ${p.rings.map(ring).join(", dann ")}. ${plural(p.rings.length, { one: "Er rückt", other: "Zusammen rücken sie" })} ihn ${mm(p.thickness_mm)} nach vorn. Keine andere Kette daraus ist weiter.`,
  rings_missing: (p) =>
    `Mit deinen Step-Ringen kommst du nicht von ${shown(p.from_mm, 1)} auf ${mm(p.to_mm)}. Besorg einen Ring, der in ${mm(p.from_mm)} passt und ${mm(p.to_mm)} aufnimmt. Die Werte für die Ecken gehen von 3 mm Dicke aus.`,
  rings_too_thick: (p) =>
    `Mit deinen Step-Ringen kommst du von ${shown(p.from_mm, 1)} auf ${mm(p.to_mm)}, aber sie schneiden die Ecken ab. Besorg einen dünnen Ring, der in ${mm(p.from_mm)} passt und ${mm(p.to_mm)} aufnimmt. Die Werte für die Ecken gehen von 3 mm Dicke aus.`,
  rings_wrong_way: (p) =>
    `Der Ring ${p.id} verbindet dieselben Größen andersherum (er passt in ${mm(p.from_mm)} und nimmt ${mm(p.to_mm)} auf): Umdrehen lässt sich ein Ring nicht.`,
  rings_narrow: (p) =>
    `Die Kette verengt sich auf ${mm(p.narrowest_mm)}, enger als Objektiv und Filter, und dunkelt die Ecken ab. Besser wäre ein Ring von ${shown(p.from_mm, 1)} auf ${mm(p.to_mm)}.`,
  rings_step_down: (p) =>
    `Für einen Filter von ${mm(p.to_mm)} an einem Anschluss von ${mm(p.from_mm)} brauchst du einen Step-down-Ring, und der dunkelt die Ecken ab. Besser ist ein Filter, so groß wie der Anschluss oder größer.`,

  corners_clear: (p) =>
    `Filter und Ringe lassen in der Ecke ${percent(p.light_percent)} des Lichts: Bis ${shown(p.clear_half_deg)} Grad von der Achse ist der Blick frei, und die Ecke liegt bei ${shown(p.corner_half_deg)} Grad.`,
  corners_slight: (p) =>
    `Filter und Ringe lassen ganz in der Ecke ${percent(p.light_percent)} des Lichts; bis ${shown(p.clear_half_deg)} Grad von der Achse ist alles frei. Das fällt kaum auf.`,
  corners_dark: (p) =>
    `Filter und Ringe dunkeln die Ecken ab: Dort ${plural(Math.round(p.light_percent), { one: "bleibt", other: "bleiben" })} ${percent(p.light_percent)} des Lichts. Bis ${shown(p.clear_half_deg)} Grad von der Achse ist alles frei; die Ecke liegt bei ${shown(p.corner_half_deg)} Grad.`,
  corners_black: (p) =>
    `Filter und Ringe schneiden wahrscheinlich die Ecken ab: Der Blick ist nur bis ${shown(p.clear_half_deg)} Grad von der Achse frei, und die Ecke liegt bei ${shown(p.corner_half_deg)} Grad. Du brauchst einen freien Durchmesser von ${mm(p.clear_diameter_needed_mm, 0)}.`,
  corners_close: (p) =>
    `Es ist knapp: Liegt die Eintrittspupille weiter hinten als wahrscheinlich, bleiben in der Ecke nur ${percent(p.least_light_percent)} des Lichts. Ein freier Durchmesser von ${mm(p.clear_diameter_safe_mm, 0)} reicht selbst dann.`,
  corners_unknown: (p) =>
    `Du hast keinen freien Durchmesser des Filters angegeben: Mit etwa ${mm(p.clear_diameter_needed_mm, 0)} bleiben die Ecken frei.`,
  corners_test: () =>
    "Wo die Eintrittspupille liegt, veröffentlichen Hersteller selten, und sie wandert mit dem Winkel. Fotografiere eine weiße Wand bei größtem Bildwinkel und kleinster Blende: Dann siehst du, was wirklich passiert.",
  pupil_distance_assumed: (p) =>
    `Angenommen ist, dass die Eintrittspupille ${mm(p.distance_mm, 0)} hinter dem Filter liegt, plus oder minus ${percent(p.spread_percent)}, ${PUPIL_ASSUMED_FROM[p.from]}.`,
  format_assumed: (p) =>
    `Angenommen ist eine Sensordiagonale von ${mm(p.diagonal_mm)}: Gib sensor_diagonal_mm an, dann sind die Werte für die Ecken sicherer.`,

  flat_port_narrows: (p) =>
    `Die plane Scheibe macht aus ${shown(p.field_in_air_deg)} Grad in Luft ${shown(p.field_in_water_deg)} Grad im Wasser: Alles erscheint ${percent(p.enlarged_percent)} größer und in drei Vierteln der Entfernung.`,
  dome_keeps_field: () =>
    "Liegt die Eintrittspupille des Objektivs in der Mitte des Domes, bleibt der Bildwinkel erhalten.",
  dome_brings_near: (p, u) =>
    `Hinter diesem Dome erscheint selbst das Fernste ${near(p.from_vertex_mm, u)} vor dem Glas, ${near(p.from_centre_mm, u)} von seiner Mitte: So nah muss das Objektiv scharfstellen.`,

  sheet_shifts_focus: (p) =>
    `Die Folie rückt das Bild um ${mm(p.shift_mm, 3)} nach hinten. Der Autofokus gleicht das aus. Stellst du nach der Skala scharf, beträgt die Unschärfe ${mm(p.blur_mm, 4)}, wo üblicherweise ${mm(p.allowed_mm, 3)} erlaubt sind.`,
  sheet_all_in_reach: (p, u) =>
    `Bei Unendlich verlierst du nichts: Hinter diesem Dome erscheint nichts weiter weg als ${near(p.from_centre_mm, u)}, und das liegt gut in dem Bereich, in dem das Objektiv mit Folie scharfstellt.`,
  sheet_infinity_hidden: (p, u) =>
    `Ein Objektiv mit Anschlag bei Unendlich stellt mit Folie bis ${distance(p.farthest_m, u)} scharf; dahinter bleibt die Unschärfe innerhalb der Schärfentiefe.`,
  sheet_infinity_lost: (p, u) =>
    `Ein Objektiv mit Anschlag bei Unendlich stellt mit Folie nur bis ${distance(p.farthest_m, u)} scharf, dahinter ist es um ${mm(p.blur_mm, 3)} unscharf: Blende ab, nimm eine dünnere Folie, oder prüf, ob sich das Objektiv über Unendlich hinaus drehen lässt.`,
  sheet_focus_unknown: () =>
    "Ohne den Radius des Domes lässt sich nicht sagen, ob das Objektiv mit Folie noch scharfstellt: Gib `dome_radius_mm` an.",
  sheet_measure_opening: () =>
    "Miss die Öffnung hinter dem Objektiv oder den Schlitz des Halters, dann hast du das Maß für den Zuschnitt.",
  sheet_cut: (p) => `Schneide die Folie auf ${shown(p.width_mm, 1)} mal ${mm(p.height_mm)} zu.`,

  mount_hits_port: (p) =>
    `Bei längster Brennweite würde der Rand des Filters ${mm(-p.clearance_mm)} in den Port ragen: Auf diesem Objektiv ist dafür kein Platz.`,
  mount_near_port: (p) =>
    `Bei längster Brennweite bleiben vor dem Port nur ${mm(p.clearance_mm)} frei: Probier es langsam von Hand, bevor du das Gehäuse schließt.`,
  mount_zoom_room_unknown: (p) =>
    `Das Objektiv wird beim Zoomen um ${mm(p.travel_mm)} länger. Ob der Filter dann den Port berührt, zeigt nur \`lens_port_gap_mm\` oder ein Versuch von Hand.`,
  mount_wet_lens_in_the_way: (p) =>
    `Wo dieser Halter hinkäme, sitzt am Port ${WET_LENSES[p.wet_lens]}. Nimm eines von beiden.`,
  mount_wet_lens_stacked: (p) =>
    p.wet_lens === "wide"
      ? `Zwischen Port und Weitwinkel-Vorsatzlinse rückt der Filter die Linse um ${mm(p.thickness_mm)} vom Port weg; das dunkelt die Ecken ab und kostet Schärfe. Probier es im Wasser mit dem Bild einer Wand aus.`
      : `Schraub zuerst den Filter auf den Port und dann die Nahlinse auf den Filter. Er rückt sie um ${mm(p.thickness_mm)} nach vorn: Prüf, ob die Gewinde das Gewicht von beiden tragen.`,
  wet_lens_not_on_dome: () =>
    "Eine Vorsatzlinse gehört auf einen Planport: Hier gilt, dass der Domeport ohne sie verwendet wird.",
  ghosts_inside: (p) =>
    `Filter und Objektiv spiegeln helle Lichter zwischen sich, mindestens ${shown(p.in_air_stops)} Blendenstufen schwächer: Sonne oder Lampe im Bild können ein Geisterbild geben. Ein vergüteter Filter schwächt es.`,
  ghosts_outside: (p) =>
    `Mit Wasser zwischen Filter und Scheibe sind Geisterbilder heller Lichter ${shown(p.in_water_stops)} Blendenstufen schwächer und nicht zu sehen, mit Luft dazwischen nur ${shown(p.in_air_stops)}.`,
  filter_weighs: (p) =>
    `Ein Filter dieser Größe aus ${MATERIALS[p.material]} wiegt im Wasser etwa ${shown(p.weight_g)} g, ohne Halter.`,
};

const WET_LENSES = {
  wide: "die Weitwinkel-Vorsatzlinse",
  close_up: "die Nahlinse",
} as const;

const MATERIALS = { glass: "Glas", resin: "Kunststoff" } as const;

const PUPIL_ASSUMED_FROM: Readonly<Record<PupilBasis, string>> = {
  thread: "wie bei Objektiven dieser Art, die für einen gewöhnlichen Filter gebaut sind",
  sensor: "geschätzt nach der Größe des Bildes auf dem Sensor",
  window: "dicht hinter dem Fenster, wie bei kleinen Kameras",
};

const CHANGES = { flip: "ihn wegklappst", clip_on: "ihn abnimmst und aufsteckst" } as const;

const ring = ({ id, from_mm, to_mm }: Pick<StepRing, "id" | "from_mm" | "to_mm">): string =>
  `${id} (${size(from_mm)} auf ${unit(size(to_mm), "mm")})`;

const size = (value: number): string => shown(value, Number.isInteger(value) ? 0 : 1);
