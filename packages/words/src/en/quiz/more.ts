/** More texts of questions: light on the way down, video lights in haze, filters and grades, batteries. */
import type { FilterColour } from "../../quiz/colours.js";
import { list, series } from "./common.js";

export const MORE_EN = {
  balance_lasts: {
    stem: (p: { water: string }) =>
      `In daylight you go down in ${p.water}. Put these parts of the way in order of how much daylight's colour (red against green) changes, the largest change at the top.`,
    entry: (p: { from: string; to: string }) => `From ${p.from} to ${p.to}`,
    changes: (p: { changes: { part: string; stops: string }[] }) =>
      `Change of red against green: ${list(p.changes.map(({ part, stops }) => `${part.charAt(0).toLowerCase()}${part.slice(1)} ${stops}`))}.`,
    last: "Near the surface a metre takes more of what red is left than deep down: set the white balance more often there.",
  },
  balance_target: {
    stem: (p: { water: string; depth: string }) =>
      `You have no card with you at ${p.depth} in ${p.water}. You set the white balance on one of these instead. Put them in order of how close to white a white slate then comes out, the closest at the top.`,
    entry: {
      white: "A white slate",
      sand: "Pale sand",
      coral: "Coral",
      crustose_coralline_algae: "Rock under pink crusts of algae",
      macroalgae: "A bed of brown and green seaweed",
      seagrass: "A meadow of seagrass",
    },
    off: (p: { each: { name: string; stops: string }[] }) =>
      `Between the strongest and the weakest channel they differ from white by: ${list(p.each.map(({ name, stops }) => `${name.charAt(0).toLowerCase()}${name.slice(1)} ${stops}`))}.`,
    last: "A white balance makes neutral what it is set on. Anything with a colour of its own, your hand included, puts the opposite colour over the picture.",
  },
  backscatter_order: {
    stem: "Two video lights beside the camera point at the subject. Put these in order of how much backscatter veils the subject, the least at the top.",
    entry: (p: { water: string; distance: string }) => `${p.distance} from the subject in ${p.water}`,
    haze: (p: { each: { name: string; percent: string }[] }) =>
      `Backscatter against a grey subject: ${series(p.each.map(({ name, percent }) => `${name}: ${percent}`))}.`,
    last: "Half the distance is far less than half the backscatter, and clear water has little to scatter: come closer, under control, before you turn the lights up.",
  },
  lamp_filter_water: {
    stem: "Your video lights have to match the daylight around them. Match each water with the filter that goes on the lights.",
    entry: (p: { water: string; depth: string }) =>
      `${p.water.charAt(0).toUpperCase()}${p.water.slice(1)} at ${p.depth}`,
    filter: (p: { kind: FilterColour; density: string }) =>
      `${p.kind.charAt(0).toUpperCase()}${p.kind.slice(1)} of density ${p.density}`,
    last: "A filter on the lights takes what daylight has lost there: the bluer the water, the bluer the filter, and the deeper, the denser.",
  },
  filter_two_dives: {
    stem: (p: { first: string; second: string; rows: string[] }) =>
      `You can take one filter, for the whole of two dives: ${p.first}, then ${p.second}. The mean colour errors of a chart, straight from the camera, are: ${p.rows.join("; ")}. What mean error over both dives does the best choice give?`,
    weighedStem: (p: {
      first: string;
      second: string;
      rows: string[];
      firstMinutes: number;
      secondMinutes: number;
    }) =>
      `You can take one filter, for the whole of two dives: ${p.first}, where you film for ${p.firstMinutes} minutes, then ${p.second}, where you film for ${p.secondMinutes} minutes. The mean colour errors of a chart, straight from the camera, are: ${p.rows.join("; ")}. What mean error over all the minutes does the best choice give?`,
    dive: (p: { depth: string; water: string }) => `${p.depth} in ${p.water}`,
    row: {
      none: (p: { first: string; second: string }) => `no filter ${p.first} and ${p.second}`,
      red: (p: { first: string; second: string }) => `red filter ${p.first} and ${p.second}`,
      magenta: (p: { first: string; second: string }) => `magenta filter ${p.first} and ${p.second}`,
    },
    means: (p: { none: string; red: string; magenta: string }) =>
      `The means are ${p.none} without a filter, ${p.red} with red and ${p.magenta} with magenta.`,
    last: (p: { best: string }) =>
      `One filter has to serve both dives, so the lowest mean counts: ${p.best}.`,
  },
  grade_saves: {
    stem: "Which of these can a grade put right afterwards?",
    option: {
      cast: ["A slight colour cast over all of it", "A slight cast"],
      dark: ["A clip that is half a stop too dark", "Half a stop too dark"],
      contrast: ["A picture of low contrast", "Little contrast in clear water, with all tones recorded"],
      clipped: ["White sand that was clipped", "Sand that is clipped to white in all three channels"],
      red: (p: { depth: string; water: string }) => [
        `The red of a subject at ${p.depth} in ${p.water}`,
        `The red of a grey subject that was filmed at ${p.depth} in ${p.water}, in daylight without a filter`,
      ],
      tint: [
        "Red lost in noise, by a red tint",
        "Red that was lost in noise, by a red tint over the whole picture",
      ],
      bits: [
        "Red lost in noise, in a 10-bit file",
        "Red that was lost in noise, once the clip is converted to 10 bits",
      ],
      split: [
        "Two lights of different colour",
        "A subject too red under video lights in front of water that is right",
      ],
      smear: ["Motion smeared by a long exposure", "Smeared motion"],
    },
    last: "A grade changes what was recorded for the whole picture. What was clipped, lost in noise, smeared or lit in two colours stays that way.",
  },
  safe_batteries: {
    stem: "Which of these are good practice with the batteries of video lights?",
    option: {
      maker: "Charge them as the maker says, with the maker's charger",
      watched: "Stay near while they charge",
      damaged: "Take a dented or swollen one out of use, outdoors and away from all that burns",
      flooded: "Never charge one that was flooded",
      dry_seals: "Dry the compartment and look at its seal before you close it",
      cool: "Let a warm battery cool down before you charge it",
      flight: "Carry spare ones in hand luggage with their contacts covered, as airlines ask",
      rest: "Take lights off charge when they are full",
      overnight: "Charge overnight in the cabin while all sleep",
      rinse_inside: "Rinse the open battery compartment with fresh water",
      any_charger: "Use any charger that has the right plug",
      sun: "Leave them in the sun on deck to keep them warm",
      try_flooded: "Dry a flooded one in the sun and charge it again to see whether it holds",
      loose: "Keep spare ones loose in a bag with coins and keys",
      hot_charge: "Charge them at once while they are hot from the dive, to save time before the next one",
    },
    last: "Batteries of lights hold much energy: maker's charger and instructions, never unattended, and never one that is damaged or was flooded.",
  },
};
