/**
 * Misunderstandings that wrong answers come from: what each gets wrong. The template that uses one computes what it would
 * answer; the feedback stands in the texts of each language under the same id. That people hold them is teachers' experience:
 * common practice, no published source.
 */
export const misconceptions = [
  // Light and water
  /** Takes the loss of brightness for the loss of every colour. */
  "all_colours_fade_alike",
  /** Reads the loss of another colour. */
  "channel_confused",
  /** Subtracts the first metre's percentage once for every metre. */
  "loss_per_metre_subtracted",
  /** Divides by the number of stops instead of halving once per stop. */
  "stops_as_divisor",
  /** Lets every metre take the share that the first one takes. */
  "first_metre_everywhere",
  /** Reads the row of another depth. */
  "depth_misread",
  /** Takes the longest red waves for all of the red. */
  "longest_red_for_all",
  /** Counts the way down twice. */
  "way_counted_twice",
  /** Counts powers of ten where stops are powers of two. */
  "logarithm_to_ten",
  /** Lets colours fade strictly from long to short waves in every water. */
  "order_by_wavelength",
  /** Turns the order round. */
  "order_reversed",
  /** Takes blue for the last colour in every water. */
  "blue_lasts_everywhere",
  /** Takes the most striking colour for the one that lasts. */
  "red_reaches_deepest",
  /** Reads another place of the curve. */
  "curve_misread",
  /** Takes the depth at which half is left. */
  "tenth_taken_for_half",
  /** Takes the depth at which a hundredth is left. */
  "tenth_taken_for_hundredth",
  /** Takes the reach of brightness for the reach of red. */
  "brightness_taken_for_red",
  // Filters
  /** Mounts red in every water. */
  "red_filter_everywhere",
  /** Mounts magenta in every water. */
  "magenta_filter_everywhere",
  /** Leaves every correction to the camera and the grade. */
  "filter_never_pays",
  /** Believes that a filter adds the colour it looks. */
  "filter_adds_light",
  /** Takes density for stops. */
  "density_is_stops",
  /** Lets factors grow in proportion to density. */
  "density_taken_linearly",
  /** Takes ten to the density for stops. */
  "density_is_factor",
  /** Multiplies densities instead of adding them. */
  "densities_multiplied",
  /** Counts only the denser of two filters. */
  "densest_filter_counts",
  /** Counts the denser of two filters twice. */
  "densest_filter_doubled",
  /** Averages densities instead of adding them. */
  "densities_averaged",
  /** Adds what two filters let through. */
  "transmittances_added",
  /** Adds what two filters take. */
  "absorptions_added",
  /** Forgets that the other colours lose light too. */
  "red_loss_alone",
  /** Adds two losses where their difference counts. */
  "losses_added_for_difference",
  // Exposure
  /** Adds the starting ISO once per stop instead of doubling. */
  "iso_added_per_stop",
  /** Turns ISO the wrong way. */
  "iso_lowered_for_loss",
  /** Multiplies ISO by the density. */
  "iso_by_density",
  /** Halves the f-number for each stop. */
  "f_number_halved_per_stop",
  /** Raises the f-number to get more light. */
  "f_number_raised_for_light",
  /** Subtracts the stops from the f-number. */
  "f_number_less_stops",
  /** Counts the starting f-number as a stop. */
  "stop_counted_too_many",
  /** Adds a factor of two for each stop instead of multiplying. */
  "light_factors_added",
  /** Takes the thirds of a stop that a dial clicks in for stops. */
  "thirds_taken_for_stops",
  /** Takes ISO for light. */
  "iso_adds_light",
  /** Takes the white balance for light. */
  "balance_adds_light",
  /** Takes the grade for light. */
  "grade_adds_light",
  /** Turns a control the wrong way. */
  "exposure_turned_wrong",
  /** Counts the loss on one of the two ways only. */
  "one_way_only",
  /** Counts the depth for light that comes from a lamp. */
  "depth_counted_for_lamps",
  // Balance
  /** Takes a higher colour temperature for a warmer light. */
  "warmer_for_higher_kelvin",
  /** Believes that every light has a colour temperature. */
  "kelvin_always_fits",
  /** Believes that no light under water has a colour temperature. */
  "kelvin_never_fits",
  /** Sets one balance whatever the light does. */
  "one_balance_for_all",
  /** Sets the balance again for a distance that stays the same. */
  "distance_shifts_balance",
  /** Keeps the colour temperature of the surface. */
  "kelvin_of_surface",
  /** Balances again with depth where lamps are the only light. */
  "depth_shifts_lamp_balance",
  /** Balances by the clock, not by the light. */
  "balance_follows_time",
  /** Balances for the subject's colour, not for the light. */
  "balance_follows_subject",
  /** Takes exposure for colour. */
  "balance_follows_exposure",
  /** Subtracts kelvin instead of mired. */
  "kelvin_subtracted",
  /** Turns the sign of a mired shift. */
  "mired_sign_turned",
  // Lamps and daylight
  /** Believes that lamps outshine daylight wherever they are on. */
  "lamps_always_lead",
  /** Believes that lamps never count by day. */
  "daylight_always_leads",
  /** Believes that lamps and daylight always blend. */
  "lights_blend_evenly",
  /** Believes that one white balance can make two lights neutral. */
  "balance_mends_split",
  /** Filters the lamp towards red, which it has too much of. */
  "red_filter_on_lamp",
  /** Lets lamp light fall with distance instead of with its square. */
  "inverse_linear",
  /** Leaves the water out. */
  "water_forgotten",
  /** Leaves the spreading of the beam out. */
  "distance_forgotten",
  // Grading
  /** Believes that grading can restore any colour. */
  "grade_restores_all",
  /** Believes that half of it can always be saved. */
  "half_always_saved",
  /** Believes that red is beyond repair on every dive. */
  "red_lost_at_once",
  // Mounting
  /** Reads a step ring the wrong way round. */
  "ring_turned_about",
  /** Screws two rings on in the wrong order. */
  "ring_order_swapped",
  /** Ignores one of the two threads. */
  "ring_same_size",
  /** Divides the angle by the refractive index, not its sine. */
  "field_divided_by_index",
  /** Believes that a flat port keeps the field of view. */
  "field_kept",
  /** Takes the tangent where Snell's law has the sine. */
  "tangent_taken_for_sine",
  /** Gives the angle to one side only. */
  "half_field_given",
  /** Takes the refractive index of the port's glass. */
  "glass_index_taken",
  /** Divides by the refractive index on either face of the port. */
  "index_counted_twice",
  /** Believes that a flat port widens the field of view. */
  "field_widened",
  /** Counts the whole thickness of a sheet as focus shift. */
  "whole_sheet_counted",
  /** Multiplies by n - 1 where 1 - 1/n belongs. */
  "index_excess_used",
  /** Puts the filter in front of every lens. */
  "filter_goes_in_front",
  /** Believes that a filter inside the housing can be changed at depth. */
  "fixed_filter_changed",
  /** Opens a camera that is sealed. */
  "sealed_camera_opened",
  /** Puts a sheet behind a lens that does not come off. */
  "fixed_lens_opened",
  /** Puts a flat filter before a dome. */
  "filter_before_dome",
  // Safety
  /** Runs a lamp in air. */
  "lamp_tested_in_air",
  /** Points a lamp at eyes. */
  "lamp_pointed_at_eyes",
  /** Takes lamps off the rig because they are not used. */
  "lamp_taken_off",
  /** Opens a housing near water. */
  "housing_opened_wet",
  /** Mixes up what is done dry and what is done at depth. */
  "order_of_dive_mixed",
  // Camera, grade and care
  /** Takes the frame rate for the exposure time. */
  "frame_rate_as_time",
  /** Takes every shutter angle for 180 degrees. */
  "shutter_always_half",
  /** Turns the share of the angle over. */
  "angle_turned_over",
  /** Forgets that the angle changes too. */
  "frame_rate_alone_counts",
  /** Forgets that the frame rate changes too. */
  "angle_alone_counts",
  /** Takes code values for light. */
  "code_is_linear",
  /** Puts every card into the middle. */
  "grey_is_middle",
  /** Halves the code value for a stop. */
  "stop_halves_code",
  /** Forgets that the exposure is lower. */
  "underexposure_ignored",
  /** Spreads a linear recording evenly over its stops. */
  "values_shared_evenly",
  /** Counts stops from the dark end. */
  "stops_counted_from_dark",
  /** Gives the brightest stop all the values. */
  "halving_started_late",
  /** Halves the values from stop to stop where they are even. */
  "values_halved_each_stop",
  /** Shares bits instead of values. */
  "bits_taken_for_values",
  /** Takes a ratio for stops. */
  "ratio_for_stops",
  /** Takes a difference where a ratio counts. */
  "difference_for_ratio",
  /** Multiplies by the stops. */
  "loss_taken_for_factor",
  /** Takes stops for the factor. */
  "stops_taken_for_factor",
  /** Adds two for each stop. */
  "two_for_each_stop_added",
  /** Leaves a part out. */
  "part_left_out",
  /** Multiplies stops. */
  "stops_multiplied",
  /** Counts the largest part alone. */
  "largest_part_alone",
  /** Does not know which automatic does what. */
  "auto_setting_confused",
  /** Does not know what a fault of the mount looks like. */
  "fault_confused",
  /** Expects the largest change of colour deep down. */
  "deep_changes_most",
  /** Takes the longest way for the largest change. */
  "longest_way_changes_most",
  /** Takes a coloured thing for neutral. */
  "colour_taken_for_grey",
  /** Looks at the water alone. */
  "distance_does_not_count",
  /** Believes that distance clears the picture. */
  "farther_is_clearer",
  /** Gives the lights what the water has taken. */
  "filter_colour_of_loss",
  /** Chooses for the first dive. */
  "first_dive_alone",
  /** Adds errors where their mean counts. */
  "errors_added",
  /** Changes the filter between the dives. */
  "best_of_each_dive",
  /** Believes that a grade fills what was clipped. */
  "grade_fills_clipped",
  /** Takes a tint for the red of the subject. */
  "tint_brings_red",
  /** Believes that more bits hold light that never came. */
  "bits_bring_back",
  /** Believes that a grade can make two lights alike. */
  "grade_mends_split",
  /** Believes that a grade undoes motion blur. */
  "grade_sharpens_smear",
  /** Leaves charging batteries alone. */
  "charged_unattended",
  /** Rinses the compartment of a battery. */
  "battery_wetted",
  /** Takes any charger with the right plug. */
  "any_charger_fits",
  /** Heats a battery. */
  "battery_heated",
  /** Charges a battery that was flooded. */
  "flooded_battery_kept",
  /** Carries batteries loose. */
  "contacts_left_bare",
] as const;

export type MisconceptionId = (typeof misconceptions)[number];
