/** Texts of questions on safety and care. Common practice of the trade. */
import { series } from "./common.js";

export const SAFETY_EN = {
  safe_lamps: {
    stem: "Which of these are good practice with video lights and filters?",
    option: {
      on_in_water: "Switch video lights on only when they are under water",
      off_before_air: "Switch video lights off before they leave the water",
      away_from_eyes: "Point video lights away from the eyes of divers and animals",
      stay_on_rig: "Leave unused lights and batteries on the rig",
      rig_tried_out: "Try a changed rig out in easy conditions first",
      filter_dry: "Change a filter inside the housing on dry land only",
      rinse: "Rinse and dry the housing before it is opened",
      practise_flip: "Practise swinging a filter in and out at the surface first",
      beams_away: "Turn the beams away before you look another diver in the face or come close to an animal",
      dim_near_animals: "Dim the beam near animals",
      hands_dry: "Open the housing on dry land only, once its outside, your hair and your hands are dry",
      warm_up: "Run video lights in air to warm them up",
      face_fish: "Hold a light close to the eyes of a fish to see it better",
      hand_in_air: "Check a light's beam on your hand in air before the dive",
      open_wet: "Open the housing while it is wet",
      test_in_air: "Let video lights run in air for some minutes before the dive to warm them up",
      shine_at_buddy: "Shine a video light in your partner's face to get attention",
      look_into: "Look into a light to see whether it is on",
      leave_one_off: "Take a light and its battery off the rig on the boat when it is not needed",
      open_at_edge: "Open the housing at the water's edge to save time",
      filter_near_lamp: "Try out in air how a plastic filter looks on a light that is on",
    },
    last: "Lights made for diving run in water only, point away from eyes and stay on the rig. Housings are opened dry, on dry land.",
  },
  order_of_dive: {
    stem: "You film in daylight with a colour filter inside the housing. Put these steps in order, the first at the top.",
    step: {
      mount: "Mount the clean filter in the dry, open housing",
      close: "Close the housing and check its seal",
      manual: "At the surface, check that exposure and white balance are on manual",
      card: "At filming depth, set the white balance on a card",
      again: "Deeper down, set the white balance on the card again",
      rinse: "After the dive, rinse the housing in fresh water and dry it",
      open: "Open the dry housing and take the filter out",
    },
    last: (p: { order: string[] }) => `In order: ${series(p.order.map((text) => text.toLowerCase()))}.`,
  },
};
