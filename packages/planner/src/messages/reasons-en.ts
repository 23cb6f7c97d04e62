/** English texts of reasons, one function a code. Other languages add a catalogue of the same shape. */
import { dialFNumber, settings } from "./dial.js";
import { atDepths, howOften, kelvin, redder, shown } from "./format.js";

export const REASONS_EN = {
  red_goes_first: (p: { red_stops: number; green_stops: number; blue_stops: number; depth_m: number }) =>
    `At ${shown(p.depth_m, 1)} m this water has taken ${shown(p.red_stops, 1)} stops from the red channel, ${shown(p.green_stops, 1)} from green and ${shown(p.blue_stops, 1)} from blue.`,
  cct_without_meaning: (p: { depth_m: number; duv: number }) =>
    `From ${shown(p.depth_m, 1)} m the light lies ${shown(Math.abs(p.duv), 3)} from the Planckian locus: a colour temperature in kelvin has no meaning there (CIE: beyond 0.05), so none is given. Balance on a card.`,
  cct_beyond_locus: (p: { depth_m: number }) =>
    `From ${shown(p.depth_m, 1)} m the light is bluer than any glowing body: it has no colour temperature in kelvin. Balance on a card.`,
  no_daylight_relative: () =>
    "Without daylight the losses are those that an even sky of 5500 K would suffer; no illuminance is given.",
  red_not_only_transmitted: (p: { depth_m: number }) =>
    `Below about ${shown(p.depth_m)} m the last red is made in the water itself, by inelastic scattering and fluorescence, more than it comes down from the surface. This model counts only what comes down, so red figures there are too low and not to be trusted.`,
  sun_stands: (p: { elevation_deg: number; azimuth_deg: number; utc: string }) =>
    `At ${p.utc} the sun stands ${shown(p.elevation_deg)} degrees above the horizon there, at ${shown(p.azimuth_deg)} degrees from north.`,
  clock_shows_twice: (p: { utc: string }) =>
    `The clock shows this local time twice that day; the first is meant, ${p.utc}.`,
  night_there: () =>
    "It is night at that place and time: there is no daylight, and lamps are the only light.",
  sun_path: (p: { mu0: number }) =>
    `The sun's slant lengthens the way through the water: the mean path cosine is ${shown(p.mu0, 2)}, against 0.90 for the tables.`,

  filter_earns: (p: { name: string; min_m: number; max_m: number; with_e: number; without_e: number }) =>
    `${atDepths(p.min_m, p.max_m)} ${p.name} leaves a mean colour error of ${shown(p.with_e, 1)} (CIEDE2000); without a filter ${shown(p.without_e, 1)} is left after balancing and grading.`,
  no_filter_earns: (p: { best_kind: string; best_change: number; worthwhile: number }) =>
    `No filter earns its place: the best of them, ${p.best_kind}, would ${p.best_change < 0 ? "lower" : "raise"} the mean colour error by ${shown(Math.abs(p.best_change), 2)}, and it takes a fall of ${shown(p.worthwhile, 1)} to be worth mounting.`,
  no_filter_owned: () =>
    "The kit holds no filter for the lens, so none is advised. Leave `kit` out to learn which one would serve.",
  change_at_depth: (p: { from_m: number; to_m: number }) =>
    `The filter leaves less error than none from ${shown(p.from_m, 1)} to ${shown(p.to_m, 1)} m: mount it on passing into that part, take it off on leaving it, and balance again each time.`,
  serves_part_of_range: (p: { from_m: number; to_m: number }) =>
    `It serves from ${shown(p.from_m, 1)} to ${shown(p.to_m, 1)} m; outside that it leaves more error than no filter, but it cannot be changed underwater, and over the whole range it still pays.`,
  part_would_gain: (p: { kind: string; from_m: number; to_m: number }) =>
    `Over the whole range no filter pays, but for ${p.from_m === p.to_m ? `${shown(p.from_m, 1)} m` : `${shown(p.from_m, 1)} to ${shown(p.to_m, 1)} m`} alone a ${p.kind} one would: ask for that part if you will film there.`,
  denser_gains_nothing_below: (p: { depth_m: number; density: number }) =>
    `Down to ${shown(p.depth_m, 1)} m the best density rises, to ${shown(p.density, 2)}; below that a weaker filter, or none, is better, since light or red itself runs out.`,
  only_lamps_would_help: (p: { error: number }) =>
    `A colour error of ${shown(p.error, 1)} is left whatever is mounted: light of the missing colours is too weak here. Bring lamps close to the subject, come shallower, or settle for the colours of the water.`,
  filter_brings_balance_into_reach: (p: {
    depth_m: number;
    deepest_m: number;
    residual_stops: number;
    reach_from_m: number;
    reach_to_m: number;
  }) =>
    `Without a filter the camera cannot balance white from ${shown(p.depth_m, 1)} m on (${shown(p.residual_stops, 1)} stops out of reach at ${shown(p.deepest_m, 1)} m). The filter holds back the rest of the light, so that red can be exposed${p.reach_to_m > 0 ? `, and white balanced${p.reach_from_m < p.reach_to_m ? ` from ${shown(p.reach_from_m, 1)} to ${shown(p.reach_to_m, 1)} m` : ` at ${shown(p.reach_to_m, 1)} m`}` : ", and brings the balance nearer"}.`,
  balance_out_of_reach: (p: { depth_m: number; deepest_m: number; residual_stops: number }) =>
    `From ${shown(p.depth_m, 1)} m on the camera cannot balance white (${shown(p.residual_stops, 1)} stops out of reach at ${shown(p.deepest_m, 1)} m); what is left has to be graded afterwards.`,
  balance_in_reach_without: () => "The camera can balance white without a filter.",
  light_to_spare: (p: { depth_m: number; f_number: number; iso: number }) =>
    `There is light to spare: at ${shown(p.depth_m, 1)} m and without a filter a white card fills the scale at ${settings(p)}.`,
  light_is_too_much: (p: {
    depth_m: number;
    excess_stops: number;
    density: number;
    iso: number;
    f_number: number;
  }) =>
    `At ${shown(p.depth_m, 1)} m a white card is ${shown(p.excess_stops, 1)} stops too bright at ${settings(p)}, the least that the camera is allowed, and clips. Allow a smaller aperture, or use neutral density ${shown(p.density, 1)}.`,
  colour_filter_as_neutral: () =>
    "Against clipping a colour filter would do only what a neutral one does, which is no reason to mount it.",

  light_has_run_out: (p: { depth_m: number; iso: number; short_stops: number; f_number: number }) =>
    p.short_stops > 0.05
      ? `Light has run out: at ${shown(p.depth_m, 1)} m a white card stays ${shown(p.short_stops, 1)} stops under full scale at ${settings(p)} even without a filter, and any filter takes more away.`
      : `Light is short: at ${shown(p.depth_m, 1)} m and without a filter a white card fills the scale only at ${settings(p)}, so every stop that a filter takes is paid in noise.`,
  filter_adds_no_red: (p: { depth_m: number; with_share: number; without_share: number }) =>
    `A filter adds no red light. At ${shown(p.depth_m, 1)} m ${shown(p.with_share * 100)} % of the red channel's signal is red light above 600 nm with it, ${shown(p.without_share * 100)} % without, the rest being green and blue that the channel also sees.`,
  lamps_are_the_only_light: (p: { cct_text: string }) =>
    `Lamps are the only light: a filter on the lens would only take from it. Balance to the lamps${p.cct_text}.`,
  near_tie: (p: { probability: number; runner_up: string; loses_by: number; worthwhile: number }) =>
    `This is a near tie: the runner-up, ${p.runner_up}, differs by ${shown(p.loses_by, 2)} in colour error, where a filter has to gain ${shown(p.worthwhile, 1)} to be worth mounting. With what is not known exactly, it is the better choice with a probability of ${shown(p.probability * 100)} %.`,
  filter_shape_assumed: () =>
    "Curves of filters are not standardised: the shapes used here are assumptions, and how much another one of the same name would change is part of the uncertainty.",
  filter_trade_rule_blue: () => "The trade mounts red in blue water from about 3 m down.",
  filter_trade_rule_green: () => "The trade mounts magenta in green water.",

  too_bright: (p: {
    depth_m: number;
    excess_stops: number;
    iso: number;
    f_number: number;
    density: number;
  }) =>
    `At ${shown(p.depth_m, 1)} m there are ${shown(p.excess_stops, 1)} stops too much light at ${settings(p)}, the least that the camera is allowed. Use neutral density ${shown(p.density, 1)}; a higher ISO would make it worse.`,
  aperture_can_close: (p: { f_number: number }) =>
    `Closing the aperture to f/${dialFNumber(p.f_number)} would do instead: the scene fixes it more open than the lens goes.`,
  too_dark: (p: { depth_m: number; shortfall_stops: number; iso: number; f_number: number }) =>
    `At ${shown(p.depth_m, 1)} m ${shown(p.shortfall_stops, 1)} stops are missing even with ${settings(p)}. More light has to come from a higher sun, a shallower depth, a lamp or a longer shutter time.`,
  exposure_fits: (p: { depth_m: number; iso: number; f_number: number; ev: number }) =>
    `At ${shown(p.depth_m, 1)} m the subject asks for EV ${shown(p.ev, 1)} at ISO 100: ${settings(p)}.`,
  filter_makes_it_darker: (p: { stops: number }) =>
    `The filter on the lens takes ${shown(p.stops, 1)} of the missing stops: take it off.`,
  any_filter_would_worsen: () => "A filter on the lens would take more light away and make it worse.",
  port_takes: (p: { stops: number }) =>
    `The port takes ${shown(p.stops, 1)} stops, whatever its shape: light spreads as it leaves the water, and the window reflects a little. A meter in the housing has it in its reading already.`,
  water_takes_most: (p: { depth_m: number; depth_stops: number; total_stops: number }) =>
    `Of the ${shown(p.total_stops, 1)} stops between the surface and the sensor at ${shown(p.depth_m, 1)} m the water above takes ${shown(p.depth_stops, 1)}.`,

  haze_is_the_limit: (p: { distance_m: number; contrast_percent: number }) =>
    `Over ${shown(p.distance_m, 1)} m of this water ${shown(p.contrast_percent)} % of the contrast is left: haze, not colour, is the limit. Come closer before anything else.`,

  red_record: (p: { depth_m: number; share: number; quality: string; snr: number }) =>
    `At ${shown(p.depth_m, 1)} m without a filter ${shown(p.share * 100)} % of the red channel's signal is red light above 600 nm; on an 18 % grey that light is ${shown(p.snr, 1)} times the noise: ${p.quality} (for red 21 is excellent, 5.3 acceptable, after ISO 12232).`,
  filter_helps_red: (p: { depth_m: number; without_snr: number; with_snr: number }) =>
    `At ${shown(p.depth_m, 1)} m the filter adds no red light, but lets red be exposed higher before blue and green clip: red light is ${shown(p.with_snr, 1)} times the noise instead of ${shown(p.without_snr, 1)}.`,
  filter_does_not_help_red: (p: { depth_m: number; without_snr: number; with_snr: number }) =>
    `At ${shown(p.depth_m, 1)} m the filter gains red next to nothing: it cannot be exposed higher, and with it red light is ${shown(p.with_snr, 1)} times the noise, without it ${shown(p.without_snr, 1)}. A filter helps red only where there is light to spare.`,
  same_settings_no_gain: (p: { with_snr: number; without_snr: number }) =>
    `At the same ISO, aperture and shutter a filter never makes red cleaner by more than the green and blue it keeps out of the red channel: ${shown(p.with_snr, 1)} against ${shown(p.without_snr, 1)}.`,
  red_is_gone: (p: { acceptable_m: number; gone_m: number; filter: string }) =>
    `${p.filter} red light is recorded acceptably down to about ${shown(p.acceptable_m)} m and is lost in the noise from about ${shown(p.gone_m)} m: what was not recorded cannot be brought back afterwards.`,
  red_codes: (p: { depth_m: number; codes_8: number; codes_10: number }) =>
    `At ${shown(p.depth_m, 1)} m a stop of red around middle grey has ${shown(p.codes_8)} code values in 8 bits and ${shown(p.codes_10)} in 10: fewer than about 20 show as bands when they are stretched.`,
  kelvin_leaves_the_water: (p: { cct_K: number; left: number; path_m: number }) =>
    `Set to the lamps' own ${kelvin(p.cct_K)} K, the camera would leave a cast of ${shown(p.left, 1)} (CIEDE2000) from ${shown(p.path_m, 1)} m of water between lamp, subject and camera: a card at working distance takes it out.`,
  balance_again: (p: { times: number; first_m: number; tolerance: number }) =>
    `Light changes with depth: going down, the cast since the last balance reaches ${shown(p.tolerance, 1)} (CIEDE2000) ${howOften(p.times)}, first at ${shown(p.first_m, 1)} m.`,
  one_balance_serves: (p: { tolerance: number }) =>
    `One balance serves the whole range: a new one would nowhere take out a cast of more than ${shown(p.tolerance, 1)} (CIEDE2000).`,
  balance_in_reach: () => "The camera's white balance reaches a neutral card over the whole range.",
  balance_falls_short: (p: { depth_m: number; short_stops: number; cast: number }) =>
    `At ${shown(p.depth_m, 1)} m the camera's balance falls short by ${shown(p.short_stops, 2)} stops between channels, which leaves a cast of ${shown(p.cast, 1)} (CIEDE2000) on grey.`,
  lamps_only: (p: { red: number; green: number; blue: number }) =>
    `Lamps are the only light: balance to them. The water between lamp, subject and camera still takes ${shown(p.red, 2)} stops of red, ${shown(p.green, 2)} of green and ${shown(p.blue, 2)} of blue, so a card at working distance is better than a kelvin setting.`,
  daylight_only: () => "No lamp is on: there is nothing to mix.",
  lights_fight: (p: { depth_m: number; split: number; red_excess: number }) =>
    `At ${shown(p.depth_m, 1)} m, balanced to daylight, what the lamps light differs from what daylight lights by ${shown(p.split, 1)} (CIEDE2000), ${redder(p.red_excess)}: a visible split that one balance cannot mend.`,
  lamps_lead: (p: { depth_m: number; green: number }) =>
    `At ${shown(p.depth_m, 1)} m the lamps outshine daylight by ${shown(p.green, 1)} stops in green: balance to the lamps, and daylight hardly tints the subject.`,
  daylight_leads: (p: { depth_m: number; green: number }) =>
    `At ${shown(p.depth_m, 1)} m daylight outshines the lamps by ${shown(-p.green, 1)} stops in green: balance to daylight; the lamps hardly show.`,
  mixing_zone: (p: { from_m: number; to_m: number }) =>
    `Lamps and daylight mix visibly from ${shown(p.from_m, 1)} to ${shown(p.to_m, 1)} m.`,
  lit_haze: (p: { percent: number; low: number; high: number }) =>
    `Haze that the lamps light between camera and subject is about ${shown(p.percent)} % as bright as a grey subject (${shown(p.low)} to ${shown(p.high)} %): hold the lamps far from the lens and pointing past the subject, and come closer.`,
  upright_subject: () =>
    "Lamp and daylight are compared on an upright subject, which receives only a part of the light that comes from above.",
} as const;
