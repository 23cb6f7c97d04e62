import type { MixedLightMapTexts } from "../picture-texts.js";
import { textOf } from "../text-of.js";
import { cautions } from "./cautions.js";
import { between, depth, distance, lumens } from "./format.js";
import { waysOut } from "./ways-out.js";

export const mixedLightMap: MixedLightMapTexts = {
  headline: ({ verdict, depth_m, own_distance_m }, u) =>
    ({
      lights_fight: `In ${depth(depth_m, u)} beißen sich Tageslicht und Videolampen in ${distance(own_distance_m, u)} Abstand`,
      lamps_lead: `In ${depth(depth_m, u)} führen die Videolampen in ${distance(own_distance_m, u)} Abstand`,
      daylight_leads: `In ${depth(depth_m, u)} führt das Tageslicht vor Videolampen in ${distance(own_distance_m, u)} Abstand`,
      lamps_only: `In ${depth(depth_m, u)} sind die Videolampen das einzige Licht`,
      daylight_only: `In ${depth(depth_m, u)} ist das Tageslicht das einzige Licht`,
    })[verdict],
  assumed: ({ flux_lm, own_distance_m }, u) =>
    `Du hast keine Videolampen angegeben: Das hier gilt für zwei mit je ${lumens(flux_lm / 2)} in ${distance(own_distance_m, u)} Abstand vom Motiv.`,
  across: "Von den Videolampen zum Motiv",
  at_distance: ({ distance_m }, u) => distance(distance_m, u),
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  verdicts: {
    lamps_lead: "Die Videolampen führen: Mach den Weißabgleich in ihrem Licht",
    lights_fight: "Sie beißen sich: Ein Weißabgleich lässt in einem von beiden einen Farbstich",
    daylight_leads: "Das Tageslicht führt: Mach den Weißabgleich im Tageslicht",
    lamps_only: "Die Videolampen sind das einzige Licht: Mach den Weißabgleich in ihrem Licht",
    daylight_only: "Das Tageslicht ist das einzige Licht",
  },
  own: ({ own_distance_m, ...dive }, u) =>
    `Die Videolampen: ${distance(own_distance_m, u)} vom Motiv, ${between(dive.min_depth_m, dive.max_depth_m, u)}`,
  ways: ({ depth_m }, u) => `Auswege in ${depth(depth_m, u)}, der beste zuerst`,
  way: (way, u) => textOf(waysOut, way, u),
  cautions: [cautions.lamps_not_into_eyes, cautions.lamps_in_water_only, cautions.closer_under_control].join(
    " ",
  ),
  description: ({ end_depth_m, end_distance_m, verdict, depth_m, own_distance_m, ways_out }, u) =>
    [
      `Eine Karte, welches Licht führt, von der Oberfläche bis ${depth(end_depth_m, u)}, mit Videolampen bis zu ${distance(end_distance_m, u)} vom Motiv.`,
      `In ${depth(depth_m, u)} bei ${distance(own_distance_m, u)}: ${VERDICTS[verdict]}.`,
      ...ways_out.slice(0, 1).map((way) => textOf(waysOut, way, u)),
    ].join(" "),
};

const VERDICTS = {
  lamps_lead: "Die Videolampen führen",
  lights_fight: "Die beiden beißen sich",
  daylight_leads: "Das Tageslicht führt",
  lamps_only: "Die Videolampen sind das einzige Licht",
  daylight_only: "Das Tageslicht ist das einzige Licht",
} as const;
