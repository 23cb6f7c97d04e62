/** Misunderstandings about white balance, video lights, grading, mounting, care and the camera: see `misconceptions`. */
export const misconceptionsOfWork = [
  // Balance
  /** Takes a higher colour temperature for a warmer light. */
  "warmer_for_higher_kelvin",
  /** Takes a preset for the colour that it gives. */
  "preset_taken_for_light",
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
  /** Balances again at every few metres, however deep. */
  "every_metre_balanced",
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
  /** Puts a blue filter on lamps in every water. */
  "blue_filter_everywhere",
  /** Puts a green filter on lamps in every water. */
  "green_filter_everywhere",
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
  /** Counts both dives alike, however long each is. */
  "minutes_ignored",
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
  /** Turns the direction of a change about. */
  "shift_turned_about",
  /** Takes what a new balance does for what the old one leaves. */
  "new_balance_alone",
  /** Puts the light where it lights the water before the lens. */
  "lamp_beside_lens",
  /** Crosses the beams in front of the lens. */
  "beams_crossed",
  /** Believes that more light outshines backscatter. */
  "haze_outshone",
  /** Believes that ISO makes a difference to backscatter. */
  "iso_beats_haze",
  /** Believes that a filter holds backscatter back. */
  "filter_beats_haze",
  /** Takes what is screwed onto the lens for something outside the housing. */
  "screwed_filter_outside",
  /** Follows the light from the sensor outwards. */
  "light_goes_outwards",
  /** Looks at the distance alone. */
  "water_does_not_count",
  /** Looks at the depth alone. */
  "depth_alone_counts",
  /** Looks at the sun's side alone. */
  "side_alone_counts",
  /** Believes that a low sun lights the water better. */
  "low_sun_reaches_in",
  /** Looks at the clouds alone. */
  "sky_alone_counts",
  /** Looks at the sun's height alone. */
  "sun_height_alone_counts",
  /** Believes that dark floors light more. */
  "dark_floor_lights_up",
  /** Looks at the kind of floor alone. */
  "floor_alone_counts",
  /** Looks at the distance to the floor alone. */
  "height_alone_counts",
  /** Believes that more bits mean less noise. */
  "bits_take_noise",
  /** Believes that raw files hold what overflowed. */
  "sensor_full_comes_back",
  /** Takes channels that lie over each other for a colour cast. */
  "channels_always_apart",
  /** Wants a histogram farther to the right. */
  "histogram_belongs_right",
  /** Wants a histogram farther to the left. */
  "histogram_belongs_left",
  /** Does not see what a histogram shows. */
  "any_histogram_will_do",
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
