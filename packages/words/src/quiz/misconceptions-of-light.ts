/** Misunderstandings about water, filters and exposure: see `misconceptions`. */
export const misconceptionsOfLight = [
  // Light and water
  /** Takes the loss of brightness for the loss of every colour. */
  "all_colours_fade_alike",
  /** Reads the loss of another colour. */
  "channel_confused",
  /** Subtracts the first metre's percentage once for every metre. */
  "loss_per_metre_subtracted",
  /** Counts the light that is lost where the light that is left counts. */
  "share_lost_counted",
  /** Takes the water for a clearer one. */
  "water_taken_for_clearer",
  /** Takes the water for a more turbid one. */
  "water_taken_for_more_turbid",
  /** Counts one stop too many or too few. */
  "stop_miscounted",
  /** Takes a tenth for each stop. */
  "stops_taken_for_tenths",
  /** Lets light fall in proportion to depth. */
  "share_by_proportion",
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
  /** Forgets that a filter takes some of every colour. */
  "filter_costs_green_alone",
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
  /** Divides the f-number by the filter factor. */
  "f_number_by_factor",
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
  /** Takes a fraction of a stop for a doubling. */
  "step_too_small",
  /** Does not see that two changes cancel each other. */
  "turns_cancel",
  /** Counts the loss on one of the two ways only. */
  "one_way_only",
  /** Counts the depth for light that comes from a lamp. */
  "depth_counted_for_lamps",
] as const;
