/** Feedback by misconception: why the answer is wrong. The step that it missed, with the question's numbers, follows it. */
import type { MisconceptionId } from "../../quiz/misconceptions.js";

export const MISCONCEPTIONS_EN: Record<MisconceptionId, string> = {
  all_colours_fade_alike:
    "That is what is left of the brightness. Water takes each colour at its own rate, and red fastest in clear water.",
  channel_confused: "That figure belongs to another colour.",
  loss_per_metre_subtracted: "Each metre takes a share of what is left, not of what came in at the surface.",
  stops_as_divisor: "Dividing by the number of stops is not halving once for each stop.",
  first_metre_everywhere: "The first metre takes the longest red waves. What is left goes down more slowly.",
  depth_misread: "That is the figure of another depth.",
  longest_red_for_all: "The longest red waves go first. Shorter ones reach deeper.",
  way_counted_twice: "Daylight goes that way once, not twice.",
  logarithm_to_ten: "That counts powers of ten, and stops are powers of two.",
  order_by_wavelength:
    "Colours do not fade strictly from long to short waves: coastal water takes violet and blue early too.",
  order_reversed: "That is the right order turned round.",
  blue_lasts_everywhere: "Blue lasts longest in clear ocean water. Coastal water takes blue as well.",
  red_reaches_deepest: "Water takes red and orange first.",
  curve_misread: "The curve is lower there.",
  tenth_taken_for_half: "There half of it is left, not a tenth.",
  tenth_taken_for_hundredth: "There a hundredth of it is left, not a tenth.",
  brightness_taken_for_red: "Brightness comes mostly from green and blue, which reach deeper than red.",
  red_filter_everywhere:
    "Red holds back green and blue alike: it pays in blue water with light to spare, not in every water.",
  magenta_filter_everywhere:
    "Magenta holds back green and lets blue through: it pays where green alone is too strong and there is light to spare.",
  filter_never_pays:
    "Here a filter pays: without one, green and blue fill the sensor before red is well exposed.",
  filter_adds_light: "A filter only takes light away. It cannot add any.",
  density_is_stops: "Density counts powers of ten and stops count halvings. They are not the same number.",
  density_taken_linearly:
    "Each equal step of density multiplies by the same factor. It does not add the same amount.",
  density_is_factor: "Ten to the density is the filter factor, not the stops.",
  densities_multiplied:
    "What multiplies is the share of light that each filter lets through, not the density.",
  densest_filter_counts: "The weaker filter takes its share as well.",
  densest_filter_doubled: "The weaker filter takes less than the denser one.",
  densities_averaged: "Light passes one filter after the other, and each takes its share.",
  transmittances_added: "Two filters let less through than one, never more: the shares multiply.",
  absorptions_added: "The second filter can only take from what the first lets through.",
  red_loss_alone: "Green has lost light too. Only the difference has to be made up.",
  losses_added_for_difference:
    "The filter has to take what green has more than red, not both losses together.",
  iso_added_per_stop: "A further stop does not add the same amount again.",
  iso_lowered_for_loss: "A filter takes light, so ISO goes up. That answer goes down.",
  iso_by_density: "A density is not a factor. Ten to the density is.",
  f_number_halved_per_stop:
    "Halving the f-number gives two stops, as the area of the opening grows with the square.",
  f_number_raised_for_light: "A higher f-number is a smaller opening and lets in less light.",
  f_number_less_stops: "f-numbers do not count in stops, so stops cannot be subtracted from them.",
  stop_counted_too_many: "The f-number you start from is no stop yet.",
  light_factors_added: "Each stop doubles the light again. It does not add the same amount.",
  thirds_taken_for_stops: "Dials often click in thirds of a stop, so that is a third of the way.",
  iso_adds_light: "ISO amplifies what was recorded. It brings no light to the sensor.",
  balance_adds_light: "White balance multiplies the red signal and its noise together. It brings no light.",
  grade_adds_light: "Grading works on what was recorded. It brings no light to the sensor.",
  exposure_turned_wrong: "That is the wrong way here.",
  one_way_only: "Light passes the water twice: from light to subject and from subject to camera.",
  depth_counted_for_lamps: "Its light does not come down from the surface: the depth does not count.",
  warmer_for_higher_kelvin: "Light that looks warm has a low colour temperature.",
  kelvin_always_fits:
    "A formula still returns a number here, but this light is too far from the light of any glowing body for kelvin to describe it.",
  kelvin_never_fits: "This light is near enough to that of glowing bodies for a Kelvin value to describe it.",
  one_balance_for_all: "That was right for the light in which you set it. The light changes on the way.",
  distance_shifts_balance:
    "The distance to the subject stays the same here, so the water on that way does too.",
  kelvin_of_surface: "That fits the light at the surface. The light down here has another colour.",
  depth_shifts_lamp_balance:
    "With video lights as the only light, what counts is the water between light, subject and camera, not the depth.",
  balance_follows_time:
    "Time alone changes nothing. A balance holds as long as the light on the subject stays the same.",
  balance_follows_subject: "A balance answers to the light, not to the colour of what it falls on.",
  balance_follows_exposure: "Exposure changes all colours alike. It does not change white.",
  kelvin_subtracted:
    "A difference in kelvin means little: a step of 1000 K is large at 3000 K and small at 9000 K. Mired make steps comparable.",
  mired_sign_turned: "The sign is turned: fewer kelvin are more mired.",
  lamps_always_lead: "How much video lights count depends on how much daylight is left.",
  daylight_always_leads: "Close video lights can outshine what is left of daylight at depth.",
  lights_blend_evenly: "The two lights are far from equal here.",
  balance_mends_split: "One setting for the whole picture shifts both lights alike: their difference stays.",
  red_filter_on_lamp:
    "Against daylight at depth a white video light already has too much red. A red filter makes the difference larger.",
  inverse_linear: "The beam grows in width and in height, so its light falls faster than the distance grows.",
  water_forgotten: "The water on the way takes its share too.",
  distance_forgotten: "The beam also spreads out on the way.",
  half_always_saved: "The noise decides, not a rule of thumb: see how far red stands above it here.",
  grade_restores_all: "Grading can only stretch what was recorded.",
  red_lost_at_once: "Water takes red bit by bit, and at this depth enough of it still arrives.",
  ring_turned_about: "That ring has its threads the other way round, and rings cannot be turned about.",
  ring_order_swapped: "Right rings, wrong order: the first one has to fit the lens.",
  ring_same_size: "One of its two threads does not fit.",
  field_divided_by_index: "Refraction divides the sine of the angle by the index, not the angle.",
  field_kept: "A flat port refracts rays: in water the lens sees less.",
  field_widened: "A flat port narrows the view: things appear larger.",
  tangent_taken_for_sine: "Snell's law goes by the sine of the angle, not by its tangent.",
  half_field_given: "That is the angle to one side of the axis.",
  glass_index_taken: "Flat glass bends the light in and out again. Only air and water decide.",
  index_counted_twice: "The index counts once, between water and air.",
  whole_sheet_counted: "Only a part of the thickness counts: light is slowed in the sheet, not stopped.",
  index_excess_used: "The factor is 1 - 1/n, not n - 1.",
  filter_goes_in_front: "In front of this lens there is no place for a flat filter.",
  fixed_filter_changed: "What is inside the housing stays as it is for the whole dive.",
  sealed_camera_opened: "A camera that is watertight by itself stays closed: nothing gets at its lens.",
  fixed_lens_opened: "Behind a lens that does not come off nothing can be put.",
  filter_before_dome:
    "A flat filter does not seat on a dome, and one wide enough for its view would be huge.",
  lamp_tested_in_air:
    "Lights made for diving are cooled by water. In air they overheat and can burn or melt a plastic filter.",
  lamp_pointed_at_eyes: "The beam can hurt the eyes of divers and animals.",
  lamp_taken_off: "Taking lights off changes the trim of the rig under water.",
  housing_opened_wet:
    "A drop of salt water can ruin camera and filter: a housing is opened on dry land only.",
  order_of_dive_mixed: "Look again at what can only be done dry and what has to wait for the depth.",
};
