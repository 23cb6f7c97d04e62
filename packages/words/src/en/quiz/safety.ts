/** Texts of questions on safety and care. Common practice of the trade. */
import { series } from "./common.js";

export const SAFETY_EN = {
  safe_lamps: {
    stem: "Which of these are good practice with diving lamps and filters?",
    option: {
      on_in_water: "Switch lamps on only when they are under water",
      off_before_air: "Switch lamps off before they leave the water",
      away_from_eyes: "Point lamps away from the eyes of divers and animals",
      stay_on_rig: "Leave unused lamps and batteries on the rig",
      rig_tried_out: "Try a changed rig out in easy conditions first",
      filter_dry: "Change a filter inside the housing on dry land only",
      rinse: "Rinse and dry the housing before it is opened",
      practise_flip: "Practise swinging a filter in and out at the surface first",
      beams_away: "Turn the beams away before you look another diver in the face or come close to an animal",
      dim_near_animals: "Dim the beam near animals",
      hands_dry: "Open the housing on dry land only, once its outside, your hair and your hands are dry",
      warm_up: "Run lamps in air to warm them up",
      face_fish: "Hold a lamp close to the eyes of a fish to see it better",
      hand_in_air: "Check a lamp's beam on your hand in air before the dive",
      open_wet: "Open the housing while it is wet",
      test_in_air: "Let lamps run in air for some minutes before the dive to warm them up",
      shine_at_buddy: "Shine a video lamp in your partner's face to get attention",
      look_into: "Look into a lamp to see whether it is on",
      leave_one_off: "Take a lamp and its battery off the rig on the boat when it is not needed",
      open_at_edge: "Open the housing at the water's edge to save time",
      filter_near_lamp: "Try out in air how a plastic filter looks on a lit lamp",
    },
    last: "Lamps made for diving run in water only, point away from eyes and stay on the rig. Housings are opened dry, on dry land.",
  },
  order_of_dive: {
    stem: "You film in daylight with a colour filter inside the housing. Put these steps in the order in which they are done, the first at the top.",
    step: {
      mount: "Mount the clean filter in the dry, open housing",
      close: "Close the housing and check its seal",
      manual: "At the surface, check that exposure and white balance are on manual",
      card: "At filming depth, balance on a card",
      again: "Deeper down, balance on the card again",
      rinse: "After the dive, rinse the housing in fresh water and dry it",
      open: "Open the dry housing and take the filter out",
    },
    last: (p: { order: string[] }) => `In order: ${series(p.order.map((text) => text.toLowerCase()))}.`,
  },
};
