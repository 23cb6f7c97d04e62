// Generated from openapi/openapi.json by packages/sdk/scripts/generate.mjs. Do not edit.

/**
 * Angle, as percentiles of what it may be.
 */
export type AngleEstimate = {
    /**
     * 10th percentile. 0 to 180 deg.
     */
    low: number;
    /**
     * 50th percentile. 0 to 180 deg.
     */
    likely: number;
    /**
     * 90th percentile. 0 to 180 deg.
     */
    high: number;
};

/**
 * What the water leaves of the light, by depth.
 */
export type AttenuationAnswer = {
    /**
     * The scene that was answered.
     */
    scene: ResolvedScene;
    /**
     * Wavelengths of every `spectrum_left` in this answer.
     */
    wavelengths_nm: Array<number>;
    /**
     * The light at depths from shallow to deep.
     */
    depths: Array<DepthLight>;
    /**
     * How well a water fits `card_samples`; present where they describe the water.
     */
    card_fit?: CardFit | undefined;
    /**
     * Depth at which light above 600 nm is down to a tenth of what it is just below the surface.
     */
    red_to_tenth_depth_m: DepthEstimate;
    /**
     * Depth at which light above 600 nm is down to a hundredth of what it is just below the surface.
     */
    red_to_hundredth_depth_m: DepthEstimate;
    /**
     * Why the answer is what it is, most important first.
     */
    reasons: Array<Reason>;
    /**
     * Cautions to heed before acting on it.
     */
    cautions: Array<Caution>;
    /**
     * What makes the answer uncertain, largest share first.
     */
    uncertainty: Array<UncertaintyCause>;
    /**
     * The model that answered.
     */
    model: ModelVersion;
    /**
     * Pictures of this answer, and files made of it; empty where there are none. Addresses are relative, the same online and offline: offline they lead to any service.
     */
    links: Array<Link>;
};

/**
 * The white balance at one depth.
 */
export type BalanceAtDepth = {
    /**
     * Depth that this part of the answer is for. 0.1 to 100 m.
     */
    depth_m: number;
    /**
     * Gain of the red channel that makes a card neutral, the smallest gain being 1.
     */
    red_gain: GainEstimate;
    /**
     * The same of the green channel.
     */
    green_gain: GainEstimate;
    /**
     * The same of the blue channel.
     */
    blue_gain: GainEstimate;
    /**
     * Whether the camera's balance reaches these gains.
     */
    in_reach: boolean;
    /**
     * How far it falls short between channels; zero where it reaches them. 0 to 10000 stop.
     */
    short_of_reach_stops: number;
    /**
     * Colour cast that the white balance leaves on a grey card (CIEDE2000). 0 to 1000.
     */
    cast_left_delta_e00: number;
    /**
     * The same for a white balance on a card; present with another `white_balance_mode`. 0 to 1000.
     */
    card_cast_left_delta_e00?: number | undefined;
    /**
     * Correlated colour temperature of the light on the card; absent where it has no meaning. 0 to 1000000 K.
     */
    cct_K?: number | undefined;
    /**
     * Distance of the light on the card from the Planckian locus in CIE 1960 uv, positive above it. -1 to 1.
     */
    duv: number;
};

/**
 * How to set the white balance: on a card in daylight, or on one at the working distance of the video lights; or as `white_balance_mode` says, in kelvin or by the camera.
 */
export type BalanceMethod = 'card' | 'card_at_lamp_distance' | 'kelvin' | 'auto';

/**
 * A white balance on something other than a card.
 */
export type BalanceOnStandIn = {
    /**
     * What to set it on.
     */
    stand_in: StandIn;
    /**
     * Colour cast that it leaves on a grey card where you set the first white balance (CIEDE2000). 0 to 1000.
     */
    cast_left_delta_e00: number;
    /**
     * `hand`: the least of people around the 10th, 50th and 90th percentile of brightness. 0 to 1000.
     */
    least_cast_delta_e00?: number | undefined;
    /**
     * `hand`: the most of them. 0 to 1000.
     */
    most_cast_delta_e00?: number | undefined;
};

/**
 * The light to set the white balance to; both where a plan leaves the video lights on among daylight.
 */
export type BalanceTo = 'daylight' | 'lamps' | 'daylight_and_lamps';

/**
 * Why a batch ended before all was answered.
 */
export type BatchEnd = 'time' | 'stopping';

/**
 * One scene, and what to calculate of it.
 */
export type BatchItem = {
    /**
     * Your name for this item, which its line carries. No two items have the same.
     */
    id: string;
    /**
     * What to calculate.
     */
    operation: BatchOperation;
    /**
     * The scene, as the operation takes it alone. The item's line says what is wrong with it.
     */
    scene: {
        [key: string]: unknown;
    };
};

/**
 * A line of the stream: one JSON object. Answers come as they are ready, in any order.
 */
export type BatchLine = {
    /**
     * `answer` or `problem` for a scene; `pause` where none is ready yet, to keep the connection open; `summary` for the last line, without which the stream was cut.
     */
    kind: BatchLineKind;
    /**
     * Of an answer or a problem: the item's `id`; of a scene that `vary` made, its places in `vary`, such as `1-0`.
     */
    id?: string | undefined;
    /**
     * Of a scene that `vary` made: for each entry of `vary`, the place of its value, from 0.
     */
    at?: Array<number> | undefined;
    /**
     * The answer, the same as that of the operation alone, to the byte: whole, or the `fields` asked for.
     */
    answer?: {
        [key: string]: unknown;
    };
    /**
     * Why there is no answer (RFC 9457), the same as that of the operation alone.
     */
    problem?: {
        [key: string]: unknown;
    };
    /**
     * How a batch ended.
     */
    summary?: BatchSummary | undefined;
};

/**
 * What a line of a batch is.
 */
export type BatchLineKind = 'answer' | 'problem' | 'pause' | 'summary';

/**
 * The name of a calculation.
 */
export type BatchOperation = 'attenuation' | 'filter-choice' | 'exposure-loss' | 'mixed-light' | 'white-balance' | 'colour-recovery' | 'dive-advice' | 'filter-mounting';

/**
 * Many scenes: `items` one by one, or one `scene` with what differs in `vary`. `language` and `units` hold for every scene that does not say its own.
 */
export type BatchRequest = {
    /**
     * Scenes one by one, up to 1000. Either these, or `operation`, `scene` and `vary`.
     */
    items?: Array<BatchItem> | undefined;
    /**
     * What to calculate of every scene that `vary` makes.
     */
    operation?: BatchOperation | undefined;
    /**
     * What all scenes that `vary` makes have in common. Empty where they have nothing.
     */
    scene?: {
        [key: string]: unknown;
    };
    /**
     * What differs. Each entry names one field with its values, or several that go together, value by value; the entries are multiplied, the last one running fastest, and give up to 5000 scenes. A field that the scene has already is replaced.
     */
    vary?: Array<{
        [key: string]: unknown;
    }>;
    /**
     * Language of the texts, in the answer and in problems. Left out, it is the one that `Accept-Language` likes best, and English where it likes none.
     */
    language?: Language | undefined;
    /**
     * Units of depths, distances and visibility in the texts of answers and pictures. Fields keep the units in their names, and so does a problem, which is about fields; threads, rings and sheets are in mm always. Default `metric`.
     */
    units?: TextUnits | undefined;
    /**
     * Answer only if the model has this version (as `model.version` of an earlier answer says); otherwise a 409 problem.
     */
    expect_model_version?: string | undefined;
};

/**
 * How a batch ended.
 */
export type BatchSummary = {
    /**
     * Scenes that the batch has. Whole number, 0 to 5000.
     */
    items: number;
    /**
     * Of them, those that were answered. Whole number, 0 to 5000.
     */
    answers: number;
    /**
     * Of them, those that have a problem. Whole number, 0 to 5000.
     */
    problems: number;
    /**
     * Of them, those that the batch did not come to: 0 unless `ended_by` says why. Whole number, 0 to 5000.
     */
    left: number;
    /**
     * What they cost, in the units of `RateLimit`. 0 to 1000000000.
     */
    cost: number;
    /**
     * Why some are left: ten minutes were over (`time`), or the service is stopping. Ask for these again.
     */
    ended_by?: BatchEnd | undefined;
};

/**
 * Where a beam angle was measured.
 */
export type BeamMedium = 'air' | 'water';

/**
 * The best window of all days.
 */
export type BestWindow = {
    /**
     * Its day.
     */
    date: string;
    /**
     * When it begins, by the clocks of the site.
     */
    from_local_time: string;
};

/**
 * The body is too large. A body can have up to 256 kB, a batch up to 4 MB and each of its scenes up to 256 kB. A scene needs a few kilobytes. Lists and objects can stand up to 64 deep in each other: no scene needs ten.
 */
export type BodyTooLargeProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/body-too-large';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 413;
    /**
     * The kind of problem, for programs.
     */
    code: 'body_too_large';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
};

/**
 * What the sea floor below is: `none` where it is too deep to affect the light.
 */
export type Bottom = 'none' | 'sand' | 'coral' | 'crustose_coralline_algae' | 'macroalgae' | 'seagrass';

/**
 * An answer in less than 700 bytes, for a label or a list, whatever the scene and the language. What is cut for that is the headline, and then the answer; never a caution.
 */
export type Brief = {
    /**
     * The answer in a sentence or a few: of a plan its `summary` without the `close_calls`, which stand in the whole answer. Where the brief answer would be too long, its last sentences, in the end its last words, are left out, and it ends in an ellipsis (…).
     */
    headline: string;
    /**
     * The main fields of the whole answer, in the same form; of the depths, the shallowest and the deepest. Which fields depends on the calculation; more may come. Where the brief answer is too long with the shortest headline, its longest fields are left out, the longest first.
     */
    answer: {
        [key: string]: unknown;
    };
    /**
     * The first of the answer's cautions. Show it wherever you show the answer.
     */
    caution: string;
    /**
     * Codes of all of its cautions, that one first.
     */
    caution_codes: Array<string>;
    /**
     * The model that answered.
     */
    model_version: string;
};

/**
 * Cameras by their size: `phone`, `phone_merged` (a still that a phone merges from several frames), `action`, `compact`, `interchangeable` (lenses), `cinema`.
 */
export type CameraClass = 'phone' | 'phone_merged' | 'action' | 'compact' | 'interchangeable' | 'cinema';

/**
 * How well a water fits the card samples.
 */
export type CardFit = {
    /**
     * Attenuation of the red channel's light between the shallowest and the deepest card; absent where exposures are unknown, as are green and blue. -100 to 100 1/m.
     */
    red_kd_per_m?: number | undefined;
    /**
     * Its standard error. -100 to 100 1/m.
     */
    red_kd_standard_error_per_m?: number | undefined;
    /**
     * The same of green. -100 to 100 1/m.
     */
    green_kd_per_m?: number | undefined;
    /**
     * Its standard error. -100 to 100 1/m.
     */
    green_kd_standard_error_per_m?: number | undefined;
    /**
     * The same of blue. -100 to 100 1/m.
     */
    blue_kd_per_m?: number | undefined;
    /**
     * Its standard error. -100 to 100 1/m.
     */
    blue_kd_standard_error_per_m?: number | undefined;
    /**
     * Red's attenuation less green's, which needs no exposures. -100 to 100 1/m.
     */
    red_minus_green_kd_per_m: number;
    /**
     * Its standard error. -100 to 100 1/m.
     */
    red_minus_green_kd_standard_error_per_m: number;
    /**
     * Blue's attenuation less green's. -100 to 100 1/m.
     */
    blue_minus_green_kd_per_m: number;
    /**
     * Its standard error. -100 to 100 1/m.
     */
    blue_minus_green_kd_standard_error_per_m: number;
    /**
     * Root mean square of measured over fitted light. -100 to 100 stop.
     */
    rms_residual_stops: number;
    /**
     * Each card, in the order given.
     */
    residuals: Array<CardResidual>;
};

/**
 * An 18 % grey card filmed on the dive in daylight alone, across the line of sight.
 */
export type CardFrame = {
    /**
     * Time since the dive began; or `depth_m`. 0 to 43200 s.
     */
    time_s?: number | undefined;
    /**
     * Depth of the card; or `time_s`. 0.1 to 60 m.
     */
    depth_m?: number | undefined;
    /**
     * Mean of the card in the red channel, linear, after the white balance; 1 for the brightest possible. 0.0001 to 0.99.
     */
    red: number;
    /**
     * Mean of the card in the green channel, linear, after the white balance; 1 for the brightest possible. 0.0001 to 0.99.
     */
    green: number;
    /**
     * Mean of the card in the blue channel, linear, after the white balance; 1 for the brightest possible. 0.0001 to 0.99.
     */
    blue: number;
    /**
     * ISO speed. 25 to 409600.
     */
    iso: number;
    /**
     * Exposure time. 0.00001 to 60 s.
     */
    shutter_s: number;
    /**
     * Aperture. 0.7 to 64.
     */
    f_number: number;
    /**
     * What the white balance multiplied the red channel by. 0.01 to 100.
     */
    red_gain: number;
    /**
     * What the white balance multiplied the green channel by. 0.01 to 100.
     */
    green_gain: number;
    /**
     * What the white balance multiplied the blue channel by. 0.01 to 100.
     */
    blue_gain: number;
    /**
     * Filmed through the filter of the site. Default `false`.
     */
    through_filter?: boolean | undefined;
    /**
     * The white balance had just been set on this card: the colour cast on it is what the camera cannot reach. Default `false`.
     */
    balanced?: boolean | undefined;
};

/**
 * A note on the card for the white balance.
 */
export type CardNote = {
    /**
     * Stable code, for programs and translations. The examples are all the codes of today, and more may come.
     */
    code: string;
    /**
     * The note in a sentence or two.
     */
    text: string;
    /**
     * All that the text is made of, so that you can put it in other words or in another language: numbers to six decimals, and names. Which ones depends on the code; empty where there are none. More codes and parameters may come.
     */
    parameters: {
        [key: string]: unknown;
    };
};

/**
 * How far one card lies from the fitted water.
 */
export type CardResidual = {
    /**
     * Depth of the card. 0.1 to 100 m.
     */
    depth_m: number;
    /**
     * Measured over fitted light of the red channel. -100 to 100 stop.
     */
    red_stops: number;
    /**
     * The same of green. -100 to 100 stop.
     */
    green_stops: number;
    /**
     * The same of blue. -100 to 100 stop.
     */
    blue_stops: number;
};

/**
 * A grey card photographed at one depth, in daylight alone.
 */
export type CardSampleFields = {
    /**
     * Depth of the card. 0 to 60 m.
     */
    depth_m: number;
    /**
     * Mean of the card in the red channel as stored, 1 for the brightest possible. 0 to 1.
     */
    red: number;
    /**
     * Mean of the card in the green channel as stored, 1 for the brightest possible. 0 to 1.
     */
    green: number;
    /**
     * Mean of the card in the blue channel as stored, 1 for the brightest possible. 0 to 1.
     */
    blue: number;
    /**
     * ISO speed of this picture. With `shutter_s` and `f_number`, or none of the three. 25 to 409600.
     */
    iso?: number | undefined;
    /**
     * Exposure time of this picture. 0.00001 to 60 s.
     */
    shutter_s?: number | undefined;
    /**
     * Aperture of this picture. 0.7 to 64.
     */
    f_number?: number | undefined;
    /**
     * What the white balance multiplied the red channel by. All three gains or none. 0.01 to 100.
     */
    red_gain?: number | undefined;
    /**
     * What the white balance multiplied the green channel by. All three gains or none. 0.01 to 100.
     */
    green_gain?: number | undefined;
    /**
     * What the white balance multiplied the blue channel by. All three gains or none. 0.01 to 100.
     */
    blue_gain?: number | undefined;
};

/**
 * Cautions to heed before acting on the answer.
 */
export type Caution = {
    /**
     * Stable code, for programs and translations. The examples are all the codes of today, and more may come.
     */
    code: string;
    /**
     * What to take care of.
     */
    text: string;
};

/**
 * A ring of the chain.
 */
export type ChainRing = {
    /**
     * The `id` of the ring in the scene's `rings`.
     */
    id: string;
    /**
     * Thread that screws into what comes before. 20 to 150 mm.
     */
    from_mm: number;
    /**
     * Thread that it offers. 20 to 150 mm.
     */
    to_mm: number;
    /**
     * By how much it moves forward what is screwed into it. 0 to 50 mm.
     */
    thickness_mm: number;
};

/**
 * `clear`, or `near_tie` where what was not chosen could as well be the better one.
 */
export type Clarity = 'clear' | 'near_tie';

/**
 * Gap, negative where two things would overlap, as percentiles of what it may be.
 */
export type ClearanceEstimate = {
    /**
     * 10th percentile. -10000 to 500 mm.
     */
    low: number;
    /**
     * 50th percentile. -10000 to 500 mm.
     */
    likely: number;
    /**
     * 90th percentile. -10000 to 500 mm.
     */
    high: number;
};

/**
 * Whether the last white balance still holds over a clip: `held` or `lost` with nine chances in ten or more, `close` where it may be either, `not_set` where none was made before it.
 */
export type ClipBalance = 'held' | 'close' | 'lost' | 'not_set';

/**
 * Another plan that is nearly as good, with the probability that it is the better one.
 */
export type CloseCall = {
    /**
     * Stable code, for programs and translations. The examples are all the codes of today, and more may come.
     */
    code: string;
    /**
     * What the other plan is.
     */
    text: string;
    /**
     * All that the text is made of, so that you can put it in other words or in another language: numbers to six decimals, and names. Which ones depends on the code; empty where there are none. More codes and parameters may come.
     */
    parameters: {
        [key: string]: unknown;
    };
};

/**
 * Where the cloud of a window comes from: your forecast for its hours (`hour`) or its `day`; or the sky is `assumed_clear`, for some of it at least.
 */
export type CloudBasis = 'hour' | 'day' | 'assumed_clear';

/**
 * Cloud that is forecast for a day, or for one hour of it.
 */
export type CloudForecast = {
    /**
     * Day by the clocks of the site.
     */
    date: string;
    /**
     * Hour that begins then, by the clocks of the site. Left out, the entry is for the whole day. Whole number, 0 to 23.
     */
    hour?: number | undefined;
    /**
     * Eighths of the sky covered by cloud. Whole number, 0 to 8 okta.
     */
    cloud_oktas: number;
};

/**
 * Difference between two colour differences (CIEDE2000), negative where the first is the smaller one, as percentiles of what it may be.
 */
export type ColourErrorDifferenceEstimate = {
    /**
     * 10th percentile. -1000 to 1000.
     */
    low: number;
    /**
     * 50th percentile. -1000 to 1000.
     */
    likely: number;
    /**
     * 90th percentile. -1000 to 1000.
     */
    high: number;
};

/**
 * Colour difference (CIEDE2000), as percentiles of what it may be.
 */
export type ColourErrorEstimate = {
    /**
     * 10th percentile. 0 to 1000.
     */
    low: number;
    /**
     * 50th percentile. 0 to 1000.
     */
    likely: number;
    /**
     * 90th percentile. 0 to 1000.
     */
    high: number;
};

/**
 * What grading can still bring back of the colour.
 */
export type ColourRecoveryAnswer = {
    /**
     * The scene that was answered.
     */
    scene: ResolvedScene;
    /**
     * What grading has to work with at depths from shallow to deep.
     */
    depths: Array<RecoveryAtDepth>;
    /**
     * Depth down to which red light above 600 nm is recorded acceptably without a filter; absent without daylight.
     */
    red_acceptable_to_without_filter_depth_m?: DepthEstimate | undefined;
    /**
     * Depth from which it is gone without a filter; absent without daylight.
     */
    red_gone_from_without_filter_depth_m?: DepthEstimate | undefined;
    /**
     * Depth down to which it is recorded acceptably with the scene's filter; absent without one.
     */
    red_acceptable_to_with_filter_depth_m?: DepthEstimate | undefined;
    /**
     * Depth from which it is gone with the scene's filter; absent without one.
     */
    red_gone_from_with_filter_depth_m?: DepthEstimate | undefined;
    /**
     * Depth below which red that the water itself makes outweighs red from the surface at 650 nm; absent without daylight. 0 to 1000 m.
     */
    red_trusted_to_depth_m?: number | undefined;
    /**
     * Why the answer is what it is, most important first.
     */
    reasons: Array<Reason>;
    /**
     * Cautions to heed before acting on it.
     */
    cautions: Array<Caution>;
    /**
     * What makes the answer uncertain, largest share first.
     */
    uncertainty: Array<UncertaintyCause>;
    /**
     * The model that answered.
     */
    model: ModelVersion;
    /**
     * Pictures of this answer, and files made of it; empty where there are none. Addresses are relative, the same online and offline: offline they lead to any service.
     */
    links: Array<Link>;
};

/**
 * Along which edge of the opening the electrical contacts lie, as you look at the lens from behind.
 */
export type ContactEdge = 'bottom' | 'top' | 'left' | 'right' | 'none';

/**
 * A filter of a crate.
 */
export type CratePiece = {
    /**
     * The filter, by its `id`.
     */
    piece_id: string;
    /**
     * Whose it is.
     */
    from: PieceFrom;
    /**
     * Its kind.
     */
    filter_kind: FilterVerdict;
    /**
     * Its density; absent for a measured filter. 0 to 3.
     */
    filter_density?: number | undefined;
    /**
     * What holds it; absent where the camera says nothing of port and lens.
     */
    holder?: FilterHolder | undefined;
    /**
     * Whether that asks for care.
     */
    verdict?: FittingVerdict | undefined;
    /**
     * Step rings from lens or port to it, in the order in which they are screwed on.
     */
    rings: Array<RingInUse>;
    /**
     * Dives on which it is used.
     */
    dive_ids: Array<string>;
};

/**
 * What a template comes in, at full size.
 */
export type CuttingTemplateFormat = 'pdf' | 'svg';

/**
 * What a template comes in.
 */
export type CuttingTemplateLook = {
    /**
     * A PDF to print, or vectors. Default `pdf`.
     */
    format?: CuttingTemplateFormat | undefined;
};

/**
 * A sheet that is taped over the opening behind a lens.
 */
export type CuttingTemplateRequest = {
    /**
     * Width of the opening behind the lens, measured on yours. 5 to 120 mm.
     */
    opening_width_mm: number;
    /**
     * Its height. 5 to 120 mm.
     */
    opening_height_mm: number;
    /**
     * Width of the sheet to cut, at least 2 mm more than the opening's: `cut_width_mm` of a filter mounting with `rear_fixing` `tape` is a good one. 7 to 120 mm.
     */
    sheet_width_mm: number;
    /**
     * Its height, at least 2 mm more than the opening's. 7 to 120 mm.
     */
    sheet_height_mm: number;
    /**
     * The edge that sheet and tape keep off, for the contacts. Along the lower one by default, where most mounts have them (from memory): look at yours. Default `bottom`.
     */
    contacts_edge?: ContactEdge | undefined;
    /**
     * Language of the texts, in the answer and in problems. Left out, it is the one that `Accept-Language` likes best, and English where it likes none.
     */
    language?: Language | undefined;
};

/**
 * Where daylight comes from: `none` (night, cave, inside of a wreck), `sun` (you give its height) or `place_time` (its height follows from place and time).
 */
export type DaylightBasis = 'none' | 'sun' | 'place_time';

/**
 * Depth, as percentiles of what it may be.
 */
export type DepthEstimate = {
    /**
     * 10th percentile. 0 to 1000 m.
     */
    low: number;
    /**
     * 50th percentile. 0 to 1000 m.
     */
    likely: number;
    /**
     * 90th percentile. 0 to 1000 m.
     */
    high: number;
};

/**
 * The light that falls on a horizontal surface at one depth.
 */
export type DepthLight = {
    /**
     * Depth that this part of the answer is for. 0.1 to 100 m.
     */
    depth_m: number;
    /**
     * Light in the red channel of a typical sensor lost between just below the surface and this depth, in stops.
     */
    red_loss_stops: LossEstimate;
    /**
     * Light in the green channel of a typical sensor lost between just below the surface and this depth, in stops.
     */
    green_loss_stops: LossEstimate;
    /**
     * Light in the blue channel of a typical sensor lost between just below the surface and this depth, in stops.
     */
    blue_loss_stops: LossEstimate;
    /**
     * Light as the eye weighs it lost between just below the surface and this depth, in stops.
     */
    photopic_loss_stops: LossEstimate;
    /**
     * Photosynthetically active radiation (400 to 700 nm, photons) lost between just below the surface and this depth, in stops.
     */
    par_loss_stops: LossEstimate;
    /**
     * Light in the red channel of a typical sensor left at this depth, in percent of what there is just below the surface.
     */
    red_left_percent: PercentEstimate;
    /**
     * Light in the green channel of a typical sensor left at this depth, in percent of what there is just below the surface.
     */
    green_left_percent: PercentEstimate;
    /**
     * Light in the blue channel of a typical sensor left at this depth, in percent of what there is just below the surface.
     */
    blue_left_percent: PercentEstimate;
    /**
     * Light as the eye weighs it left at this depth, in percent of what there is just below the surface.
     */
    photopic_left_percent: PercentEstimate;
    /**
     * Photosynthetically active radiation (400 to 700 nm, photons) left at this depth, in percent of what there is just below the surface.
     */
    par_left_percent: PercentEstimate;
    /**
     * Share of the light just below the surface that is left, one for each of `wavelengths_nm`.
     */
    spectrum_left: Array<number>;
    /**
     * CIE 1931 chromaticity x of the light at this depth. 0 to 1.
     */
    x: number;
    /**
     * CIE 1931 chromaticity y of the light at this depth. 0 to 1.
     */
    y: number;
    /**
     * Distance of the light from the Planckian locus in CIE 1960 uv, positive above it. -1 to 1.
     */
    duv: number;
    /**
     * Correlated colour temperature; absent where |duv| is above 0.05 and it has no meaning. 0 to 1000000 K.
     */
    cct_K?: number | undefined;
    /**
     * Illuminance on a horizontal surface at this depth; absent without daylight.
     */
    illuminance_lx?: IlluminanceEstimate | undefined;
};

/**
 * The whole job for one dive on one page, on light and colour only. It does not plan the dive.
 */
export type DiveAdviceAnswer = {
    /**
     * The scene that was answered.
     */
    scene: ResolvedScene;
    /**
     * The whole advice in a few sentences.
     */
    summary: string;
    /**
     * The same, each sentence as its code and what its text is made of.
     */
    summary_parts: Array<Statement>;
    /**
     * What to mount on the lens.
     */
    filter_kind: FilterVerdict;
    /**
     * Its density; absent for `none` and for a measured filter. 0 to 3.
     */
    filter_density?: number | undefined;
    /**
     * Your id of the filter, where it comes from `kit`.
     */
    filter_id?: string | undefined;
    /**
     * How clear that choice is.
     */
    filter_verdict: Clarity;
    /**
     * What to do with the video lights.
     */
    lamp_plan: LampPlan;
    /**
     * Which light leads in the middle of the range.
     */
    mixed_light_verdict: MixedLightVerdict;
    /**
     * What to set the white balance to.
     */
    balance_to: BalanceTo;
    /**
     * Depths at which to set a white balance on the way down; the first is where to start.
     */
    balance_depths_descending_m: Array<number>;
    /**
     * Depths at which to set a white balance on the way up.
     */
    balance_depths_ascending_m: Array<number>;
    /**
     * The numbers to remember first.
     */
    remember: Remember;
    /**
     * Plans that are nearly as good: a small change of the scene may make one of them the answer. Usually empty.
     */
    close_calls: Array<CloseCall>;
    /**
     * The plan, in the order in which you do things.
     */
    steps: Array<DiveStep>;
    /**
     * What holds what the plan puts on the lens; present where the scene says what a filter is mounted on, and one is called for.
     */
    mounting?: MountInPlan | undefined;
    /**
     * What to take: all that the plan uses, with your ids where `kit` has it.
     */
    take: Array<TakeItem>;
    /**
     * Why the answer is what it is, most important first.
     */
    reasons: Array<Reason>;
    /**
     * Cautions to heed before acting on it.
     */
    cautions: Array<Caution>;
    /**
     * What makes the answer uncertain, largest share first.
     */
    uncertainty: Array<UncertaintyCause>;
    /**
     * The model that answered.
     */
    model: ModelVersion;
    /**
     * Pictures of this answer, and files made of it; empty where there are none. Addresses are relative, the same online and offline: offline they lead to any service.
     */
    links: Array<Link>;
};

/**
 * What was filmed in one go.
 */
export type DiveClip = {
    /**
     * Your own name for it; answers use it.
     */
    id?: string | undefined;
    /**
     * When it begins, by the camera's clock, as hh:mm:ss, to the millisecond if you like.
     */
    from_clock: string;
    /**
     * How long it runs. It lies within the dive, and no two clips overlap. 0.1 to 43200 s.
     */
    length_s: number;
};

/**
 * Something that was done on the dive.
 */
export type DiveEvent = {
    /**
     * Time since the dive began. 0 to 43200 s.
     */
    time_s: number;
    /**
     * What was done.
     */
    event: LensEvent;
};

/**
 * When to do a step of the plan.
 */
export type DivePhase = 'before_dive' | 'at_start' | 'going_down' | 'lamps' | 'coming_up' | 'after_dive';

/**
 * A depth of the dive at its time.
 */
export type DiveSample = {
    /**
     * Time since the dive began, later than that of the sample before. 0 to 43200 s.
     */
    time_s: number;
    /**
     * Depth then. 0 to 100 m.
     */
    depth_m: number;
};

/**
 * One line of the plan.
 */
export type DiveStep = {
    /**
     * When to do it.
     */
    phase: DivePhase;
    /**
     * Where to do it; absent where it belongs to no single depth. 0.1 to 100 m.
     */
    depth_m?: number | undefined;
    /**
     * Stable code, for programs and translations. The examples are all the codes of today, and more may come.
     */
    code: string;
    /**
     * What to do, ready to read out.
     */
    text: string;
    /**
     * Why, in a sentence.
     */
    why: string;
    /**
     * Where the step comes from.
     */
    basis: ReasonBasis;
    /**
     * The figures in it: the numbers among its parameters.
     */
    figures: Array<Figure>;
    /**
     * All that the text is made of, so that you can put it in other words or in another language: numbers to six decimals, and names. Which ones depends on the code; empty where there are none. More codes and parameters may come.
     */
    parameters: {
        [key: string]: unknown;
    };
};

/**
 * A dive as it was dived: where to have set the camera, and how each clip stands.
 */
export type DiveTimelinesAnswer = {
    /**
     * The site that was answered, with the filmed depths and every default filled in.
     */
    site: {
        [key: string]: unknown;
    };
    /**
     * From the first sample to the last. 0 to 43200 s.
     */
    length_s: number;
    /**
     * Where it is known what was done.
     */
    done_by: TimelineBasis;
    /**
     * The filter that the plan for this dive mounts.
     */
    filter_kind: FilterVerdict;
    /**
     * Its density; absent for `none` and for a measured filter. 0 to 3.
     */
    filter_density?: number | undefined;
    /**
     * Its `id`, where it comes from the site's `kit`.
     */
    filter_id?: string | undefined;
    /**
     * Depths at which to set a white balance on the way down; the first is where to start.
     */
    balance_depths_descending_m: Array<number>;
    /**
     * Depths at which to set a white balance on the way up.
     */
    balance_depths_ascending_m: Array<number>;
    /**
     * Shift of grey since the last balance that is let pass. 0 to 1000.
     */
    balance_tolerance_delta_e00: number;
    /**
     * What was to be done, or what was done where `events` said it, in order, with new exposures where what is metered has moved by a stop.
     */
    moments: Array<TimelineMoment>;
    /**
     * Your clips, in the order in which they were filmed.
     */
    clips: Array<TimelineClip>;
    /**
     * The plan marked against the dive; present where there are `card_frames`.
     */
    marks?: Array<TimelineMark> | undefined;
    /**
     * Why the answer is what it is, most important first.
     */
    reasons: Array<Reason>;
    /**
     * Cautions to heed before acting on it.
     */
    cautions: Array<Caution>;
    /**
     * What makes the answer uncertain, largest share first.
     */
    uncertainty: Array<UncertaintyCause>;
    /**
     * The model that answered.
     */
    model: ModelVersion;
};

/**
 * A dive as it was dived, and what was filmed on it.
 */
export type DiveTimelinesRequest = {
    /**
     * The site, its light and the camera: a scene as `dive-advice` takes it, without depths, which are those of the dive. Its time, where it has one, is when the dive began: the sun moves on from there. A filter in it is the one that was on the lens.
     */
    site: {
        [key: string]: unknown;
    };
    /**
     * The dive as its depth over time, in order, 2 to 20000 samples. Between them the depth is drawn straight. Above 0.1 m the light is that of 0.1 m.
     */
    samples?: Array<DiveSample> | undefined;
    /**
     * The dive as a file in UDDF 3.2, the open exchange format of dive logs, in place of `samples`: its text, up to 1000000 characters and 20000 waypoints. Of it the waypoints (`divetime`, `depth`) and the `datetime` of the dive are read, and nothing else. A document type declaration is refused.
     */
    uddf?: string | undefined;
    /**
     * `id` of the dive in the file, where it has more than one.
     */
    uddf_dive?: string | undefined;
    /**
     * Time of day at which the dive began (`time_s` 0), by the dive's clock: that of your dive computer. Left out, it is that of the file's `datetime`, and without one clocks count from the start of the dive.
     */
    start_clock?: string | undefined;
    /**
     * How far the camera's clock is ahead of the dive's; below 0 where it is behind. -86400 to 86400 s. Default 0 s.
     */
    clock_offset_s?: number | undefined;
    /**
     * What was filmed, up to 200 clips. The advice is for their depths. Without clips it is for all of the dive from 2 m down.
     */
    clips?: Array<DiveClip> | undefined;
    /**
     * Balances and changes of filter as they were made, up to 200. Left out, nothing is known of them, and the answer tells where they should have been. Changes of filter need a filter in the site.
     */
    events?: Array<DiveEvent> | undefined;
    /**
     * Grey cards from the dive, 2 to 32, all at one distance and all with daylight alone: the plan is marked by them. Two at least without the filter, and 2 m apart in depth, so that the water can be fitted.
     */
    card_frames?: Array<CardFrame> | undefined;
    /**
     * Language of the texts, in the answer and in problems. Left out, it is the one that `Accept-Language` likes best, and English where it likes none.
     */
    language?: Language | undefined;
    /**
     * Units of depths, distances and visibility in the texts of answers and pictures. Fields keep the units in their names, and so does a problem, which is about fields; threads, rings and sheets are in mm always. Default `metric`.
     */
    units?: TextUnits | undefined;
    /**
     * Answer only if the model has this version (as `model.version` of an earlier answer says); otherwise a 409 problem.
     */
    expect_model_version?: string | undefined;
};

/**
 * What the code of an error means.
 */
export type ErrorMeaning = {
    /**
     * Code of an error.
     */
    code: string;
    /**
     * What it means.
     */
    meaning: string;
};

/**
 * The budget of light from the surface to the sensor at one depth, and the settings that make up for it.
 */
export type ExposureAtDepth = {
    /**
     * Depth that this part of the answer is for. 0.1 to 100 m.
     */
    depth_m: number;
    /**
     * Daylight lost at the surface; absent without daylight.
     */
    surface_loss_stops?: LossEstimate | undefined;
    /**
     * Daylight lost on the way down; absent without daylight.
     */
    depth_loss_stops?: LossEstimate | undefined;
    /**
     * How much less light a solid subject receives than a level surface, as a dome receptor meters it; negative where it receives more, facing a low sun or over a pale floor. Absent without daylight.
     */
    upright_loss_stops?: LossOrGainEstimate | undefined;
    /**
     * Light lost between subject and camera.
     */
    distance_loss_stops: LossEstimate;
    /**
     * Light lost at the port, flat or dome: it spreads as it leaves the water, and two surfaces reflect.
     */
    port_loss_stops: LossEstimate;
    /**
     * Light lost in the filter on the lens; zero without one.
     */
    lens_filter_loss_stops: LossEstimate;
    /**
     * Light lost in the filters on the video lights; absent without video lights.
     */
    lamp_filter_loss_stops?: LossEstimate | undefined;
    /**
     * All losses of daylight together; absent without daylight.
     */
    total_loss_stops?: LossEstimate | undefined;
    /**
     * Illuminance on the subject, daylight and video lights together, as a dome receptor in its place that faces the camera meters it.
     */
    subject_illuminance_lx: IlluminanceEstimate;
    /**
     * Subject level: exposure value at ISO 100 that a dome receptor meters on a solid subject (ISO 2720, C = 340), distance, port and filter included. Settings and verdict go by this plus `haze_gain_stops`.
     */
    exposure_value_ev100: ExposureValueEstimate;
    /**
     * The same for a flat card square to the camera, which tilts with it, as a flat receptor of ISO 2720 (C = 250) in its place meters it. Upright under a high sun it gets less light than a dome, which also sees what comes from above.
     */
    card_exposure_value_ev100: ExposureValueEstimate;
    /**
     * How much brighter haze makes the subject, as the camera meters it: daylight that the water in front of it scatters into the lens. It costs contrast. Absent without daylight.
     */
    haze_gain_stops?: LossEstimate | undefined;
    /**
     * Scene level: exposure value at ISO 100 that a meter in the housing reads, averaged over the picture: a third subject, a third sea floor where there is one, and the rest open water (shares are a judgement). Absent without daylight.
     */
    scene_exposure_value_ev100?: ExposureValueEstimate | undefined;
    /**
     * Whether the exposure fits the camera.
     */
    verdict: ExposureVerdict;
    /**
     * ISO speed to set; the nearest that the camera has when the exposure does not fit. 1 to 1000000000000.
     */
    iso: number;
    /**
     * Aperture to set; the nearest that the lens has when the exposure does not fit. 0 to 1000000.
     */
    f_number: number;
    /**
     * Exposure time of a frame. 0 to 60 s.
     */
    shutter_s: number;
    /**
     * Light missing at the most sensitive settings; present when `too_dark`.
     */
    shortfall_stops?: LossEstimate | undefined;
    /**
     * Light in excess at the least sensitive settings; present when `too_bright`.
     */
    excess_stops?: LossEstimate | undefined;
    /**
     * Density of the ND filter that cuts the excess; present when `too_bright`. 0 to 100.
     */
    neutral_density_needed?: number | undefined;
    /**
     * Aperture that cuts the excess; present when `too_bright`. 0.7 to 1000000.
     */
    f_number_needed?: number | undefined;
    /**
     * Contrast against open water that is left at the camera; haze takes the rest.
     */
    contrast_left_percent: PercentEstimate;
    /**
     * What makes up for the loss, or cuts the excess; those that are enough on their own first.
     */
    ways_to_pay: Array<WayToPay>;
};

/**
 * Where light is lost between surface and sensor, and what makes up for it.
 */
export type ExposureLossAnswer = {
    /**
     * The scene that was answered.
     */
    scene: ResolvedScene;
    /**
     * Losses and settings at depths from shallow to deep.
     */
    depths: Array<ExposureAtDepth>;
    /**
     * Why the answer is what it is, most important first.
     */
    reasons: Array<Reason>;
    /**
     * Cautions to heed before acting on it.
     */
    cautions: Array<Caution>;
    /**
     * What makes the answer uncertain, largest share first.
     */
    uncertainty: Array<UncertaintyCause>;
    /**
     * The model that answered.
     */
    model: ModelVersion;
    /**
     * Pictures of this answer, and files made of it; empty where there are none. Addresses are relative, the same online and offline: offline they lead to any service.
     */
    links: Array<Link>;
};

/**
 * How the camera is exposed: `manual` (for the subject) or `auto` (for the mean of the picture, open water and all).
 */
export type ExposureMode = 'manual' | 'auto';

/**
 * Exposure value at ISO 100, as percentiles of what it may be.
 */
export type ExposureValueEstimate = {
    /**
     * 10th percentile. -10000 to 40 EV.
     */
    low: number;
    /**
     * 50th percentile. -10000 to 40 EV.
     */
    likely: number;
    /**
     * 90th percentile. -10000 to 40 EV.
     */
    high: number;
};

/**
 * Whether the camera can expose this light within its limits.
 */
export type ExposureVerdict = 'fits' | 'too_dark' | 'too_bright';

/**
 * What is wrong with one field.
 */
export type FieldError = {
    /**
     * JSON pointer (RFC 6901) to the fault; empty for the body as a whole. For a query string, `/` and the name.
     */
    pointer: string;
    /**
     * Stable code, for programs and translations. The examples are all the codes of today, and more may come; the page behind `type` says what each means.
     */
    code: string;
    /**
     * What is wrong.
     */
    message: string;
    /**
     * What is allowed there.
     */
    allowed: string;
    /**
     * The nearest right name, if one is near.
     */
    did_you_mean?: string | undefined;
    /**
     * The numbers and names that go with the code. Which ones depends on the code.
     */
    parameters?: {
        [key: string]: unknown;
    };
};

/**
 * A figure that a reason rests on.
 */
export type Figure = {
    /**
     * What the figure is, with its unit at the end where it has one.
     */
    name: string;
    /**
     * Its value. -1000000000000 to 1000000000000.
     */
    value: number;
};

/**
 * What a filter does at one depth.
 */
export type FilterAtDepth = {
    /**
     * Depth that this part of the answer is for. 0.1 to 100 m.
     */
    depth_m: number;
    /**
     * The best choice at this depth alone.
     */
    best_filter_kind: FilterVerdict;
    /**
     * Its density; absent for `none` and for a measured filter. 0 to 3.
     */
    best_filter_density?: number | undefined;
    /**
     * Colour error with it (CIEDE2000, mean of a 24-patch chart). 0 to 1000.
     */
    best_colour_error_delta_e00: number;
    /**
     * Colour error with the advised choice. 0 to 1000.
     */
    advised_colour_error_delta_e00: number;
    /**
     * Colour error without a filter. 0 to 1000.
     */
    without_colour_error_delta_e00: number;
    /**
     * With the advised choice: share of the red channel's signal that comes from light above 600 nm. 0 to 1.
     */
    advised_red_signal_above_600_nm_share: number;
    /**
     * The same without a filter. 0 to 1.
     */
    without_red_signal_above_600_nm_share: number;
    /**
     * Whether the camera can set a white balance here with the advised choice.
     */
    advised_balance_in_reach: boolean;
    /**
     * Whether the camera can set a white balance here without a filter.
     */
    without_balance_in_reach: boolean;
};

/**
 * Whether the lens filter can be changed under water: `none`, `flip` (a flip mount) or `clip_on`.
 */
export type FilterChange = 'none' | 'flip' | 'clip_on';

/**
 * Which filter to mount on the lens, how dense, and how sure that is.
 */
export type FilterChoiceAnswer = {
    /**
     * The scene that was answered.
     */
    scene: ResolvedScene;
    /**
     * What to mount on the lens for the whole range.
     */
    filter_kind: FilterVerdict;
    /**
     * Its peak optical density; absent for `none` and for a measured filter. 0 to 3.
     */
    filter_density?: number | undefined;
    /**
     * Lowest density of that kind whose colours are hardly off the best (within 0.5 CIEDE2000, half of what a filter must gain, or 0.1 for `matched`; judgements). It is the one advised, since it costs the least light. Absent for `none` and for filters of a `kit`. 0 to 3.
     */
    as_good_from_density?: number | undefined;
    /**
     * Highest of these densities. 0 to 3.
     */
    as_good_to_density?: number | undefined;
    /**
     * The `id` of the filter, where it comes from the scene's `kit`.
     */
    filter_id?: string | undefined;
    /**
     * Density of an ND filter to mount with it, so that the shallow end is exposed right: a grey card, with `finish` `matched` a white card that just does not clip; absent where the camera's limits are enough. `exposure-loss`, by ISO 2720, holds back about half a stop more than a white card needs. 0 to 100.
     */
    neutral_density?: number | undefined;
    /**
     * The finish that every colour error here is judged after.
     */
    finish: Finish;
    /**
     * Whether another finish would change the choice. Nominal figures.
     */
    other_finishes: Array<OtherFinish>;
    /**
     * Everything to choose from, `none` included, the advised choice first and then by colour error, with what a filter must gain to be worth mounting; absent without a `kit`. Of the advised choice and the runner-up the error is worked out at all depths, of the others its spread at both ends of the range and in the middle.
     */
    ranking?: Array<RankedFilter> | undefined;
    /**
     * How clear the choice is.
     */
    verdict: Clarity;
    /**
     * Mean colour error of a 24-patch chart over the range with the advised choice (CIEDE2000).
     */
    colour_error_delta_e00: ColourErrorEstimate;
    /**
     * The same without a filter.
     */
    colour_error_without_delta_e00: ColourErrorEstimate;
    /**
     * The second best choice, and by how much it loses.
     */
    runner_up: RunnerUp;
    /**
     * What the advised filter costs in exposure; zero when the advice is `none`.
     */
    filter_loss_stops: LossEstimate;
    /**
     * Shallow end of the part of the range in which the advised filter does better than none (or, for `none`, no worse than any filter); absent if nowhere. 0.1 to 100 m.
     */
    serves_min_depth_m?: number | undefined;
    /**
     * Deep end of that part; absent if nowhere. 0.1 to 100 m.
     */
    serves_max_depth_m?: number | undefined;
    /**
     * Depths at which to mount it, or take it off, where `filter_change_underwater` allows it; absent otherwise.
     */
    change_depths_m?: Array<number> | undefined;
    /**
     * What a filter does at depths from shallow to deep.
     */
    depths: Array<FilterAtDepth>;
    /**
     * Why the answer is what it is, most important first.
     */
    reasons: Array<Reason>;
    /**
     * Cautions to heed before acting on it.
     */
    cautions: Array<Caution>;
    /**
     * What makes the answer uncertain, largest share first.
     */
    uncertainty: Array<UncertaintyCause>;
    /**
     * The model that answered.
     */
    model: ModelVersion;
    /**
     * Pictures of this answer, and files made of it; empty where there are none. Addresses are relative, the same online and offline: offline they lead to any service.
     */
    links: Array<Link>;
};

/**
 * The filter that pictures of a grey card were found to show.
 */
export type FilterFit = {
    /**
     * `id` in the kit; absent for the filter on the lens.
     */
    id?: string | undefined;
    /**
     * The kind that loses what the card lost.
     */
    filter_kind: FilterKind;
    /**
     * Its density. 0 to 3.
     */
    filter_density: number;
    /**
     * Standard error of the density. Above the density itself the pictures tell no filter of a kind. 0 to 1000.
     */
    density_standard_error: number;
    /**
     * Root mean square over the channels of what is left between card and filter. Above 0.15 no kind is quite like it: give `filter_transmittance`. 0 to 30 stop.
     */
    residual_stops: number;
    /**
     * Curve of that kind and density, every 20 nm.
     */
    filter_transmittance: Array<TransmittanceSample>;
    /**
     * Other filters that were sampled: whether a cut sheet and a glass filter match, and within what.
     */
    matches: Array<FilterMatch>;
};

/**
 * How a filter is held: by the thread of the lens (`screw_on_lens`) or of the port (`screw_on_port`), by a hinge on the port (`flip`), by a clip (`clip_on`), as a sheet behind the lens (`rear_sheet`), or in a frame over an action camera's window (`action_camera`).
 */
export type FilterHolder = 'screw_on_lens' | 'screw_on_port' | 'flip' | 'clip_on' | 'rear_sheet' | 'action_camera';

/**
 * Kind of a filter, by the light that it lets through: `red`, `magenta`, `blue` and `green` (for video lights) or `neutral` (all alike).
 */
export type FilterKind = 'red' | 'magenta' | 'blue' | 'green' | 'neutral';

/**
 * A kind of filter.
 */
export type FilterKindInfo = {
    /**
     * Name of the kind.
     */
    filter_kind: FilterKind;
    /**
     * The kind in words.
     */
    description: string;
    /**
     * Where it goes.
     */
    use: FilterUse;
    /**
     * Density of the glass outside the band that it absorbs. 0 to 3.
     */
    base_density: number;
    /**
     * Transmittance that remains inside the band however dense the filter. 0 to 1.
     */
    leakage: number;
    /**
     * Whether the shape is an assumption, as no standard publishes one.
     */
    shape_assumed: boolean;
    /**
     * Wavelengths of the curve, rising.
     */
    wavelengths_nm: Array<number>;
    /**
     * Density per unit of nominal density, one for each of `wavelengths_nm`.
     */
    density_shape: Array<number>;
};

/**
 * The kinds of filter that a scene can name.
 */
export type FilterKindsAnswer = {
    /**
     * The kinds of filter.
     */
    filter_kinds: Array<FilterKindInfo>;
    /**
     * Version of the model: year, month and count. It changes when figures of answers do, not with their wording; you can compare two answers of the same version.
     */
    model_version: string;
};

/**
 * How far one filter is from another, by what the cards lost.
 */
export type FilterMatch = {
    /**
     * `id` of the other filter.
     */
    id: string;
    /**
     * By how much the two differ in the channel in which they differ most. Below a third of a stop one can stand in for the other without a change of settings. 0 to 30 stop.
     */
    differ_stops: number;
};

/**
 * Where the filter goes on this lens and port, and what that does to corners and focus.
 */
export type FilterMountingAnswer = {
    /**
     * The scene that was answered.
     */
    scene: ResolvedMountingScene;
    /**
     * The advised holder: the one that you asked for, unless it does not fit.
     */
    holder: FilterHolder;
    /**
     * Where it puts the filter.
     */
    place: MountPlace;
    /**
     * Whether it fits; `does_not_fit` only where no holder does, and then the reasons say what to change.
     */
    verdict: MountVerdict;
    /**
     * Whether, and how, it lets the filter be changed under water.
     */
    filter_change_underwater: FilterChange;
    /**
     * Every holder, best first.
     */
    options: Array<MountOption>;
    /**
     * What the port makes of the lens's picture.
     */
    port: PortFigures;
    /**
     * Rings from the thread of lens or port to that of the filter; present where the filter screws into a thread.
     */
    ring_chain?: RingChain | undefined;
    /**
     * What filter and rings cost the corners; present for a filter in front of the lens whose clear diameter is known.
     */
    vignetting?: Vignetting | undefined;
    /**
     * Clear diameter, where the filter sits, that takes nothing from the corners; present for a filter in front of the lens.
     */
    clear_diameter_needed_mm?: LengthEstimate | undefined;
    /**
     * Gap between the rim of filter or ring and the dome, with the entrance pupil in its centre; negative where they would overlap. Present on a lens behind a dome of known radius.
     */
    dome_clearance_mm?: ClearanceEstimate | undefined;
    /**
     * Room left between the rim of filter or ring and the port, with the zoom at its longest; negative where they would touch. Present on a lens with `lens_port_gap_mm`. -10000 to 300 mm.
     */
    port_clearance_mm?: number | undefined;
    /**
     * What the filter weighs in sea water, with an aluminium rim and without rings or holder; present for a filter in front of the lens whose size is known.
     */
    filter_weight_in_water_g?: WeightEstimate | undefined;
    /**
     * The sheet behind the lens; present where the filter goes there.
     */
    rear_sheet?: RearSheet | undefined;
    /**
     * What to do, in order. Common practice.
     */
    procedure: Array<string>;
    /**
     * The same, each step as its code and what its text is made of.
     */
    procedure_steps: Array<Statement>;
    /**
     * Why the answer is what it is, most important first.
     */
    reasons: Array<Reason>;
    /**
     * Cautions to heed before acting on it.
     */
    cautions: Array<Caution>;
    /**
     * What makes the answer uncertain, largest share first.
     */
    uncertainty: Array<UncertaintyCause>;
    /**
     * The model that answered.
     */
    model: ModelVersion;
    /**
     * Pictures of this answer, and files made of it; empty where there are none. Addresses are relative, the same online and offline: offline they lead to any service.
     */
    links: Array<Link>;
};

/**
 * A grey card in daylight, above water, photographed without and with a filter at the same exposure and white balance.
 */
export type FilterSample = {
    /**
     * Mean of the card in the red channel without the filter, linear (raw), 1 for the brightest possible. 0.0001 to 1.
     */
    red_without: number;
    /**
     * Mean of the card in the green channel without the filter, linear (raw), 1 for the brightest possible. 0.0001 to 1.
     */
    green_without: number;
    /**
     * Mean of the card in the blue channel without the filter, linear (raw), 1 for the brightest possible. 0.0001 to 1.
     */
    blue_without: number;
    /**
     * Mean of the card in the red channel with the filter, linear (raw), 1 for the brightest possible. 0.0001 to 1.
     */
    red_with: number;
    /**
     * Mean of the card in the green channel with the filter, linear (raw), 1 for the brightest possible. 0.0001 to 1.
     */
    green_with: number;
    /**
     * Mean of the card in the blue channel with the filter, linear (raw), 1 for the brightest possible. 0.0001 to 1.
     */
    blue_with: number;
};

/**
 * Where a filter goes.
 */
export type FilterUse = 'lens' | 'lamp' | 'lens_or_lamp';

/**
 * A filter to mount, by its kind, or `none`.
 */
export type FilterVerdict = 'none' | 'red' | 'magenta' | 'blue' | 'green' | 'neutral';

/**
 * What happens to a picture before anyone looks at it: `in_camera` (nothing), `basic_edit` (balance, exposure, black level, saturation), `matched` (a grade fitted to a colour chart that you filmed).
 */
export type Finish = 'in_camera' | 'basic_edit' | 'matched';

/**
 * How a piece goes on a camera, as `filter-mounting` judges it.
 */
export type FittingVerdict = 'fits' | 'fits_with_care';

/**
 * Gain of a channel, as percentiles of what it may be.
 */
export type GainEstimate = {
    /**
     * 10th percentile. 0 to 1000000000000.
     */
    low: number;
    /**
     * 50th percentile. 0 to 1000000000000.
     */
    likely: number;
    /**
     * 90th percentile. 0 to 1000000000000.
     */
    high: number;
};

/**
 * What a further filter would do on a dive.
 */
export type GainOnDive = {
    /**
     * Your name for the dive.
     */
    id: string;
    /**
     * Colour error that the filter would take away there. 0 to 1000.
     */
    gains_delta_e00: number;
};

/**
 * What a grade comes in: the Common LUT Format, or a color decision list.
 */
export type GradeFormat = 'clf' | 'cdl';

/**
 * What a grade comes in.
 */
export type GradeLook = {
    /**
     * The Common LUT Format (`clf`), from code values to code values, or an ASC CDL (`cdl`) for linear light, which holds no matrix: not with `finish` `matched`. Default `clf`.
     */
    format?: GradeFormat | undefined;
};

/**
 * What goes into a guest's crate.
 */
export type GuestCrate = {
    /**
     * The guest.
     */
    guest_id: string;
    /**
     * Language of the guest's texts.
     */
    language: Language;
    /**
     * Fields of the camera that a default filled in.
     */
    camera_assumed: Array<string>;
    /**
     * Filters, each with its dives. Empty where none is used.
     */
    pieces: Array<CratePiece>;
    /**
     * The label of the crate, in the guest's language.
     */
    text: string;
};

/**
 * What a guest mounts and sets on a dive.
 */
export type GuestPlan = {
    /**
     * The guest.
     */
    guest_id: string;
    /**
     * The filter on the lens; absent where it stays bare.
     */
    piece?: PieceInUse | undefined;
    /**
     * Colour error that is left (CIEDE2000), as the mean over both ends and the middle of the depths. Its spread is that of the guest who is worst off on any dive, carried over. Absent without daylight.
     */
    colour_error_delta_e00?: ColourErrorEstimate | undefined;
    /**
     * What the filter takes off it; 0 without one. 0 to 1000.
     */
    gains_delta_e00?: number | undefined;
    /**
     * How the camera is set at both ends of the depths. Empty without daylight.
     */
    settings: Array<TripSetting>;
    /**
     * The plan in a few sentences, in the guest's language.
     */
    text: string;
};

/**
 * The headers are too large. The request line and all headers together can have up to 16 kB.
 */
export type HeadersTooLargeProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/headers-too-large';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 431;
    /**
     * The kind of problem, for programs.
     */
    code: 'headers_too_large';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
};

/**
 * The state of the service.
 */
export type Health = {
    /**
     * `live`: the process runs. `ready`: it answers requests.
     */
    status: 'live' | 'ready';
    /**
     * A hash of the code and texts behind the answers: two services with the same hash give the same bytes. Unlike the version of the model, it changes with every wording.
     */
    build: string;
};

/**
 * Illuminance, as percentiles of what it may be.
 */
export type IlluminanceEstimate = {
    /**
     * 10th percentile. 0 to 100000000000000 lx.
     */
    low: number;
    /**
     * 50th percentile. 0 to 100000000000000 lx.
     */
    likely: number;
    /**
     * 90th percentile. 0 to 100000000000000 lx.
     */
    high: number;
};

/**
 * The service failed. Your request is fine. `request_id` finds the failure in the log of the service.
 */
export type InternalErrorProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/internal-error';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 500;
    /**
     * The kind of problem, for programs.
     */
    code: 'internal_error';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
};

/**
 * The query string is not valid. This method at this path takes no query parameters: `errors` names those that were sent.
 */
export type InvalidQueryProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/invalid-query';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 400;
    /**
     * The kind of problem, for programs.
     */
    code: 'invalid_query';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
    /**
     * Everything that is wrong, up to 50 errors; `detail` says if there are more.
     */
    errors: Array<FieldError>;
};

/**
 * The request is not valid. `errors` names every field that is wrong, what is allowed there and, for a misspelt name, the nearest right one.
 */
export type InvalidRequestProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/invalid-request';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 400;
    /**
     * The kind of problem, for programs.
     */
    code: 'invalid_request';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
    /**
     * Everything that is wrong, up to 50 errors; `detail` says if there are more.
     */
    errors: Array<FieldError>;
};

/**
 * The scene is not valid. `errors` names every field that is wrong, what is allowed there and, for a misspelt name, the nearest right one.
 */
export type InvalidSceneProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/invalid-scene';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 400;
    /**
     * The kind of problem, for programs.
     */
    code: 'invalid_scene';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
    /**
     * Everything that is wrong, up to 50 errors; `detail` says if there are more.
     */
    errors: Array<FieldError>;
};

/**
 * Attenuation measured at one wavelength.
 */
export type KdSample = {
    /**
     * Wavelength of the light, in air. 380 to 780 nm.
     */
    wavelength_nm: number;
    /**
     * Diffuse attenuation of downwelling light at that wavelength. 0.005 to 20 1/m.
     */
    kd_per_m: number;
};

/**
 * This service gives no packages with keys. This service has no instructor's key. Ask for a package without keys, or have `INSTRUCTOR_KEY` set.
 */
export type KeysNotOfferedProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/keys-not-offered';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 403;
    /**
     * The kind of problem, for programs.
     */
    code: 'keys_not_offered';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
};

/**
 * The smallest set of pieces that serves all dives, what each piece buys, and what one more would.
 */
export type KitAdviceAnswer = {
    /**
     * The set: the pieces to take, in the order of their ids. Empty where none is needed.
     */
    take: Array<string>;
    /**
     * How it was found.
     */
    method: KitMethod;
    /**
     * What a dive may lose against all pieces: less than this. 0 to 1000.
     */
    regret_limit_delta_e00: number;
    /**
     * What the set loses on all dives together. 0 to 12000.
     */
    total_regret_delta_e00: number;
    /**
     * Each dive, in the order of their ids.
     */
    dives: Array<KitOnDive>;
    /**
     * Each piece, in the order of their ids.
     */
    pieces: Array<KitPieceAdvice>;
    /**
     * What one more filter would help most; absent where none gains as much as the limit on any dive.
     */
    one_more?: OneMoreFilter | undefined;
    /**
     * Why the answer is what it is, most important first.
     */
    reasons: Array<Reason>;
    /**
     * Cautions to heed before acting on it.
     */
    cautions: Array<Caution>;
    /**
     * What makes the answer uncertain, largest share first.
     */
    uncertainty: Array<UncertaintyCause>;
    /**
     * The model that answered.
     */
    model: ModelVersion;
};

/**
 * Dives, what they have in common, and the pieces to choose a kit from.
 */
export type KitAdviceRequest = {
    /**
     * What all dives have in common, if anything: fields of a scene.
     */
    scene?: {
        [key: string]: unknown;
    };
    /**
     * The dives, up to 12, in any order.
     */
    dives: Array<KitDive>;
    /**
     * What there is to choose from, up to 24 pieces, in any order. Lights are used one piece at a time, and up to 3 rings are screwed into each other.
     */
    pieces: Array<KitPiece>;
    /**
     * How much more colour error (CIEDE2000) than with all pieces a dive may have: less than this. By default about what is just seen, a judgement. 0.05 to 20. Default 1.
     */
    regret_limit_delta_e00?: number | undefined;
    /**
     * Language of the texts, in the answer and in problems. Left out, it is the one that `Accept-Language` likes best, and English where it likes none.
     */
    language?: Language | undefined;
    /**
     * Units of depths, distances and visibility in the texts of answers and pictures. Fields keep the units in their names, and so does a problem, which is about fields; threads, rings and sheets are in mm always. Default `metric`.
     */
    units?: TextUnits | undefined;
    /**
     * Answer only if the model has this version (as `model.version` of an earlier answer says); otherwise a 409 problem.
     */
    expect_model_version?: string | undefined;
};

/**
 * A dive that the kit is to serve.
 */
export type KitDive = {
    /**
     * Your own name for the dive; the answer uses it. No two have the same.
     */
    id: string;
    /**
     * The dive: a scene as `dive-advice` takes it, without filters, lights and rings, which are pieces. What it says stands before what `scene` says beside the dives.
     */
    scene: {
        [key: string]: unknown;
    };
};

/**
 * An item that you own.
 */
export type KitItemFields = {
    /**
     * Your own name for it; answers use it.
     */
    id: string;
    /**
     * What it is.
     */
    item: KitItemName;
    /**
     * Kind of a filter. With `filter_density` or `filter_stops`.
     */
    filter_kind?: FilterKind | undefined;
    /**
     * Peak optical density of a filter, above that of its clear glass, in the band that its kind absorbs. With `filter_kind`. 0.05 to 3.
     */
    filter_density?: number | undefined;
    /**
     * Measured curve of a filter, in place of kind and density: 2 to 401 samples, wavelengths rising. Answers call it by the kind whose curve is most like it.
     */
    filter_transmittance?: Array<TransmittanceSample> | undefined;
    /**
     * Strength of a filter in stops, in the band that its kind absorbs, in place of `filter_density`: a stop is a density of 0.3. With `filter_kind`. 0.17 to 9.9.
     */
    filter_stops?: number | undefined;
    /**
     * A filter, by a grey card photographed with and without it, in place of kind, density and curve: 1 to 16 pairs of pictures. Resolved to the kind and density that lose the same; `filter_fits` of the scene says how well.
     */
    filter_samples?: Array<FilterSample> | undefined;
};

/**
 * What an item of the kit is.
 */
export type KitItemName = 'lens_filter' | 'lamp_filter' | 'lamp';

/**
 * How the set was found: `exact`, no smaller one serves every dive, or `greedy`, piece by piece, where none of up to 4 pieces does; a smaller one may then be there.
 */
export type KitMethod = 'exact' | 'greedy';

/**
 * A dive as it is filmed with the set.
 */
export type KitOnDive = {
    /**
     * Your name for the dive.
     */
    id: string;
    /**
     * The dive that was answered, with every default filled in.
     */
    scene: {
        [key: string]: unknown;
    };
    /**
     * The filter on the lens; absent for none.
     */
    filter_id?: string | undefined;
    /**
     * The video light; absent for none.
     */
    light_id?: string | undefined;
    /**
     * The filter on the video light; absent for none.
     */
    lamp_filter_id?: string | undefined;
    /**
     * Rings and holder from the set that hold the filter.
     */
    held_by: Array<string>;
    /**
     * How the filter is held, where the dive says what it is mounted on.
     */
    holder?: FilterHolder | undefined;
    /**
     * Whether that fits, or with care; `filter-mounting` says why.
     */
    mount_verdict?: MountVerdict | undefined;
    /**
     * Whether the filter can be changed under water.
     */
    change_at_depth: boolean;
    /**
     * What the video light does.
     */
    light_use: LightUse;
    /**
     * Colour error with the set (CIEDE2000), as `filter-choice` judges it for the finish, as the mean over the filmed depths. Where no light leads, that of the whole picture.
     */
    colour_error_delta_e00: ColourErrorEstimate;
    /**
     * The same with none of the pieces; absent where there is then no light to film by. 0 to 1000.
     */
    colour_error_without_delta_e00?: number | undefined;
    /**
     * The same with whichever of all pieces is best. 0 to 1000.
     */
    colour_error_whole_kit_delta_e00: number;
    /**
     * What the set loses on this dive against all pieces, as colour error.
     */
    regret_delta_e00: ColourErrorEstimate;
    /**
     * Light that the filter on the lens takes. 0 to 10000 stop.
     */
    filter_loss_stops: number;
    /**
     * How likely it is that the dive loses as much as the limit. 0 to 1.
     */
    probability_over_limit: number;
    /**
     * A near tie where that is 0.25 or more.
     */
    verdict: KitVerdict;
};

/**
 * A filter, as `kit` in a scene takes it, and by its own thread and size, if it has one; a video light; a ring; or a holder. Which fields go with it follows from `item`.
 */
export type KitPiece = {
    /**
     * Your own name for the piece; the answer uses it. No two have the same.
     */
    id: string;
    /**
     * What it is.
     */
    item: PieceItem;
    /**
     * Kind of a filter. With `filter_density` or `filter_stops`.
     */
    filter_kind?: FilterKind | undefined;
    /**
     * Peak optical density of a filter, above that of its clear glass, in the band that its kind absorbs. With `filter_kind`. 0.05 to 3.
     */
    filter_density?: number | undefined;
    /**
     * Strength of a filter in stops, in the band that its kind absorbs, in place of `filter_density`: a stop is a density of 0.3. With `filter_kind`. 0.17 to 9.9.
     */
    filter_stops?: number | undefined;
    /**
     * Measured curve of a filter, in place of kind and density: 2 to 401 samples, wavelengths rising. Answers call it by the kind whose curve is most like it.
     */
    filter_transmittance?: Array<TransmittanceSample> | undefined;
    /**
     * A filter, by a grey card photographed with and without it, in place of kind, density and curve: 1 to 16 pairs of pictures. Resolved to the kind and density that lose the same; `filter_fits` of the scene says how well.
     */
    filter_samples?: Array<FilterSample> | undefined;
    /**
     * Thread of the filter; that of the lens or port is assumed when left out. 20 to 150 mm.
     */
    filter_thread_mm?: number | undefined;
    /**
     * Width of the filter's clear part: for a filter without a thread, or where it is known. A little less than the thread when left out. 5 to 300 mm.
     */
    filter_clear_diameter_mm?: number | undefined;
    /**
     * How far the filter's front rim stands out in front of what it is screwed into. 0.5 to 30 mm. Default 5 mm.
     */
    filter_thickness_mm?: number | undefined;
    /**
     * Luminous flux of one video light, without a filter. 1 to 200000 lm.
     */
    flux_lm?: number | undefined;
    /**
     * How many of these video lights are on. Whole number, 1 to 16. Default 1.
     */
    count?: number | undefined;
    /**
     * Full angle of the beam. 5 to 180 deg. Default 100 deg.
     */
    beam_angle_deg?: number | undefined;
    /**
     * Where the beam angle was measured: water narrows the beam behind a flat port. Default `water`.
     */
    beam_angle_medium?: BeamMedium | undefined;
    /**
     * Colour temperature of the video light. Not with `led`. 1500 to 20000 K. Default 5600 K.
     */
    cct_K?: number | undefined;
    /**
     * Spectrum of the video light, by the name of a CIE LED illuminant. In place of `cct_K`.
     */
    led?: LedName | undefined;
    /**
     * From the video light to the subject, through water. 0.05 to 20 m.
     */
    distance_m?: number | undefined;
    /**
     * Thread that screws into the lens, the port or the ring before. 20 to 150 mm.
     */
    from_mm?: number | undefined;
    /**
     * Thread that it offers to the next ring or to the filter. 20 to 150 mm.
     */
    to_mm?: number | undefined;
    /**
     * By how much it moves forward what is screwed into it. 0.5 to 50 mm.
     */
    thickness_mm?: number | undefined;
    /**
     * Which holder it is.
     */
    holder?: PieceHolder | undefined;
};

/**
 * What becomes of a piece, and what it buys.
 */
export type KitPieceAdvice = {
    /**
     * Your name for the piece.
     */
    id: string;
    /**
     * What it is.
     */
    item: PieceItem;
    /**
     * What becomes of it.
     */
    role: PieceRole;
    /**
     * Colour error that it takes away on all dives together: from what the set has without it, or, for one that is left, from what the set has. Absent where a dive cannot be filmed without it, and for what is not judged. 0 to 12000.
     */
    buys_delta_e00?: number | undefined;
    /**
     * The dives on which it does.
     */
    dives: Array<PieceOnDive>;
    /**
     * Of one to take: how likely it is that the set would do without it. 0 to 1.
     */
    probability_needless?: number | undefined;
    /**
     * A near tie where that is 0.25 or more.
     */
    verdict: KitVerdict;
    /**
     * Why.
     */
    reason: Reason;
};

/**
 * Whether a call is clear, or a near tie: it may as well be the other way round.
 */
export type KitVerdict = 'clear' | 'near_tie';

/**
 * Equal video lights at one distance, switched on.
 */
export type LampFields = {
    /**
     * Luminous flux of one video light, without a filter. 1 to 200000 lm.
     */
    flux_lm: number;
    /**
     * How many of these video lights are on. Whole number, 1 to 16. Default 1.
     */
    count?: number | undefined;
    /**
     * Full angle of the beam. 5 to 180 deg. Default 100 deg.
     */
    beam_angle_deg?: number | undefined;
    /**
     * Where the beam angle was measured: water narrows the beam behind a flat port. Default `water`.
     */
    beam_angle_medium?: BeamMedium | undefined;
    /**
     * Colour temperature of the video light. Not with `led`. 1500 to 20000 K. Default 5600 K.
     */
    cct_K?: number | undefined;
    /**
     * Spectrum of the video light, by the name of a CIE LED illuminant. In place of `cct_K`.
     */
    led?: LedName | undefined;
    /**
     * From the video light to the subject, through water. 0.05 to 20 m.
     */
    distance_m: number;
    /**
     * Kind of the filter in front of the video light. With `filter_density`; no filter when left out.
     */
    filter_kind?: FilterKind | undefined;
    /**
     * Peak optical density of the filter in front of the video light, above that of its clear glass, in the band that its kind absorbs. With `filter_kind`. 0.05 to 3.
     */
    filter_density?: number | undefined;
};

/**
 * What to do with the video lights: there are none, leave them off, put filters on them, balance to them and daylight together, or let one of the lights lead.
 */
export type LampPlan = 'none' | 'lamps_off' | 'lamps_with_filter' | 'lamps_with_daylight' | 'lamps_lead' | 'lamps_only' | 'daylight_leads';

/**
 * A language that texts are written in (RFC 5646).
 */
export type Language = 'en' | 'de' | 'es' | 'fr';

/**
 * LED illuminant of the CIE (CIE 015:2018): B1 to B5 blue-pumped, BH1 blue hybrid, RGB1 mixed, V1 and V2 violet-pumped.
 */
export type LedName = 'LED-B1' | 'LED-B2' | 'LED-B3' | 'LED-B4' | 'LED-B5' | 'LED-BH1' | 'LED-RGB1' | 'LED-V1' | 'LED-V2';

/**
 * Length, as percentiles of what it may be.
 */
export type LengthEstimate = {
    /**
     * 10th percentile. 0 to 1000000 mm.
     */
    low: number;
    /**
     * 50th percentile. 0 to 1000000 mm.
     */
    likely: number;
    /**
     * 90th percentile. 0 to 1000000 mm.
     */
    high: number;
};

/**
 * What was done: the white balance was set on the card (`balance`), or the filter was put on the lens or taken off it.
 */
export type LensEvent = 'balance' | 'filter_on' | 'filter_off';

/**
 * How a lens draws: `wide` and `standard` keep straight lines straight, a `fisheye` does not. Lenses of standard view have their entrance pupil farther in than wide ones.
 */
export type LensKind = 'wide' | 'standard' | 'fisheye';

/**
 * What video lights do on a dive: `none`; the only light (`lamps_only`); they lead, or daylight does, and one balance suits both; or no light leads, and they are on as they are (`lamps_with_daylight`) or behind a filter that matches them to daylight (`lamps_with_filter`).
 */
export type LightUse = 'none' | 'lamps_only' | 'lamps_lead' | 'daylight_leads' | 'lamps_with_daylight' | 'lamps_with_filter';

/**
 * A window of a day, with what to mount and to set in it.
 */
export type LightWindow = {
    /**
     * When it begins, by the clocks of the site.
     */
    from_local_time: string;
    /**
     * When it ends, by the clocks of the site.
     */
    to_local_time: string;
    /**
     * When it begins, in UTC (RFC 3339).
     */
    from_time: string;
    /**
     * Height of the sun, as the mean over the window. So are the other figures of it. 0 to 90 deg.
     */
    sun_elevation_deg: number;
    /**
     * Eighths of the sky covered by cloud. 0 to 8 okta.
     */
    cloud_oktas: number;
    /**
     * Where that comes from.
     */
    cloud_basis: CloudBasis;
    /**
     * Light that comes down at the middle of the filmed depths.
     */
    illuminance_lx: IlluminanceEstimate;
    /**
     * Red that is left there, of what is just below the surface, as the camera's red channel sees it.
     */
    red_left_percent: PercentEstimate;
    /**
     * The least colour error that a filter, or none, leaves (CIEDE2000), as the mean over both ends and the middle of the depths. Its spread, and that of light and red, is that of the best window of all days, carried over.
     */
    colour_error_delta_e00: ColourErrorEstimate;
    /**
     * Light that the aim wants, over that in the best window of all days: what comes down on the subject, that of the open water behind it, or your video lights over daylight. -200 to 200 stop.
     */
    light_stops_over_best: number;
    /**
     * By how much the figure that windows are ranked by, colour error / 2 ^ (weight x light), is above that of the day's first window. 0 to 1000000000000 %.
     */
    costs_more_percent: number;
    /**
     * Nobody can tell it from the day's first window: it costs at most 2 % more.
     */
    as_good: boolean;
    /**
     * The filter that leaves the least colour error.
     */
    filter_kind: FilterVerdict;
    /**
     * Its density; absent for `none` and for a measured filter. 0 to 3.
     */
    filter_density?: number | undefined;
    /**
     * Its `id`, where it comes from the site's `kit`.
     */
    filter_id?: string | undefined;
    /**
     * Colour error that it leaves less than no filter; below about 1 it is hardly worth the mounting. 0 to 1000.
     */
    filter_gains_delta_e00: number;
    /**
     * Exposure value at ISO 100 that the camera meters at the middle of the depths, behind the filter. -200 to 40 EV.
     */
    exposure_value_ev100: number;
    /**
     * ISO to set there, exactly: on a dial, the nearest third of a stop. 1 to 1000000000000.
     */
    iso: number;
    /**
     * f-number to set there. 0 to 1000000.
     */
    f_number: number;
    /**
     * Exposure time there. 0 to 60 s.
     */
    shutter_s: number;
    /**
     * How far these settings are off: above 0 too bright at the least sensitive ones, which a neutral-density filter takes, below 0 too dark at the most sensitive ones. -200 to 200 stop.
     */
    off_by_stops: number;
    /**
     * Why it stands where it does.
     */
    reason: Reason;
};

/**
 * A day with its windows of light.
 */
export type LightWindowDay = {
    /**
     * The day, by the clocks of the site.
     */
    date: string;
    /**
     * Its windows, the best first, up to 3. Empty where the sun stands high enough in none.
     */
    windows: Array<LightWindow>;
    /**
     * Windows that are not listed: none of them is better on both colour error and light than one that is. Whole number, 0 to 48.
     */
    windows_behind: number;
    /**
     * Windows left out, as the sun does not stand at 10 degrees or higher all the time. Whole number, 0 to 48.
     */
    windows_without_sun: number;
};

/**
 * When the light of a site is best, day by day.
 */
export type LightWindowsAnswer = {
    /**
     * The site that was answered, with every default filled in.
     */
    site: {
        [key: string]: unknown;
    };
    /**
     * What light was looked for.
     */
    aim: WindowAim;
    /**
     * Weight of a stop of light in the figure that windows are ranked by. 0 to 1.
     */
    weight_per_stop: number;
    /**
     * The best window of all days: its day, and what it is measured by.
     */
    best: BestWindow;
    /**
     * Each day, in order.
     */
    days: Array<LightWindowDay>;
    /**
     * Why the answer is what it is, most important first.
     */
    reasons: Array<Reason>;
    /**
     * Cautions to heed before acting on it.
     */
    cautions: Array<Caution>;
    /**
     * What makes the answer uncertain, largest share first.
     */
    uncertainty: Array<UncertaintyCause>;
    /**
     * The model that answered.
     */
    model: ModelVersion;
};

/**
 * One site, the days and the opening hours, and what light is looked for.
 */
export type LightWindowsRequest = {
    /**
     * The site and the camera: a scene as `filter-choice` takes it, without place, time, sun and cloud, and without `camera_heading_deg`; `sun_side` says where the sun stands.
     */
    site: {
        [key: string]: unknown;
    };
    /**
     * Latitude, north positive. -90 to 90 deg.
     */
    latitude_deg: number;
    /**
     * Longitude, east positive. -180 to 180 deg.
     */
    longitude_deg: number;
    /**
     * Time zone of the site, by its name in the IANA database.
     */
    time_zone: string;
    /**
     * First day, by the clocks of the site.
     */
    first_date: string;
    /**
     * Last day, at most 31 days in all. Left out, it is the first.
     */
    last_date?: string | undefined;
    /**
     * When diving may begin, by the clocks of the site. Where a clock change leaps over it, the first time after that.
     */
    opens_at: string;
    /**
     * When it has to end: no window ends later.
     */
    closes_at: string;
    /**
     * Length of a window. Whole number, 30 to 240 min. Default 60 min.
     */
    window_min?: number | undefined;
    /**
     * What light is looked for; `lamps_lead` needs video lights (`lamps`) in the site. Default `natural_colour`.
     */
    aim?: WindowAim | undefined;
    /**
     * Cloud from your forecast, up to 775 entries. An hour without an entry of its own has that of its day, and where there is none, the sky is taken for clear, and the answer says so.
     */
    forecast?: Array<CloudForecast> | undefined;
    /**
     * Language of the texts, in the answer and in problems. Left out, it is the one that `Accept-Language` likes best, and English where it likes none.
     */
    language?: Language | undefined;
    /**
     * Units of depths, distances and visibility in the texts of answers and pictures. Fields keep the units in their names, and so does a problem, which is about fields; threads, rings and sheets are in mm always. Default `metric`.
     */
    units?: TextUnits | undefined;
    /**
     * Answer only if the model has this version (as `model.version` of an earlier answer says); otherwise a 409 problem.
     */
    expect_model_version?: string | undefined;
};

/**
 * A picture of what an answer says, or a file made of it.
 */
export type Link = {
    /**
     * What it shows: a picture of `/v1/pictures`, `slates` or `grades`. More may come; pass over names that you do not know.
     */
    name: string;
    /**
     * `GET` where the scene fits a query string, and the address holds it; else `POST`. Slates and grades are always made by `POST`.
     */
    method: LinkMethod;
    /**
     * Where it is, from the root of a service. What was assumed is left out, so that it is assumed again. How it is drawn, in which language and in which units it speaks go beside it in the query string: `format`, `width_px`, `theme`, `language`, `units`.
     */
    href: string;
};

/**
 * How to ask: `GET` the address as it is, or `POST` the scene that the answer is for, as it was sent.
 */
export type LinkMethod = 'GET' | 'POST';

/**
 * Light lost, in stops, as percentiles of what it may be.
 */
export type LossEstimate = {
    /**
     * 10th percentile. 0 to 10000 stop.
     */
    low: number;
    /**
     * 50th percentile. 0 to 10000 stop.
     */
    likely: number;
    /**
     * 90th percentile. 0 to 10000 stop.
     */
    high: number;
};

/**
 * Light lost, in stops, negative where it is gained, as percentiles of what it may be.
 */
export type LossOrGainEstimate = {
    /**
     * 10th percentile. -10000 to 10000 stop.
     */
    low: number;
    /**
     * 50th percentile. -10000 to 10000 stop.
     */
    likely: number;
    /**
     * 90th percentile. -10000 to 10000 stop.
     */
    high: number;
};

/**
 * Luminous flux, as percentiles of what it may be.
 */
export type LumensEstimate = {
    /**
     * 10th percentile. 0 to 1000000000 lm.
     */
    low: number;
    /**
     * 50th percentile. 0 to 1000000000 lm.
     */
    likely: number;
    /**
     * 90th percentile. 0 to 1000000000 lm.
     */
    high: number;
};

/**
 * Where the lumens could come from: the scene's video lights have them (`enough`), have them from closer (`closer`), only stronger video lights do (`stronger`), or none that divers carry (`out_of_reach`).
 */
export type LumensVerdict = 'enough' | 'closer' | 'stronger' | 'out_of_reach';

/**
 * The body is not JSON. Send one JSON object, in UTF-8.
 */
export type MalformedJsonProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/malformed-json';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 400;
    /**
     * The kind of problem, for programs.
     */
    code: 'malformed_json';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
};

/**
 * The request is not well-formed HTTP. Check the request line, the escapes in the path (`%` and two hexadecimal digits) and the headers.
 */
export type MalformedRequestProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/malformed-request';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 400;
    /**
     * The kind of problem, for programs.
     */
    code: 'malformed_request';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
};

/**
 * What the cards show, in the unit of what is marked, as percentiles of what it may be.
 */
export type MarkMeasurement = {
    /**
     * 10th percentile. -10000 to 10000.
     */
    low: number;
    /**
     * 50th percentile. -10000 to 10000.
     */
    likely: number;
    /**
     * 90th percentile. -10000 to 10000.
     */
    high: number;
};

/**
 * What was predicted, in the unit of what is marked, as percentiles of what it may be.
 */
export type MarkPrediction = {
    /**
     * 10th percentile. -10000 to 10000.
     */
    low: number;
    /**
     * 50th percentile. -10000 to 10000.
     */
    likely: number;
    /**
     * 90th percentile. -10000 to 10000.
     */
    high: number;
};

/**
 * Whether what was measured `agrees` with what was predicted, within both their spreads, or is `more` or `less`.
 */
export type MarkVerdict = 'agrees' | 'more' | 'less';

/**
 * What is marked: the `exposure` of a card (EV at ISO 100), how far the white balance fell short on it (`balance_reach`, stops between channels), how fast light of a channel fades (1/m), or the density of the filter.
 */
export type MarkedThing = 'exposure' | 'balance_reach' | 'red_attenuation' | 'green_attenuation' | 'blue_attenuation' | 'filter_density';

/**
 * The paper has not closed yet. Marks, feedback and solutions come from `closes_at` on, before that only with the instructor's key. The service stores nothing: keep the answers, and send them again then.
 */
export type MarksHeldBackProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/marks-held-back';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 403;
    /**
     * The kind of problem, for programs.
     */
    code: 'marks_held_back';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
    /**
     * Everything that is wrong, up to 50 errors; `detail` says if there are more.
     */
    errors: Array<FieldError>;
};

/**
 * This path does not take this method. The `Allow` header lists the methods that the path takes.
 */
export type MethodNotAllowedProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/method-not-allowed';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 405;
    /**
     * The kind of problem, for programs.
     */
    code: 'method_not_allowed';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
};

/**
 * Video lights against daylight, and the way out where their colours do not match.
 */
export type MixedLightAnswer = {
    /**
     * The scene that was answered.
     */
    scene: ResolvedScene;
    /**
     * The light to set the white balance to.
     */
    balance_to: BalanceTo;
    /**
     * The range as stretches of one verdict, shallow first.
     */
    zones: Array<MixedLightZone>;
    /**
     * Video lights against daylight at depths from shallow to deep.
     */
    depths: Array<MixedLightAtDepth>;
    /**
     * Why the answer is what it is, most important first.
     */
    reasons: Array<Reason>;
    /**
     * Cautions to heed before acting on it.
     */
    cautions: Array<Caution>;
    /**
     * What makes the answer uncertain, largest share first.
     */
    uncertainty: Array<UncertaintyCause>;
    /**
     * The model that answered.
     */
    model: ModelVersion;
    /**
     * Pictures of this answer, and files made of it; empty where there are none. Addresses are relative, the same online and offline: offline they lead to any service.
     */
    links: Array<Link>;
};

/**
 * Video lights against daylight at one depth.
 */
export type MixedLightAtDepth = {
    /**
     * Depth that this part of the answer is for. 0.1 to 100 m.
     */
    depth_m: number;
    /**
     * Which light makes the picture.
     */
    verdict: MixedLightVerdict;
    /**
     * How clear that is; absent unless both lights are there.
     */
    verdict_clarity?: Clarity | undefined;
    /**
     * Light of the video lights over daylight in the red channel, as both reach the camera from the upright subject; absent unless both are there.
     */
    red_lamp_over_daylight_stops?: RatioEstimate | undefined;
    /**
     * The same in the green channel; absent unless both lights are there.
     */
    green_lamp_over_daylight_stops?: RatioEstimate | undefined;
    /**
     * The same in the blue channel; absent unless both lights are there.
     */
    blue_lamp_over_daylight_stops?: RatioEstimate | undefined;
    /**
     * Illuminance on the upright subject from the video lights.
     */
    lamp_illuminance_lx: IlluminanceEstimate;
    /**
     * Illuminance on the upright subject from daylight.
     */
    daylight_illuminance_lx: IlluminanceEstimate;
    /**
     * Colour difference between a grey in both lights and one in daylight alone, with the white balance set to daylight; absent unless both are there.
     */
    split_delta_e00?: ColourErrorEstimate | undefined;
    /**
     * The same for what only daylight lights, with the white balance set to the video lights; absent unless both are there.
     */
    split_balanced_to_lamps_delta_e00?: ColourErrorEstimate | undefined;
    /**
     * The same with the white balance half way between; absent unless both are there.
     */
    split_balanced_between_delta_e00?: ColourErrorEstimate | undefined;
    /**
     * How much more red than green the video lights add, with the white balance set to daylight; absent unless both lights are there.
     */
    red_excess_stops?: RatioEstimate | undefined;
    /**
     * What the water between video light, subject and camera costs the video lights in the red channel; absent without them.
     */
    lamp_red_water_loss_stops?: LossEstimate | undefined;
    /**
     * The same in the green channel; absent without video lights.
     */
    lamp_green_water_loss_stops?: LossEstimate | undefined;
    /**
     * The same in the blue channel; absent without video lights.
     */
    lamp_blue_water_loss_stops?: LossEstimate | undefined;
    /**
     * How much less light the video lights give a metre behind the subject; absent without them. 0 to 10000 stop.
     */
    lamp_falloff_1_m_behind_stops?: number | undefined;
    /**
     * Luminance of the backscatter between camera and subject, in percent of an 18 % grey subject; 1000000 stands for that and more, where it hides the subject. Absent without video lights.
     */
    lit_haze_percent?: RelativePercentEstimate | undefined;
    /**
     * With `wanted_lead_stops`: luminous flux of all video lights together, without filters, that leads daylight by that much from `wanted_lead_distance_m`; 1000000000 stands for that and more. Absent without daylight.
     */
    lumens_needed_lm?: LumensEstimate | undefined;
    /**
     * With `wanted_lead_stops`: where these lumens could come from.
     */
    lumens_verdict?: LumensVerdict | undefined;
    /**
     * With `wanted_lead_stops`: largest distance, to 0.05 m, from which the scene's video lights do it; absent where they do not do it even from 0.2 m. 0.2 to 20 m.
     */
    own_lamps_lead_from_m?: number | undefined;
    /**
     * What to do about it, best first; empty where the lights do not fight.
     */
    ways_out: Array<WayOut>;
};

/**
 * Which light makes the picture, or `lights_fight` where two colours of light meet in it.
 */
export type MixedLightVerdict = 'lamps_only' | 'lamps_lead' | 'lights_fight' | 'daylight_leads' | 'daylight_only';

/**
 * A stretch of the range with one verdict.
 */
export type MixedLightZone = {
    /**
     * Which light makes the picture.
     */
    verdict: MixedLightVerdict;
    /**
     * Shallow end of the zone. 0.1 to 100 m.
     */
    min_depth_m: number;
    /**
     * Deep end of the zone. 0.1 to 100 m.
     */
    max_depth_m: number;
};

/**
 * A part of the model, with its source.
 */
export type ModelInfo = {
    /**
     * Id, as answers name it in `model.sources`.
     */
    id: string;
    /**
     * What it is.
     */
    what: string;
    /**
     * Table, formula or assumption.
     */
    kind: SourceKind;
    /**
     * Publication that it was taken from.
     */
    source: string;
    /**
     * Where it holds.
     */
    domain: string;
    /**
     * Its known weaknesses.
     */
    known_weaknesses: string;
};

/**
 * The model that answered.
 */
export type ModelVersion = {
    /**
     * Version of the model: year, month and count. It changes when figures of answers do, not with their wording; you can compare two answers of the same version.
     */
    version: string;
    /**
     * Tables and formulas behind the answer.
     */
    sources: Array<string>;
};

/**
 * The model has a different version. The request asked for one version of the model with `expect_model_version`, and the service runs another. Leave the field out to take today's answer.
 */
export type ModelVersionMismatchProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/model-version-mismatch';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 409;
    /**
     * The kind of problem, for programs.
     */
    code: 'model_version_mismatch';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
};

/**
 * The parts of the model.
 */
export type ModelsAnswer = {
    /**
     * Every table, formula and assumption.
     */
    models: Array<ModelInfo>;
    /**
     * Version of the model: year, month and count. It changes when figures of answers do, not with their wording; you can compare two answers of the same version.
     */
    model_version: string;
    /**
     * A hash of the code and texts behind the answers: two services with the same hash give the same bytes. Unlike the version of the model, it changes with every wording.
     */
    build: string;
};

/**
 * What is to be done: set a white balance on the card, put the filter on or take it off, or set the `exposure` again, as what is metered has moved by a stop.
 */
export type MomentAction = 'balance' | 'filter_on' | 'filter_off' | 'exposure';

/**
 * What holds what the plan puts on the lens.
 */
export type MountInPlan = {
    /**
     * What holds what the plan puts on the lens: the holder that you asked for, unless it does not fit.
     */
    holder: FilterHolder;
    /**
     * Where it puts the filter.
     */
    place: MountPlace;
    /**
     * Whether it fits; `does_not_fit` only where no holder does, and then the plan mounts nothing.
     */
    verdict: MountVerdict;
    /**
     * Whether, and how, it lets the filter be changed under water.
     */
    filter_change_underwater: FilterChange;
    /**
     * How many filters it holds, one behind the other: one for colour, and an ND. 0 to 2.
     */
    filters: number;
    /**
     * Every holder, best first, as `filter-mounting` tells them.
     */
    options: Array<MountOption>;
};

/**
 * A holder, and whether it fits.
 */
export type MountOption = {
    /**
     * The holder.
     */
    holder: FilterHolder;
    /**
     * Where it puts the filter.
     */
    place: MountPlace;
    /**
     * Whether it fits.
     */
    verdict: MountVerdict;
    /**
     * Stable code, for programs and translations. The examples are all the codes of today, and more may come.
     */
    code: string;
    /**
     * The deciding reason, in a sentence or two.
     */
    text: string;
    /**
     * All that the text is made of, so that you can put it in other words or in another language: numbers to six decimals, and names. Which ones depends on the code; empty where there are none. More codes and parameters may come.
     */
    parameters: {
        [key: string]: unknown;
    };
};

/**
 * Where a filter sits: `on_lens` inside the housing, `before_port` or `before_window` in the water, or `behind_lens`.
 */
export type MountPlace = 'on_lens' | 'before_port' | 'before_window' | 'behind_lens';

/**
 * Whether a holder goes with this camera and port.
 */
export type MountVerdict = 'fits' | 'fits_with_care' | 'does_not_fit';

/**
 * Camera, port, filter and rings. Needs the kinds of port and lens, and what the lens sees: a field of view, or a focal length with the sensor's diagonal.
 */
export type MountingSceneFields = {
    /**
     * What stands between the lens and the water.
     */
    port_kind: PortKind;
    /**
     * How the lens draws.
     */
    lens_kind: LensKind;
    /**
     * Radius of curvature of the dome. Only with `port_kind` `dome`. 20 to 500 mm.
     */
    dome_radius_mm?: number | undefined;
    /**
     * Focal length at the widest setting that you use: the real one, not an equivalent. With `sensor_diagonal_mm`, or beside `field_of_view_deg`. 1 to 300 mm.
     */
    focal_length_mm?: number | undefined;
    /**
     * Diagonal of the picture on the sensor. With `focal_length_mm`. 3 to 80 mm.
     */
    sensor_diagonal_mm?: number | undefined;
    /**
     * Full angle that the lens sees over the picture's diagonal, in air. In place of `focal_length_mm`, or beside it. 1 to 220 deg.
     */
    field_of_view_deg?: number | undefined;
    /**
     * Aperture at which to look at corners and focus. 0.7 to 64. Default 8.
     */
    f_number?: number | undefined;
    /**
     * Whether the lens comes off the camera, so that something can be put behind it. Default `true`.
     */
    lens_interchangeable?: boolean | undefined;
    /**
     * Filter thread on the front of the lens; the lens has none when left out. 20 to 150 mm.
     */
    lens_thread_mm?: number | undefined;
    /**
     * Filter thread on the outside of the port; the port has none when left out. 20 to 150 mm.
     */
    port_thread_mm?: number | undefined;
    /**
     * Outer diameter of the port, which a clip or a hinge without a thread goes over. 20 to 400 mm.
     */
    port_outer_diameter_mm?: number | undefined;
    /**
     * What lens is on the outside of the port. Not with a dome. Default `none`.
     */
    wet_lens?: 'none' | 'wide' | 'close_up' | undefined;
    /**
     * How far the front of the lens moves forward from the setting that is described to its longest one: 0 for a fixed focal length, and for a zoom that keeps its length. 0 to 200 mm. Default 0 mm.
     */
    zoom_travel_mm?: number | undefined;
    /**
     * Free room between the front rim of the lens and the port's glass, at the setting that is described. Not known when left out. 0 to 300 mm.
     */
    lens_port_gap_mm?: number | undefined;
    /**
     * How far inside the lens has its entrance pupil, counted from the lens's front rim, or from the window of a camera with `port_kind` `none`. Assumed when left out; the answer says what. 0.5 to 200 mm.
     */
    entrance_pupil_distance_mm?: number | undefined;
    /**
     * The holder that you want. Without it, or where it does not fit, the answer advises the best one.
     */
    holder?: FilterHolder | undefined;
    /**
     * Inner diameter of the clip, hinge or frame that goes over the port. By default the answer assumes one that fits. 20 to 400 mm.
     */
    holder_inner_diameter_mm?: number | undefined;
    /**
     * Thread of the filter; that of the lens or port is assumed when left out. 20 to 150 mm.
     */
    filter_thread_mm?: number | undefined;
    /**
     * Width of the filter's clear part: for a filter without a thread, or where it is known. A little less than the thread when left out. 5 to 300 mm.
     */
    filter_clear_diameter_mm?: number | undefined;
    /**
     * How far the filter's front rim stands out in front of what it is screwed into. 0.5 to 30 mm. Default 5 mm.
     */
    filter_thickness_mm?: number | undefined;
    /**
     * What the filter is made of, which decides what it weighs. Default `glass`.
     */
    filter_material?: 'glass' | 'resin' | undefined;
    /**
     * How you want to change the filter under water, if at all. Default `none`.
     */
    filter_change_underwater?: FilterChange | undefined;
    /**
     * Width of the opening behind the lens that a sheet has to cover, or of the slot that it slides into. With `rear_opening_height_mm`. 5 to 80 mm.
     */
    rear_opening_width_mm?: number | undefined;
    /**
     * Its height. With `rear_opening_width_mm`. 5 to 80 mm.
     */
    rear_opening_height_mm?: number | undefined;
    /**
     * How a sheet stays behind the lens. Default `slot`.
     */
    rear_fixing?: RearFixing | undefined;
    /**
     * Thickness of a sheet behind the lens. 0.01 to 3 mm. Default 0.1 mm.
     */
    sheet_thickness_mm?: number | undefined;
    /**
     * Refractive index of the sheet: about 1.5 for gelatine and polyester. 1.3 to 1.8. Default 1.5.
     */
    sheet_refractive_index?: number | undefined;
    /**
     * Rings that you own, in any order. None by default.
     */
    rings?: Array<StepRing> | undefined;
    /**
     * Answer only if the model has this version (as `model.version` of an earlier answer says); otherwise a 409 problem.
     */
    expect_model_version?: string | undefined;
    /**
     * Language of the texts, in the answer and in problems. Left out, it is the one that `Accept-Language` likes best, and English where it likes none.
     */
    language?: Language | undefined;
    /**
     * Units of depths, distances and visibility in the texts of answers and pictures. Fields keep the units in their names, and so does a problem, which is about fields; threads, rings and sheets are in mm always. Default `metric`.
     */
    units?: TextUnits | undefined;
};

/**
 * The answer does not come in a form that you accept. Answers are `application/json`, batches `application/jsonl`, packages of questions `application/zip`: let the `Accept` header include it, or leave it out.
 */
export type NotAcceptableProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/not-acceptable';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 406;
    /**
     * The kind of problem, for programs.
     */
    code: 'not_acceptable';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
};

/**
 * There is nothing at this path. `detail` names the nearest path; `/openapi.json` lists them all.
 */
export type NotFoundProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/not-found';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 404;
    /**
     * The kind of problem, for programs.
     */
    code: 'not_found';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
};

/**
 * The one filter, whatever it is held by, that would help most beyond all pieces, by daylight.
 */
export type OneMoreFilter = {
    /**
     * Its kind.
     */
    filter_kind: FilterVerdict;
    /**
     * Its density, in steps of half a stop. 0 to 3.
     */
    filter_density: number;
    /**
     * Colour error that it would take away on all dives together, beyond all pieces. 0 to 12000.
     */
    gains_delta_e00: number;
    /**
     * The dives on which it would.
     */
    dives: Array<GainOnDive>;
};

/**
 * How the advised choice, the runner-up and no filter do under another finish.
 */
export type OtherFinish = {
    /**
     * The finish that this is about.
     */
    finish: Finish;
    /**
     * Which of the three is best under it.
     */
    filter_kind: FilterVerdict;
    /**
     * Its density; absent for `none`. 0 to 3.
     */
    filter_density?: number | undefined;
    /**
     * Its `id`, where it comes from the scene's `kit`.
     */
    filter_id?: string | undefined;
    /**
     * Colour error of the advised choice under it. 0 to 1000.
     */
    advised_colour_error_delta_e00: number;
    /**
     * The same of the runner-up. 0 to 1000.
     */
    runner_up_colour_error_delta_e00: number;
    /**
     * The same without a filter. 0 to 1000.
     */
    without_colour_error_delta_e00: number;
};

/**
 * The scene is valid, but outside what the model can answer. `errors` names the fields that lead outside the model, and its limits.
 */
export type OutsideTheModelProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/outside-the-model';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 422;
    /**
     * The kind of problem, for programs.
     */
    code: 'outside_the_model';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
    /**
     * Everything that is wrong, up to 50 errors; `detail` says if there are more.
     */
    errors: Array<FieldError>;
};

/**
 * What lies over the diver: `none`, an `overhang`, a `cavern` (daylight still reaches), a `cave` (none does), the inside of a `wreck`, or `ice`.
 */
export type Overhead = 'none' | 'overhang' | 'cavern' | 'cave' | 'wreck' | 'ice';

/**
 * A filter of the shelf, and how many of it.
 */
export type PackedPiece = {
    /**
     * The filter, by its `id`.
     */
    piece_id: string;
    /**
     * How many of it. Whole number, 1 to 1600.
     */
    quantity: number;
};

/**
 * A ring of the shop, and how many of it.
 */
export type PackedRing = {
    /**
     * The ring, by its `id`.
     */
    ring_id: string;
    /**
     * How many of it are used at a time, at most. Whole number, 1 to 1600.
     */
    quantity: number;
    /**
     * How many of these the shop lacks. Whole number, 0 to 1600.
     */
    short_by: number;
};

/**
 * The request is valid, but no such paper can be made. `errors` says which kinds of question this level does not have, or that there are too few questions.
 */
export type PaperNotPossibleProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/paper-not-possible';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 422;
    /**
     * The kind of problem, for programs.
     */
    code: 'paper_not_possible';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
    /**
     * Everything that is wrong, up to 50 errors; `detail` says if there are more.
     */
    errors: Array<FieldError>;
};

/**
 * Share in percent, as percentiles of what it may be.
 */
export type PercentEstimate = {
    /**
     * 10th percentile. 0 to 100 %.
     */
    low: number;
    /**
     * 50th percentile. 0 to 100 %.
     */
    likely: number;
    /**
     * 90th percentile. 0 to 100 %.
     */
    high: number;
};

/**
 * What a picture comes in.
 */
export type PictureFormat = 'svg' | 'png';

/**
 * How a picture is drawn.
 */
export type PictureLook = {
    /**
     * Vectors whose texts are text, or pixels. Default `svg`.
     */
    format?: PictureFormat | undefined;
    /**
     * Width in CSS pixels that the picture is laid out for; a PNG is so many wide. The height follows from what is shown. Whole number, 320 to 1600 px. Default 800 px.
     */
    width_px?: number | undefined;
    /**
     * Colours of the ground and what stands on it. Default `light`.
     */
    theme?: PictureTheme | undefined;
};

/**
 * What a picture is for: a light page, a dark one, or paper, black and white included.
 */
export type PictureTheme = 'light' | 'dark' | 'print';

/**
 * Whose a piece is: of the `shelf`, or the guest's `own`.
 */
export type PieceFrom = 'shelf' | 'own';

/**
 * A holder that is a piece of its own: a hinge on the port (`flip`), a clip (`clip_on`), or a frame over an action camera.
 */
export type PieceHolder = 'flip' | 'clip_on' | 'action_camera';

/**
 * A filter in a guest's hands.
 */
export type PieceInUse = {
    /**
     * The filter, by its `id`.
     */
    piece_id: string;
    /**
     * Whose it is.
     */
    from: PieceFrom;
    /**
     * Its kind.
     */
    filter_kind: FilterVerdict;
    /**
     * Its density; absent for a measured filter. 0 to 3.
     */
    filter_density?: number | undefined;
    /**
     * What holds it; absent where the camera says nothing of port and lens.
     */
    holder?: FilterHolder | undefined;
    /**
     * Whether that asks for care.
     */
    verdict?: FittingVerdict | undefined;
    /**
     * Step rings from lens or port to it, in the order in which they are screwed on.
     */
    rings: Array<RingInUse>;
};

/**
 * What a piece is: a filter for the lens, a filter for a video light, a video light (or several equal ones that go together), a step ring, or a holder.
 */
export type PieceItem = 'lens_filter' | 'lamp_filter' | 'lamp' | 'ring' | 'holder';

/**
 * What a piece does on a dive.
 */
export type PieceOnDive = {
    /**
     * Your name for the dive.
     */
    id: string;
    /**
     * Colour error that the piece takes away there; absent where nothing can be filmed without it. 0 to 1000.
     */
    buys_delta_e00?: number | undefined;
};

/**
 * What becomes of a piece: `take` it, `leave` it (it would help, by less than the limit), it is `never_used`, or `not_judged`, as a neutral-density filter is not by its colours.
 */
export type PieceRole = 'take' | 'leave' | 'never_used' | 'not_judged';

/**
 * What the port makes of the lens's picture.
 */
export type PortFigures = {
    /**
     * Full angle that the lens sees over the diagonal, in air. 0 to 220 deg.
     */
    field_in_air_deg: number;
    /**
     * The same in the water, through this port. 0 to 220 deg.
     */
    field_in_water_deg: number;
    /**
     * Flat port: how much larger things appear near the middle; absent with a dome. 1 to 2.
     */
    magnification?: number | undefined;
    /**
     * Flat port: apparent distance of things over the true one; absent with a dome. 0 to 1.
     */
    apparent_distance_share?: number | undefined;
    /**
     * Flat port: how much farther from the middle blue (450 nm) falls than red (650 nm) in the corner; absent with a dome, and within 6 degrees of grazing. 0 to 1000 %.
     */
    lateral_colour_percent?: number | undefined;
    /**
     * Dome of known radius: how far in front of the glass infinity appears, which the lens has to focus on. 0 to 10000 mm.
     */
    virtual_infinity_from_vertex_mm?: number | undefined;
    /**
     * Dome of known radius: how far from the dome's centre, where the entrance pupil belongs, infinity appears, which the lens has to focus on. 0 to 10000 mm.
     */
    virtual_infinity_from_centre_mm?: number | undefined;
};

/**
 * What stands between the lens and the water: a `flat` port, a `dome`, or `none` for a camera that is watertight without a housing, behind its own flat window.
 */
export type PortKind = 'flat' | 'dome' | 'none';

/**
 * A kind of problem, explained.
 */
export type ProblemPage = {
    /**
     * The kind of problem, as problems name it.
     */
    type: string;
    /**
     * The same for programs.
     */
    code: string;
    /**
     * The kind of problem in a sentence.
     */
    title: string;
    /**
     * The HTTP status of the answer. Whole number, 400 to 599.
     */
    status: number;
    /**
     * What it means and what to do about it.
     */
    explanation: string;
    /**
     * Codes that its `errors` can carry. An open list: more may come.
     */
    errors?: Array<ErrorMeaning> | undefined;
};

/**
 * Version of Question and Test Interoperability (1EdTech): 3.0, or 2.1 for older platforms.
 */
export type QtiVersion = '3.0' | '2.1';

/**
 * The questions have changed. The model has changed since the paper was made, and with it the right answers. Ask for a new paper.
 */
export type QuestionsChangedProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/questions-changed';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 409;
    /**
     * The kind of problem, for programs.
     */
    code: 'questions_changed';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
    /**
     * Everything that is wrong, up to 50 errors; `detail` says if there are more.
     */
    errors: Array<FieldError>;
};

/**
 * Answers to mark.
 */
export type QuizAnswersRequest = {
    /**
     * The token of the paper, as `/v1/quiz-items` gave it.
     */
    token: string;
    /**
     * The answers, in any order. Questions left out count as unanswered.
     */
    responses: Array<QuizResponse>;
};

/**
 * Something to choose, to put in order or to match.
 */
export type QuizEntry = {
    /**
     * Id of the entry within its question.
     */
    id: string;
    /**
     * What it says.
     */
    text: string;
};

/**
 * The mark of one answer, with feedback and solution.
 */
export type QuizGrade = {
    /**
     * Id of the question.
     */
    item: string;
    /**
     * The score: 1 where all of it is right, less where parts are. 0 to 1.
     */
    score: number;
    /**
     * Whether all of it is right.
     */
    right: boolean;
    /**
     * What to say to the learner.
     */
    feedback: Array<QuizRemark>;
    /**
     * The worked solution. A blank gets none, except with the instructor's key.
     */
    solution?: QuizSolution | undefined;
};

/**
 * How a question is answered: `single_choice` and `multiple_choice` with `choices`, `numeric` with `number`, `ordering` with `order`, `matching` with `pairs`.
 */
export type QuizInteraction = 'single_choice' | 'multiple_choice' | 'numeric' | 'ordering' | 'matching';

/**
 * A question without its answer.
 */
export type QuizItem = {
    /**
     * Id of the question within its paper.
     */
    id: string;
    /**
     * Identifies the question across papers: send it in `avoid` of a later paper, so that nobody meets the question twice.
     */
    fingerprint: string;
    /**
     * Kind of the question.
     */
    template: QuizTemplate;
    /**
     * What it is about.
     */
    topic: QuizTopic;
    /**
     * Its level.
     */
    level: QuizLevel;
    /**
     * How it is answered.
     */
    interaction: QuizInteraction;
    /**
     * The question.
     */
    stem: string;
    /**
     * Estimated from the question's features by a stated rule, not yet fitted to learners' answers: 0 easy, 1 hard. 0 to 1.
     */
    difficulty: number;
    /**
     * A picture that the question is about.
     */
    picture?: QuizPicture | undefined;
    /**
     * The options to choose from or, for an ordering, to put in order.
     */
    options?: Array<QuizEntry> | undefined;
    /**
     * For a matching: what to find a partner for.
     */
    left?: Array<QuizEntry> | undefined;
    /**
     * For a matching: the partners. Some may be spare.
     */
    right?: Array<QuizEntry> | undefined;
    /**
     * Unit of a numeric answer, the same in each language, as the question's text says it, too; empty for a bare number.
     */
    unit?: string | undefined;
    /**
     * Decimals that a numeric answer needs. Whole number, 0 to 6.
     */
    decimals?: number | undefined;
};

/**
 * A paper to ask for. Needs level and count.
 */
export type QuizItemsRequest = {
    /**
     * Level of the questions.
     */
    level: QuizLevel;
    /**
     * How many questions; no two are alike. Whole number, 1 to 200.
     */
    count: number;
    /**
     * Kinds of question to draw from, in turn; all that the level has when left out.
     */
    templates?: Array<QuizTemplate> | undefined;
    /**
     * What the questions are about; everything when left out. With `templates`, those of them that are about it.
     */
    topics?: Array<QuizTopic> | undefined;
    /**
     * Questions to leave out, because learners have met them already.
     */
    avoid?: Array<string> | undefined;
    /**
     * Any text; only with the instructor's key. The same text with the same other fields gives the same paper, in `/v1/quiz-items` and in `/v1/quiz-packages`, as long as service, key and `model_version` stay the same. Without it every paper is new.
     */
    seed?: string | undefined;
    /**
     * Units of the texts. Numeric answers are always metric. Default `metric`.
     */
    units?: QuizUnits | undefined;
    /**
     * Language of the texts, in the paper, its marks and its packages. Left out, it is the one of these that `Accept-Language` likes best, and English where it likes none of them. The same seed asks the same in each.
     */
    language?: QuizLanguage | undefined;
    /**
     * When to give the marks. Default `at_once`.
     */
    release?: QuizRelease | undefined;
    /**
     * When the paper closes, with its offset from UTC (RFC 3339), from now to 366 days ahead. Only, and always, with `release` `after_close`.
     */
    closes_at?: string | undefined;
    /**
     * Answer only if the model has this version (as `model.version` of an earlier answer says); otherwise a 409 problem.
     */
    expect_model_version?: string | undefined;
};

/**
 * A language that questions are written in (RFC 5646).
 */
export type QuizLanguage = 'en' | 'es';

/**
 * How hard: `beginner`, `working` (intermediate: films under water regularly) or `expert`.
 */
export type QuizLevel = 'beginner' | 'working' | 'expert';

/**
 * A paper, marked.
 */
export type QuizMarks = {
    /**
     * Sum of the scores. Unanswered questions count 0. 0 to 200.
     */
    score: number;
    /**
     * Highest possible score: 1 for each question of the paper. Whole number, 1 to 200.
     */
    max_score: number;
    /**
     * A mark for each answer, in the order of the request.
     */
    grades: Array<QuizGrade>;
    /**
     * Questions of the paper that were left out or blank. They come without solutions.
     */
    unanswered: Array<string>;
    /**
     * Cautions to show with the paper. The first says that none of it is a dive plan.
     */
    cautions: Array<Caution>;
    /**
     * Version of the model: year, month and count. It changes when figures of answers do, not with their wording; you can compare two answers of the same version.
     */
    model_version: string;
};

/**
 * What a paper is packed as: `qti`, which a platform shows and marks, or `scorm_1_2`, a page that shows and marks the questions on its own.
 */
export type QuizPackageFormat = 'qti' | 'scorm_1_2';

/**
 * A paper to pack. Needs level, count and title.
 */
export type QuizPackageRequest = {
    /**
     * Level of the questions.
     */
    level: QuizLevel;
    /**
     * How many questions; no two are alike. Whole number, 1 to 200.
     */
    count: number;
    /**
     * Title of the paper, as a platform shows it.
     */
    title: string;
    /**
     * Kinds of question to draw from, in turn; all that the level has when left out.
     */
    templates?: Array<QuizTemplate> | undefined;
    /**
     * What the questions are about; everything when left out. With `templates`, those of them that are about it.
     */
    topics?: Array<QuizTopic> | undefined;
    /**
     * Questions to leave out, because learners have met them already.
     */
    avoid?: Array<string> | undefined;
    /**
     * Any text; only with the instructor's key. The same text with the same other fields gives the same paper, in `/v1/quiz-items` and in `/v1/quiz-packages`, as long as service, key and `model_version` stay the same. Without it every paper is new.
     */
    seed?: string | undefined;
    /**
     * Units of the texts. Numeric answers are always metric. Default `metric`.
     */
    units?: QuizUnits | undefined;
    /**
     * Language of the texts, in the paper, its marks and its packages. Left out, it is the one of these that `Accept-Language` likes best, and English where it likes none of them. The same seed asks the same in each.
     */
    language?: QuizLanguage | undefined;
    /**
     * When to give the marks. Default `at_once`.
     */
    release?: QuizRelease | undefined;
    /**
     * When the paper closes, with its offset from UTC (RFC 3339), from now to 366 days ahead. Only, and always, with `release` `after_close`.
     */
    closes_at?: string | undefined;
    /**
     * Answer only if the model has this version (as `model.version` of an earlier answer says); otherwise a 409 problem.
     */
    expect_model_version?: string | undefined;
    /**
     * What to pack the paper as. `scorm_1_2` is for practice, also without a network: questions, pictures and marking are in the package, and so are the keys, where anyone can read them. It needs `with_keys` `true`, and takes neither `version` nor `release` nor `closes_at`. Default `qti`.
     */
    format?: QuizPackageFormat | undefined;
    /**
     * Version of QTI; only with `format` `qti`. Default `3.0`.
     */
    version?: QtiVersion | undefined;
    /**
     * Whether the package has keys, feedback and solutions, so that a platform can do the marking; this needs the instructor's key. Without them, and with `release` `after_close`, `paper.json` in the package has the token for `/v1/quiz-answers`; a practice paper has no token, since it would open the solutions to anyone who looks into the package. Default `false`.
     */
    with_keys?: boolean | undefined;
};

/**
 * Two entries that belong together.
 */
export type QuizPair = {
    /**
     * Id of an entry on the left.
     */
    left: string;
    /**
     * Id of the entry on the right that goes with it.
     */
    right: string;
};

/**
 * A paper without its answers.
 */
export type QuizPaper = {
    /**
     * The questions, in order.
     */
    items: Array<QuizItem>;
    /**
     * Cautions to show with the paper. The first says that none of it is a dive plan.
     */
    cautions: Array<Caution>;
    /**
     * The paper, sealed: send it to `/v1/quiz-answers` with the answers.
     */
    token: string;
    /**
     * When the token expires (RFC 3339, UTC).
     */
    expires: string;
    /**
     * When the paper gives its marks.
     */
    release: QuizRelease;
    /**
     * When it closes (RFC 3339, UTC), if it gives its marks after that.
     */
    closes_at?: string | undefined;
    /**
     * Version of the model: year, month and count. It changes when figures of answers do, not with their wording; you can compare two answers of the same version.
     */
    model_version: string;
};

/**
 * A picture that belongs to a question.
 */
export type QuizPicture = {
    /**
     * A complete SVG document.
     */
    svg: string;
    /**
     * The same in words.
     */
    alt: string;
};

/**
 * When a paper gives its marks: `at_once` for practice, where each mark comes with feedback and the worked solution, so that anyone who holds the token can find out the whole key; `after_close` for a test, where nobody without the instructor's key learns anything before `closes_at`.
 */
export type QuizRelease = 'at_once' | 'after_close';

/**
 * Feedback on an answer.
 */
export type QuizRemark = {
    /**
     * Id of the option that it is about; absent where it is about the whole answer.
     */
    about?: string | undefined;
    /**
     * The misunderstanding behind the answer, as a stable code; absent where there is none to name.
     */
    misconception?: string | undefined;
    /**
     * What to say to the learner.
     */
    text: string;
};

/**
 * The answer to one question, in the field that goes with its interaction. Without any field it is a blank.
 */
export type QuizResponse = {
    /**
     * Id of the question.
     */
    item: string;
    /**
     * For a choice: ids of the options chosen. An empty list is a blank.
     */
    choices?: Array<string> | undefined;
    /**
     * For a numeric question: the answer, in the unit of the question. -1000000000000 to 1000000000000.
     */
    number?: number | undefined;
    /**
     * For a numeric question, in place of `number`: the answer as the learner typed it, with a decimal point or comma, with or without its unit. Spaces alone are a blank; another unit is refused, and the error names the right one.
     */
    typed?: string | undefined;
    /**
     * For an ordering: ids of all entries, the first at the top. An empty list is a blank.
     */
    order?: Array<string> | undefined;
    /**
     * For a matching: the partners found. An empty list is a blank.
     */
    pairs?: Array<QuizPair> | undefined;
};

/**
 * A worked solution.
 */
export type QuizSolution = {
    /**
     * The way to the answer, in order.
     */
    steps: Array<string>;
    /**
     * Its sources.
     */
    sources: Array<string>;
};

/**
 * A kind of question.
 */
export type QuizTemplate = 'colour_order' | 'red_left' | 'percent_to_stops' | 'spectrum_most_left' | 'water_from_spectrum' | 'red_reach' | 'filter_for_water' | 'density_to_stops' | 'densities_stack' | 'density_match' | 'density_to_even_out' | 'pay_with_iso' | 'pay_with_aperture' | 'exposure_way' | 'more_red_light' | 'when_to_balance' | 'lamp_only_balance' | 'kelvin_order' | 'kelvin_meaning' | 'mired_shift' | 'mixed_verdict' | 'way_out' | 'lamp_falloff' | 'lamp_path' | 'red_in_post' | 'ring_chain' | 'ring_direction' | 'flat_port_field' | 'sheet_shift' | 'mount_place' | 'safe_lamps' | 'order_of_dive' | 'shutter_angle' | 'histogram_code' | 'loss_budget' | 'sun_turn' | 'balance_lasts' | 'balance_target' | 'backscatter_order' | 'lamp_filter_water' | 'filter_two_dives' | 'codes_per_stop' | 'card_reading' | 'grade_saves' | 'auto_settings' | 'mount_faults' | 'safe_batteries' | 'kept_balance' | 'lamp_place' | 'mount_order' | 'contrast_order' | 'sun_or_depth' | 'brightest_hour' | 'floor_light' | 'recording_gain' | 'histogram_reading';

/**
 * What a question is about.
 */
export type QuizTopic = 'light' | 'filter' | 'exposure' | 'balance' | 'lamps' | 'grading' | 'mounting' | 'safety';

/**
 * Units of the texts: `metric`, or `metric_and_imperial` with feet behind metres.
 */
export type QuizUnits = 'metric' | 'metric_and_imperial';

/**
 * One of what is owned, and how well it would do.
 */
export type RankedFilter = {
    /**
     * A filter of the `kit`, or `none`.
     */
    filter_kind: FilterVerdict;
    /**
     * Its density; absent for `none` and for a measured filter. 0 to 3.
     */
    filter_density?: number | undefined;
    /**
     * Its `id`; absent for `none`.
     */
    filter_id?: string | undefined;
    /**
     * Its mean colour error over the range (CIEDE2000).
     */
    colour_error_delta_e00: ColourErrorEstimate;
    /**
     * Probability that nothing else of the ranking is better: that its colour error, with what a filter must gain to be worth mounting, is the least. They add up to 1. 0 to 1.
     */
    probability_best: number;
    /**
     * What it costs in exposure; zero for `none`.
     */
    filter_loss_stops: LossEstimate;
    /**
     * Shallow end of the part of the range in which it does better than no filter (or `none` no worse than any filter); absent if nowhere. 0.1 to 100 m.
     */
    serves_min_depth_m?: number | undefined;
    /**
     * Deep end of that part; absent if nowhere. 0.1 to 100 m.
     */
    serves_max_depth_m?: number | undefined;
};

/**
 * One light over another, in stops, negative where it is the weaker one, as percentiles of what it may be.
 */
export type RatioEstimate = {
    /**
     * 10th percentile. -10000 to 10000 stop.
     */
    low: number;
    /**
     * 50th percentile. -10000 to 10000 stop.
     */
    likely: number;
    /**
     * 90th percentile. -10000 to 10000 stop.
     */
    high: number;
};

/**
 * How a sheet stays behind the lens: it slides into a `slot`, or is held by `tape` around the opening.
 */
export type RearFixing = 'slot' | 'tape';

/**
 * A sheet behind the lens: its size, and what it does to focus.
 */
export type RearSheet = {
    /**
     * Width to cut; absent where the opening is not given. 0 to 100 mm.
     */
    cut_width_mm?: number | undefined;
    /**
     * Height to cut; absent where the opening is not given. 0 to 100 mm.
     */
    cut_height_mm?: number | undefined;
    /**
     * How far the sheet moves the image back. 0 to 10 mm.
     */
    focus_shift_mm: number;
    /**
     * Blur on the sensor if you do not refocus the lens. 0 to 10 mm.
     */
    blur_if_not_refocused_mm: number;
    /**
     * Blur that is usually allowed: the picture's diagonal over 1500. 0 to 10 mm.
     */
    blur_allowed_mm: number;
    /**
     * Whether far things stay sharp; absent where that depends on a dome's radius that you did not give.
     */
    focus?: SheetFocus | undefined;
    /**
     * True distance of the farthest thing that a lens which stops at infinity still focuses; absent where all is in reach, or without the dome's radius. 0 to 1000000000000 m.
     */
    farthest_sharp_m?: number | undefined;
};

/**
 * Why the answer is what it is.
 */
export type Reason = {
    /**
     * Stable code, for programs and translations. The examples are all the codes of today, and more may come.
     */
    code: string;
    /**
     * One or two plain sentences.
     */
    text: string;
    /**
     * Where the reason comes from.
     */
    basis: ReasonBasis;
    /**
     * The figures behind it: the numbers among its parameters.
     */
    figures: Array<Figure>;
    /**
     * All that the text is made of, so that you can put it in other words or in another language: numbers to six decimals, and names. Which ones depends on the code; empty where there are none. More codes and parameters may come.
     */
    parameters: {
        [key: string]: unknown;
    };
};

/**
 * Where a reason comes from: `computed` by the model, `common_practice` without a published source, or `judgement`, where what decides is a bound or a usual value that we judged or know from memory, such as the 20 code values below which bands show. How strong a colour error is called is a judgement everywhere.
 */
export type ReasonBasis = 'computed' | 'common_practice' | 'judgement';

/**
 * An 18 % grey as it was recorded, per pixel as looked at.
 */
export type Recording = {
    /**
     * Which recording.
     */
    recording: RecordingKind;
    /**
     * ISO speed that was set. 1 to 1000000000000.
     */
    iso: number;
    /**
     * Aperture that was set. 0 to 1000000.
     */
    f_number: number;
    /**
     * Exposure time that was set. 0 to 60 s.
     */
    shutter_s: number;
    /**
     * Density of the ND filter in front of the lens, where the scene is too bright for these settings; absent otherwise. 0 to 100.
     */
    neutral_density?: number | undefined;
    /**
     * Electrons that light frees in the red channel of a grey. 0 to 1000000000000.
     */
    red_electrons: number;
    /**
     * Electrons that light frees in the green channel of a grey. 0 to 1000000000000.
     */
    green_electrons: number;
    /**
     * Electrons that light frees in the blue channel of a grey. 0 to 1000000000000.
     */
    blue_electrons: number;
    /**
     * Signal over noise of the red channel. 0 to 1000000.
     */
    red_signal_to_noise: number;
    /**
     * Signal over noise of the green channel. 0 to 1000000.
     */
    green_signal_to_noise: number;
    /**
     * Signal over noise of the blue channel. 0 to 1000000.
     */
    blue_signal_to_noise: number;
    /**
     * Share of the red channel's signal that is light above 600 nm. 0 to 1.
     */
    red_above_600_nm_share: number;
    /**
     * Signal over noise of the light above 600 nm alone.
     */
    red_light_signal_to_noise: SignalToNoiseEstimate;
    /**
     * How well it was recorded.
     */
    red_quality: RedQuality;
    /**
     * Gain that grading still has to give red after the camera's balance, against the strongest channel; 1000000000000 stands for that and more. 0 to 1000000000000.
     */
    red_gain_needed: number;
    /**
     * Code values to a stop of red around that grey, at 8 bits. 0 to 1000000.
     */
    red_codes_per_stop_8_bit: number;
    /**
     * Code values to a stop of red around that grey, at 10 bits. 0 to 1000000.
     */
    red_codes_per_stop_10_bit: number;
    /**
     * Code values to a stop of red around that grey, at 12 bits. 0 to 1000000.
     */
    red_codes_per_stop_12_bit: number;
};

/**
 * How code values are spread over light: `rec709` as ITU-R BT.709, `log` evenly over stops, `linear` evenly over light, `hlg` as the hybrid log-gamma of ITU-R BT.2100.
 */
export type RecordingCurve = 'rec709' | 'log' | 'linear' | 'hlg';

/**
 * Which recording: without a filter at its best exposure, with the scene's filter at its best exposure, or with it at the settings (and the ND filter) of the one without.
 */
export type RecordingKind = 'no_filter' | 'filter_best_exposure' | 'filter_same_settings';

/**
 * A point of a recording curve.
 */
export type RecordingPoint = {
    /**
     * Light, as a share of the brightest that is recorded. 0 to 1.
     */
    light_share: number;
    /**
     * Code value that it is stored as, as a share of the highest. 0 to 1.
     */
    code_share: number;
};

/**
 * What grading has to work with at one depth.
 */
export type RecoveryAtDepth = {
    /**
     * Depth that this part of the answer is for. 0.1 to 100 m.
     */
    depth_m: number;
    /**
     * A grey as recorded without a filter and, where the scene has one, with it.
     */
    recordings: Array<Recording>;
};

/**
 * How well red light was recorded, by its signal over noise (after ISO 12232).
 */
export type RedQuality = 'excellent' | 'acceptable' | 'poor' | 'gone';

/**
 * What a sea floor reflects at one wavelength.
 */
export type ReflectanceSample = {
    /**
     * Wavelength of the light, in air. 380 to 780 nm.
     */
    wavelength_nm: number;
    /**
     * Share of the light at that wavelength that the floor sends back. 0 to 1.
     */
    reflectance: number;
};

/**
 * One luminance in percent of another, as percentiles of what it may be.
 */
export type RelativePercentEstimate = {
    /**
     * 10th percentile. 0 to 1000000000000 %.
     */
    low: number;
    /**
     * 50th percentile. 0 to 1000000000000 %.
     */
    likely: number;
    /**
     * 90th percentile. 0 to 1000000000000 %.
     */
    high: number;
};

/**
 * The numbers to remember first.
 */
export type Remember = {
    /**
     * Of the colour filter; absent without one, and for a measured one. 0 to 3.
     */
    filter_density?: number | undefined;
    /**
     * Where to set the first white balance. 0.1 to 100 m.
     */
    first_balance_depth_m: number;
    /**
     * ISO speed to begin with, exactly: on a dial, the nearest third of a stop. 1 to 1000000000000.
     */
    starting_iso: number;
};

/**
 * The request did not arrive in time. Send the whole request without pauses, or try again on a better connection.
 */
export type RequestTimeoutProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/request-timeout';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 408;
    /**
     * The kind of problem, for programs.
     */
    code: 'request_timeout';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
};

/**
 * An item that you own, a filter by its density or its curve.
 */
export type ResolvedKitItem = {
    /**
     * Your own name for it; answers use it.
     */
    id: string;
    /**
     * What it is.
     */
    item: KitItemName;
    /**
     * Kind of a filter. With `filter_density` or `filter_stops`.
     */
    filter_kind?: FilterKind | undefined;
    /**
     * Peak optical density of a filter, above that of its clear glass, in the band that its kind absorbs. With `filter_kind`. 0.05 to 3.
     */
    filter_density?: number | undefined;
    /**
     * Measured curve of a filter, in place of kind and density: 2 to 401 samples, wavelengths rising. Answers call it by the kind whose curve is most like it.
     */
    filter_transmittance?: Array<TransmittanceSample> | undefined;
};

/**
 * Equal video lights at one distance, with every default filled in.
 */
export type ResolvedLamp = {
    /**
     * Luminous flux of one video light, without a filter. 1 to 200000 lm.
     */
    flux_lm: number;
    /**
     * How many of these video lights are on. Whole number, 1 to 16. Default 1.
     */
    count: number;
    /**
     * Full angle of the beam. 5 to 180 deg. Default 100 deg.
     */
    beam_angle_deg: number;
    /**
     * Where the beam angle was measured: water narrows the beam behind a flat port. Default `water`.
     */
    beam_angle_medium: BeamMedium;
    /**
     * Colour temperature of the video light. Not with `led`. 1500 to 20000 K. Default 5600 K.
     */
    cct_K?: number | undefined;
    /**
     * Spectrum of the video light, by the name of a CIE LED illuminant. In place of `cct_K`.
     */
    led?: LedName | undefined;
    /**
     * From the video light to the subject, through water. 0.05 to 20 m.
     */
    distance_m: number;
    /**
     * Kind of the filter in front of the video light. With `filter_density`; no filter when left out.
     */
    filter_kind?: FilterKind | undefined;
    /**
     * Peak optical density of the filter in front of the video light, above that of its clear glass, in the band that its kind absorbs. With `filter_kind`. 0.05 to 3.
     */
    filter_density?: number | undefined;
};

/**
 * Camera, port, filter and rings as they were answered, with every default filled in and in one fixed form.
 */
export type ResolvedMountingScene = {
    /**
     * What stands between the lens and the water.
     */
    port_kind: PortKind;
    /**
     * How the lens draws.
     */
    lens_kind: LensKind;
    /**
     * Radius of curvature of the dome. Only with `port_kind` `dome`. 20 to 500 mm.
     */
    dome_radius_mm?: number | undefined;
    /**
     * Focal length at the widest setting that you use: the real one, not an equivalent. With `sensor_diagonal_mm`, or beside `field_of_view_deg`. 1 to 300 mm.
     */
    focal_length_mm?: number | undefined;
    /**
     * Diagonal of the picture on the sensor. With `focal_length_mm`. 3 to 80 mm.
     */
    sensor_diagonal_mm?: number | undefined;
    /**
     * Full angle that the lens sees over the picture's diagonal, in air. In place of `focal_length_mm`, or beside it. 1 to 220 deg.
     */
    field_of_view_deg?: number | undefined;
    /**
     * Aperture at which to look at corners and focus. 0.7 to 64. Default 8.
     */
    f_number: number;
    /**
     * Whether the lens comes off the camera, so that something can be put behind it. Default `true`.
     */
    lens_interchangeable: boolean;
    /**
     * Filter thread on the front of the lens; the lens has none when left out. 20 to 150 mm.
     */
    lens_thread_mm?: number | undefined;
    /**
     * Filter thread on the outside of the port; the port has none when left out. 20 to 150 mm.
     */
    port_thread_mm?: number | undefined;
    /**
     * Outer diameter of the port, which a clip or a hinge without a thread goes over. 20 to 400 mm.
     */
    port_outer_diameter_mm?: number | undefined;
    /**
     * What lens is on the outside of the port. Not with a dome. Default `none`.
     */
    wet_lens: 'none' | 'wide' | 'close_up';
    /**
     * How far the front of the lens moves forward from the setting that is described to its longest one: 0 for a fixed focal length, and for a zoom that keeps its length. 0 to 200 mm. Default 0 mm.
     */
    zoom_travel_mm: number;
    /**
     * Free room between the front rim of the lens and the port's glass, at the setting that is described. Not known when left out. 0 to 300 mm.
     */
    lens_port_gap_mm?: number | undefined;
    /**
     * How far inside the lens has its entrance pupil, counted from the lens's front rim, or from the window of a camera with `port_kind` `none`. Assumed when left out; the answer says what. 0.5 to 200 mm.
     */
    entrance_pupil_distance_mm?: number | undefined;
    /**
     * The holder that you want. Without it, or where it does not fit, the answer advises the best one.
     */
    holder?: FilterHolder | undefined;
    /**
     * Inner diameter of the clip, hinge or frame that goes over the port. By default the answer assumes one that fits. 20 to 400 mm.
     */
    holder_inner_diameter_mm?: number | undefined;
    /**
     * Thread of the filter; that of the lens or port is assumed when left out. 20 to 150 mm.
     */
    filter_thread_mm?: number | undefined;
    /**
     * Width of the filter's clear part: for a filter without a thread, or where it is known. A little less than the thread when left out. 5 to 300 mm.
     */
    filter_clear_diameter_mm?: number | undefined;
    /**
     * How far the filter's front rim stands out in front of what it is screwed into. 0.5 to 30 mm. Default 5 mm.
     */
    filter_thickness_mm: number;
    /**
     * What the filter is made of, which decides what it weighs. Default `glass`.
     */
    filter_material: 'glass' | 'resin';
    /**
     * How you want to change the filter under water, if at all. Default `none`.
     */
    filter_change_underwater: FilterChange;
    /**
     * Width of the opening behind the lens that a sheet has to cover, or of the slot that it slides into. With `rear_opening_height_mm`. 5 to 80 mm.
     */
    rear_opening_width_mm?: number | undefined;
    /**
     * Its height. With `rear_opening_width_mm`. 5 to 80 mm.
     */
    rear_opening_height_mm?: number | undefined;
    /**
     * How a sheet stays behind the lens. Default `slot`.
     */
    rear_fixing: RearFixing;
    /**
     * Thickness of a sheet behind the lens. 0.01 to 3 mm. Default 0.1 mm.
     */
    sheet_thickness_mm: number;
    /**
     * Refractive index of the sheet: about 1.5 for gelatine and polyester. 1.3 to 1.8. Default 1.5.
     */
    sheet_refractive_index: number;
    /**
     * Rings that you own, in any order. None by default.
     */
    rings: Array<StepRing>;
    /**
     * Fields that you left out: a default filled them in, or the answer says what it assumes.
     */
    assumed: Array<string>;
};

/**
 * The scene that was answered, with every default filled in and in one fixed form.
 */
export type ResolvedScene = {
    /**
     * The water, by its optical type (Jerlov, edition of 1976). One way to describe the water.
     */
    water_type?: WaterType | undefined;
    /**
     * The water, by its chlorophyll: for open sea, whose colour follows the plankton. One way to describe the water. 0.02 to 20 mg/m3.
     */
    chlorophyll_mg_m3?: number | undefined;
    /**
     * The water, by the depth at which a white disc of 30 cm vanishes from above. With `water_hue`. One way to describe the water. 0.3 to 90 m.
     */
    secchi_depth_m?: number | undefined;
    /**
     * The water, by the horizontal distance at which a dark body vanishes: what divers call visibility. With `water_hue`. One way to describe the water. 0.2 to 120 m.
     */
    visibility_m?: number | undefined;
    /**
     * What divers call the colour of the water, seen horizontally. With `secchi_depth_m` or `visibility_m`.
     */
    water_hue?: WaterHue | undefined;
    /**
     * The water, by its measured diffuse attenuation: 2 to 64 samples, wavelengths rising. One way to describe the water.
     */
    kd_samples?: Array<KdSample> | undefined;
    /**
     * The water, by pictures of one grey card at 2 to 32 depths, at least 2 m apart in all. With `transfer_curve`. One way to describe the water.
     */
    card_samples?: Array<CardSample> | undefined;
    /**
     * How the values of the card were stored. With `card_samples`.
     */
    transfer_curve?: TransferCurve | undefined;
    /**
     * All pictures of the card have the same exposure. With `card_samples`.
     */
    locked_exposure?: boolean | undefined;
    /**
     * All pictures of the card are raw, or have the same white balance. With `card_samples`.
     */
    locked_balance?: boolean | undefined;
    /**
     * Where daylight comes from; `place_time` by default if you give a place or a time. Default `sun`.
     */
    daylight_basis: DaylightBasis;
    /**
     * Height of the sun above the horizon. Only with `daylight_basis` `sun`. 0 to 90 deg. Default 45 deg.
     */
    sun_elevation_deg?: number | undefined;
    /**
     * Latitude, north positive. Only with `daylight_basis` `place_time`. -90 to 90 deg.
     */
    latitude_deg?: number | undefined;
    /**
     * Longitude, east positive. Only with `daylight_basis` `place_time`. -180 to 180 deg.
     */
    longitude_deg?: number | undefined;
    /**
     * Instant with its offset from UTC (RFC 3339). Only with `daylight_basis` `place_time`, in place of `local_time` and `time_zone`.
     */
    time?: string | undefined;
    /**
     * What the clocks at the place show, without offset. Only with `daylight_basis` `place_time`, together with `time_zone`.
     */
    local_time?: string | undefined;
    /**
     * Time zone of `local_time`, by its name in the IANA database.
     */
    time_zone?: string | undefined;
    /**
     * Eighths of the sky covered by cloud. Whole number, 0 to 8 okta. Default 0 okta.
     */
    cloud_oktas: number;
    /**
     * Wind speed 10 m above the sea; it roughens the surface. 0 to 20 m/s. Default 4 m/s.
     */
    wind_speed_m_s: number;
    /**
     * What lies over the diver and cuts daylight; `none` where it is left out. Only with the training, the guide and the backup lights for it.
     */
    overhead?: Overhead | undefined;
    /**
     * Share of open water's daylight at the same depth that comes in, as a card metered there and in the open tells. With `overhang` (0.5 where it is left out), `cavern` (0.1) and `wreck` (0.02). 0.0001 to 1.
     */
    daylight_open_share?: number | undefined;
    /**
     * Thickness of the ice. With `overhead` `ice`; 0.5 m where it is left out. 0.05 to 4 m.
     */
    ice_thickness_m?: number | undefined;
    /**
     * Snow on the ice. With `overhead` `ice`; none where it is left out. 0 to 1 m.
     */
    snow_thickness_m?: number | undefined;
    /**
     * Shallow end of the part of the dive that you film. With `max_depth_m`. This service does not plan dives: the range is that of the model, not advice on depth. 0.1 to 100 m.
     */
    min_depth_m: number;
    /**
     * Deep end of the part of the dive that you film. With `min_depth_m`. This service does not plan dives: the range is that of the model, not advice on depth. 0.1 to 100 m.
     */
    max_depth_m: number;
    /**
     * From the camera to the subject, through water. 0.05 to 20 m. Default 1 m.
     */
    subject_distance_m: number;
    /**
     * Where the filmed side of the subject faces, and so how much daylight falls on it. Default `camera`.
     */
    subject_facing: SubjectFacing;
    /**
     * Whether you can hold a card in front of the subject; `true` by default. With `false` you set the white balance on something at the same depth and distance.
     */
    subject_in_reach?: boolean | undefined;
    /**
     * Where the sun stands against the camera. With the sun behind the camera the subject is brighter and the open water is not. Left out where `camera_heading_deg` says it. A subject that faces `up` or the `sun` (`subject_facing`) is lit from there whichever way the camera looks; the open water behind it still goes by this. Default `behind_camera`.
     */
    sun_side?: SunSide | undefined;
    /**
     * Where the camera looks, from north through east, in place of `sun_side`. Only with `daylight_basis` `place_time`, which says where the sun stands. 0 to 360 deg.
     */
    camera_heading_deg?: number | undefined;
    /**
     * How far the camera looks up (above 0) or down (below 0). Subject and card, where they face the camera, tilt with it, and open water is as bright as it is where the camera looks, up to 35 degrees up. -90 to 90 deg. Default 0 deg.
     */
    camera_tilt_deg: number;
    /**
     * The sea floor below your subject, which lights it from below. Most of what divers film is over a reef (common practice). Default `coral`.
     */
    bottom?: Bottom | undefined;
    /**
     * Measured reflectance of the sea floor, in place of `bottom`: 2 to 401 samples, wavelengths rising.
     */
    bottom_reflectance?: Array<ReflectanceSample> | undefined;
    /**
     * Depth of the sea floor, not above the deepest subject. 3 m below the deepest subject by default. 0.1 to 1000 m.
     */
    bottom_depth_m?: number | undefined;
    /**
     * The kind of camera. It decides how much light a pixel holds, how noisy it is, how many pixels make one pixel of the finished picture, and the limits of aperture and white balance where you do not give them: all from memory of cameras. Default `compact`.
     */
    camera_class: CameraClass;
    /**
     * ISO speed that the camera is fixed at. Free between `min_iso` and `max_iso` when left out. 25 to 409600.
     */
    iso?: number | undefined;
    /**
     * Lowest ISO speed of the camera. 25 to 409600. Default 100.
     */
    min_iso: number;
    /**
     * Highest ISO speed that you accept. 25 to 409600. Default 6400.
     */
    max_iso: number;
    /**
     * Aperture that the lens is fixed at. Free between `min_f_number` and `max_f_number` when left out. 0.7 to 64.
     */
    f_number?: number | undefined;
    /**
     * Widest aperture of the lens. 2.8 by default; by `camera_class` 1.8 for a phone (from memory). 0.7 to 64.
     */
    min_f_number: number;
    /**
     * Narrowest aperture of the lens. 16 by default; by `camera_class` 1.8 for a phone and 2.8 for an action camera, which cannot change it (from memory). 0.7 to 64.
     */
    max_f_number: number;
    /**
     * Exposure time of a frame. Not with `shutter_angle_deg`. 0.00001 to 60 s.
     */
    shutter_s: number;
    /**
     * Frames per second: no exposure can last longer than a frame. Without `shutter_s`, the exposure time follows from it and `shutter_angle_deg`. 1 to 1000. Default 25.
     */
    frame_rate_fps?: number | undefined;
    /**
     * Bits per channel of the recording. Whole number, 8 to 16 bit. Default 8 bit.
     */
    bits: number;
    /**
     * How the recording spreads its code values over light. Default `rec709`.
     */
    recording_curve?: RecordingCurve | undefined;
    /**
     * The recording's own curve, in place of `recording_curve`: 2 to 64 points, light and code values rising (codes by 0.001 at least), from no light to the brightest (`light_share` 0 to 1). Straight between points.
     */
    recording_curve_points?: Array<RecordingPoint> | undefined;
    /**
     * What you do with the pictures afterwards. Filters are judged by the colour error after it. Default `in_camera`.
     */
    finish: Finish;
    /**
     * Whether you set the exposure for the subject, or the camera meters the whole picture on its own. In `auto` it may also shorten the exposure time. Default `manual`.
     */
    exposure_mode: ExposureMode;
    /**
     * How the camera gets its white balance. `auto` takes the mean of subject, sea floor and open water for grey (Buchsbaum 1980), as far as the limits of its balance go. Default `card`.
     */
    white_balance_mode: WhiteBalanceMode;
    /**
     * What you set the white balance to, between its limits. Only, and always, with `white_balance_mode` `kelvin`. 1500 to 20000 K.
     */
    white_balance_kelvin_K?: number | undefined;
    /**
     * Lowest colour temperature that the white balance reaches. 2500 K by default; by `camera_class` 2000 K for a cinema camera (from memory). 1500 to 20000 K.
     */
    white_balance_min_cct_K: number;
    /**
     * Highest colour temperature that the white balance reaches. 10000 K by default; by `camera_class` 8000 K for a phone, 15000 K for a cinema camera (from memory). 1500 to 20000 K.
     */
    white_balance_max_cct_K: number;
    /**
     * Largest distance from the Planckian locus, in CIE 1960 uv, that the white balance can compensate (its tint). 0.03 by default; by `camera_class` 0.02 for a phone or an action camera, 0.05 for a cinema camera (from memory). 0 to 0.1.
     */
    white_balance_max_duv: number;
    /**
     * Colour shift to allow before you set the white balance again (CIEDE2000). By default the model's own, a judgement; the answer says which. 0.5 to 50.
     */
    balance_tolerance_delta_e00?: number | undefined;
    /**
     * Measured sensitivities of your camera, in place of the mean of 11 cameras: 4 to 401 samples, wavelengths rising, from 420 nm or less to 680 nm or more. The channels see nothing beyond the samples, and between 400 and 700 nm at least a 100000th of their own peak, since colour mosaics leak (from memory). The curves are taken as exact.
     */
    sensor_samples?: Array<SensorSample> | undefined;
    /**
     * Kind of the filter on the lens. With `filter_density` or `filter_stops`; no filter when left out.
     */
    filter_kind?: FilterKind | undefined;
    /**
     * Peak optical density of the filter on the lens, above that of its clear glass, in the band that its kind absorbs. With `filter_kind`. Or `filter_stops`. 0.05 to 3.
     */
    filter_density?: number | undefined;
    /**
     * Measured curve of the filter on the lens, in place of kind and density: 2 to 401 samples, wavelengths rising.
     */
    filter_transmittance?: Array<TransmittanceSample> | undefined;
    /**
     * Whether the lens filter can be changed under water. Where it is left out beside a `holder` that flips or clips on, it can, in that way. Default `none`.
     */
    filter_change_underwater: FilterChange;
    /**
     * What you own: filters are then chosen only from it.
     */
    kit?: Array<ResolvedKitItem> | undefined;
    /**
     * By how many stops the video lights should outshine daylight on the subject, in the green channel: `mixed-light` then says how many lumens that needs. -5 to 10 stop.
     */
    wanted_lead_stops?: number | undefined;
    /**
     * From those video lights to the subject. With `wanted_lead_stops`; by default that of the nearest one, or 0.8 m without one. 0.05 to 20 m.
     */
    wanted_lead_distance_m?: number | undefined;
    /**
     * What stands between the lens and the water.
     */
    port_kind?: PortKind | undefined;
    /**
     * How the lens draws.
     */
    lens_kind?: LensKind | undefined;
    /**
     * Radius of curvature of the dome. Only with `port_kind` `dome`. 20 to 500 mm.
     */
    dome_radius_mm?: number | undefined;
    /**
     * Focal length at the widest setting that you use: the real one, not an equivalent. With `sensor_diagonal_mm`, or beside `field_of_view_deg`. 1 to 300 mm.
     */
    focal_length_mm?: number | undefined;
    /**
     * Diagonal of the picture on the sensor. With `focal_length_mm`. 3 to 80 mm.
     */
    sensor_diagonal_mm?: number | undefined;
    /**
     * Full angle that the lens sees over the picture's diagonal, in air. In place of `focal_length_mm`, or beside it. 1 to 220 deg.
     */
    field_of_view_deg?: number | undefined;
    /**
     * Whether the lens comes off the camera, so that something can be put behind it. Default `true`.
     */
    lens_interchangeable?: boolean | undefined;
    /**
     * Filter thread on the front of the lens; the lens has none when left out. 20 to 150 mm.
     */
    lens_thread_mm?: number | undefined;
    /**
     * Filter thread on the outside of the port; the port has none when left out. 20 to 150 mm.
     */
    port_thread_mm?: number | undefined;
    /**
     * Outer diameter of the port, which a clip or a hinge without a thread goes over. 20 to 400 mm.
     */
    port_outer_diameter_mm?: number | undefined;
    /**
     * What lens is on the outside of the port. Not with a dome. Default `none`.
     */
    wet_lens?: 'none' | 'wide' | 'close_up' | undefined;
    /**
     * How far the front of the lens moves forward from the setting that is described to its longest one: 0 for a fixed focal length, and for a zoom that keeps its length. 0 to 200 mm. Default 0 mm.
     */
    zoom_travel_mm?: number | undefined;
    /**
     * Free room between the front rim of the lens and the port's glass, at the setting that is described. Not known when left out. 0 to 300 mm.
     */
    lens_port_gap_mm?: number | undefined;
    /**
     * How far inside the lens has its entrance pupil, counted from the lens's front rim, or from the window of a camera with `port_kind` `none`. Assumed when left out; the answer says what. 0.5 to 200 mm.
     */
    entrance_pupil_distance_mm?: number | undefined;
    /**
     * The holder that you want. Without it, or where it does not fit, the answer advises the best one.
     */
    holder?: FilterHolder | undefined;
    /**
     * Inner diameter of the clip, hinge or frame that goes over the port. By default the answer assumes one that fits. 20 to 400 mm.
     */
    holder_inner_diameter_mm?: number | undefined;
    /**
     * Thread of the filter; that of the lens or port is assumed when left out. 20 to 150 mm.
     */
    filter_thread_mm?: number | undefined;
    /**
     * Width of the filter's clear part: for a filter without a thread, or where it is known. A little less than the thread when left out. 5 to 300 mm.
     */
    filter_clear_diameter_mm?: number | undefined;
    /**
     * How far the filter's front rim stands out in front of what it is screwed into. 0.5 to 30 mm. Default 5 mm.
     */
    filter_thickness_mm?: number | undefined;
    /**
     * What the filter is made of, which decides what it weighs. Default `glass`.
     */
    filter_material?: 'glass' | 'resin' | undefined;
    /**
     * Width of the opening behind the lens that a sheet has to cover, or of the slot that it slides into. With `rear_opening_height_mm`. 5 to 80 mm.
     */
    rear_opening_width_mm?: number | undefined;
    /**
     * Its height. With `rear_opening_width_mm`. 5 to 80 mm.
     */
    rear_opening_height_mm?: number | undefined;
    /**
     * How a sheet stays behind the lens. Default `slot`.
     */
    rear_fixing?: RearFixing | undefined;
    /**
     * Thickness of a sheet behind the lens. 0.01 to 3 mm. Default 0.1 mm.
     */
    sheet_thickness_mm?: number | undefined;
    /**
     * Refractive index of the sheet: about 1.5 for gelatine and polyester. 1.3 to 1.8. Default 1.5.
     */
    sheet_refractive_index?: number | undefined;
    /**
     * Rings that you own, in any order. None by default.
     */
    rings?: Array<StepRing> | undefined;
    /**
     * Video lights that are switched on; empty when there are none.
     */
    lamps: Array<ResolvedLamp>;
    /**
     * The filters that `filter_samples` were found to be; absent without any.
     */
    filter_fits?: Array<FilterFit> | undefined;
    /**
     * Fields that you left out: a default filled them in, or the answer says what it assumes.
     */
    assumed: Array<string>;
};

/**
 * The answers do not fit the paper. `errors` names the answer that belongs to no question of the paper, or that its question does not take.
 */
export type ResponsesDoNotFitProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/responses-do-not-fit';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 422;
    /**
     * The kind of problem, for programs.
     */
    code: 'responses_do_not_fit';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
    /**
     * Everything that is wrong, up to 50 errors; `detail` says if there are more.
     */
    errors: Array<FieldError>;
};

/**
 * The way over rings from the thread of lens or port to that of the filter.
 */
export type RingChain = {
    /**
     * Whether your rings lead from lens or port to the filter without cutting off the corners.
     */
    closes: boolean;
    /**
     * Thread of the lens or port. 20 to 150 mm.
     */
    from_mm: number;
    /**
     * Thread of the filter. 20 to 150 mm.
     */
    to_mm: number;
    /**
     * Rings in the order in which they are screwed on; empty where none is needed or the chain does not close.
     */
    rings: Array<ChainRing>;
    /**
     * By how much they move the filter forward together. 0 to 1600 mm.
     */
    total_thickness_mm: number;
    /**
     * Ring to buy: thread that it screws into; present where the chain does not close, or narrows on its way. 20 to 150 mm.
     */
    buy_from_mm?: number | undefined;
    /**
     * Ring to buy: thread that it offers. 20 to 150 mm.
     */
    buy_to_mm?: number | undefined;
};

/**
 * A step ring in use.
 */
export type RingInUse = {
    /**
     * The ring, by its `id`.
     */
    ring_id: string;
    /**
     * Whose it is.
     */
    from: PieceFrom;
};

/**
 * A ring with which a filter of the shelf would fit guests whom none fits now.
 */
export type RingToGet = {
    /**
     * Thread that it screws into. 20 to 150 mm.
     */
    from_mm: number;
    /**
     * Thread that it offers. 20 to 150 mm.
     */
    to_mm: number;
    /**
     * Whom it would serve.
     */
    guest_ids: Array<string>;
};

/**
 * The second best choice, and by how much it loses.
 */
export type RunnerUp = {
    /**
     * The second best choice.
     */
    filter_kind: FilterVerdict;
    /**
     * Its density; absent for `none` and for a measured filter. 0 to 3.
     */
    filter_density?: number | undefined;
    /**
     * Its `id`, where it comes from the scene's `kit`.
     */
    filter_id?: string | undefined;
    /**
     * Its mean colour error over the range (CIEDE2000).
     */
    colour_error_delta_e00: ColourErrorEstimate;
    /**
     * Its colour error minus that of the advised choice (CIEDE2000).
     */
    loses_by_delta_e00: ColourErrorDifferenceEstimate;
    /**
     * Probability that it is the better choice. 0 to 1.
     */
    probability_better: number;
};

/**
 * What you film, where and with what. Needs exactly one way to describe the water, and a depth; all else has a default or may be left out.
 */
export type SceneFields = {
    /**
     * The water, by its optical type (Jerlov, edition of 1976). One way to describe the water.
     */
    water_type?: WaterType | undefined;
    /**
     * The water, by its chlorophyll: for open sea, whose colour follows the plankton. One way to describe the water. 0.02 to 20 mg/m3.
     */
    chlorophyll_mg_m3?: number | undefined;
    /**
     * The water, by the depth at which a white disc of 30 cm vanishes from above. With `water_hue`. One way to describe the water. 0.3 to 90 m.
     */
    secchi_depth_m?: number | undefined;
    /**
     * The water, by the horizontal distance at which a dark body vanishes: what divers call visibility. With `water_hue`. One way to describe the water. 0.2 to 120 m.
     */
    visibility_m?: number | undefined;
    /**
     * What divers call the colour of the water, seen horizontally. With `secchi_depth_m` or `visibility_m`.
     */
    water_hue?: WaterHue | undefined;
    /**
     * The water, by its measured diffuse attenuation: 2 to 64 samples, wavelengths rising. One way to describe the water.
     */
    kd_samples?: Array<KdSample> | undefined;
    /**
     * The water, by pictures of one grey card at 2 to 32 depths, at least 2 m apart in all. With `transfer_curve`. One way to describe the water.
     */
    card_samples?: Array<CardSample> | undefined;
    /**
     * How the values of the card were stored. With `card_samples`.
     */
    transfer_curve?: TransferCurve | undefined;
    /**
     * All pictures of the card have the same exposure. With `card_samples`.
     */
    locked_exposure?: boolean | undefined;
    /**
     * All pictures of the card are raw, or have the same white balance. With `card_samples`.
     */
    locked_balance?: boolean | undefined;
    /**
     * Where daylight comes from; `place_time` by default if you give a place or a time. Default `sun`.
     */
    daylight_basis?: DaylightBasis | undefined;
    /**
     * Height of the sun above the horizon. Only with `daylight_basis` `sun`. 0 to 90 deg. Default 45 deg.
     */
    sun_elevation_deg?: number | undefined;
    /**
     * Latitude, north positive. Only with `daylight_basis` `place_time`. -90 to 90 deg.
     */
    latitude_deg?: number | undefined;
    /**
     * Longitude, east positive. Only with `daylight_basis` `place_time`. -180 to 180 deg.
     */
    longitude_deg?: number | undefined;
    /**
     * Instant with its offset from UTC (RFC 3339). Only with `daylight_basis` `place_time`, in place of `local_time` and `time_zone`.
     */
    time?: string | undefined;
    /**
     * What the clocks at the place show, without offset. Only with `daylight_basis` `place_time`, together with `time_zone`.
     */
    local_time?: string | undefined;
    /**
     * Time zone of `local_time`, by its name in the IANA database.
     */
    time_zone?: string | undefined;
    /**
     * Eighths of the sky covered by cloud. Whole number, 0 to 8 okta. Default 0 okta.
     */
    cloud_oktas?: number | undefined;
    /**
     * Wind speed 10 m above the sea; it roughens the surface. 0 to 20 m/s. Default 4 m/s.
     */
    wind_speed_m_s?: number | undefined;
    /**
     * What lies over the diver and cuts daylight; `none` where it is left out. Only with the training, the guide and the backup lights for it.
     */
    overhead?: Overhead | undefined;
    /**
     * Share of open water's daylight at the same depth that comes in, as a card metered there and in the open tells. With `overhang` (0.5 where it is left out), `cavern` (0.1) and `wreck` (0.02). 0.0001 to 1.
     */
    daylight_open_share?: number | undefined;
    /**
     * Thickness of the ice. With `overhead` `ice`; 0.5 m where it is left out. 0.05 to 4 m.
     */
    ice_thickness_m?: number | undefined;
    /**
     * Snow on the ice. With `overhead` `ice`; none where it is left out. 0 to 1 m.
     */
    snow_thickness_m?: number | undefined;
    /**
     * Depth of the subject: short for equal `min_depth_m` and `max_depth_m`. This service does not plan dives: the range is that of the model, not advice on depth. 0.1 to 100 m.
     */
    depth_m?: number | undefined;
    /**
     * Shallow end of the part of the dive that you film. With `max_depth_m`. This service does not plan dives: the range is that of the model, not advice on depth. 0.1 to 100 m.
     */
    min_depth_m?: number | undefined;
    /**
     * Deep end of the part of the dive that you film. With `min_depth_m`. This service does not plan dives: the range is that of the model, not advice on depth. 0.1 to 100 m.
     */
    max_depth_m?: number | undefined;
    /**
     * From the camera to the subject, through water. 0.05 to 20 m. Default 1 m.
     */
    subject_distance_m?: number | undefined;
    /**
     * Where the filmed side of the subject faces, and so how much daylight falls on it. Default `camera`.
     */
    subject_facing?: SubjectFacing | undefined;
    /**
     * Whether you can hold a card in front of the subject; `true` by default. With `false` you set the white balance on something at the same depth and distance.
     */
    subject_in_reach?: boolean | undefined;
    /**
     * Where the sun stands against the camera. With the sun behind the camera the subject is brighter and the open water is not. Left out where `camera_heading_deg` says it. A subject that faces `up` or the `sun` (`subject_facing`) is lit from there whichever way the camera looks; the open water behind it still goes by this. Default `behind_camera`.
     */
    sun_side?: SunSide | undefined;
    /**
     * Where the camera looks, from north through east, in place of `sun_side`. Only with `daylight_basis` `place_time`, which says where the sun stands. 0 to 360 deg.
     */
    camera_heading_deg?: number | undefined;
    /**
     * How far the camera looks up (above 0) or down (below 0). Subject and card, where they face the camera, tilt with it, and open water is as bright as it is where the camera looks, up to 35 degrees up. -90 to 90 deg. Default 0 deg.
     */
    camera_tilt_deg?: number | undefined;
    /**
     * The sea floor below your subject, which lights it from below. Most of what divers film is over a reef (common practice). Default `coral`.
     */
    bottom?: Bottom | undefined;
    /**
     * Measured reflectance of the sea floor, in place of `bottom`: 2 to 401 samples, wavelengths rising.
     */
    bottom_reflectance?: Array<ReflectanceSample> | undefined;
    /**
     * Depth of the sea floor, not above the deepest subject. 3 m below the deepest subject by default. 0.1 to 1000 m.
     */
    bottom_depth_m?: number | undefined;
    /**
     * The kind of camera. It decides how much light a pixel holds, how noisy it is, how many pixels make one pixel of the finished picture, and the limits of aperture and white balance where you do not give them: all from memory of cameras. Default `compact`.
     */
    camera_class?: CameraClass | undefined;
    /**
     * ISO speed that the camera is fixed at. Free between `min_iso` and `max_iso` when left out. 25 to 409600.
     */
    iso?: number | undefined;
    /**
     * Lowest ISO speed of the camera. 25 to 409600. Default 100.
     */
    min_iso?: number | undefined;
    /**
     * Highest ISO speed that you accept. 25 to 409600. Default 6400.
     */
    max_iso?: number | undefined;
    /**
     * Aperture that the lens is fixed at. Free between `min_f_number` and `max_f_number` when left out. 0.7 to 64.
     */
    f_number?: number | undefined;
    /**
     * Widest aperture of the lens. 2.8 by default; by `camera_class` 1.8 for a phone (from memory). 0.7 to 64.
     */
    min_f_number?: number | undefined;
    /**
     * Narrowest aperture of the lens. 16 by default; by `camera_class` 1.8 for a phone and 2.8 for an action camera, which cannot change it (from memory). 0.7 to 64.
     */
    max_f_number?: number | undefined;
    /**
     * Exposure time of a frame. Not with `shutter_angle_deg`. 0.00001 to 60 s.
     */
    shutter_s?: number | undefined;
    /**
     * Frames per second: no exposure can last longer than a frame. Without `shutter_s`, the exposure time follows from it and `shutter_angle_deg`. 1 to 1000. Default 25.
     */
    frame_rate_fps?: number | undefined;
    /**
     * Part of a frame's time that is exposed, as an angle: 360 for all of it. With `frame_rate_fps` in place of `shutter_s`. 1 to 360 deg. Default 180 deg.
     */
    shutter_angle_deg?: number | undefined;
    /**
     * Bits per channel of the recording. Whole number, 8 to 16 bit. Default 8 bit.
     */
    bits?: number | undefined;
    /**
     * How the recording spreads its code values over light. Default `rec709`.
     */
    recording_curve?: RecordingCurve | undefined;
    /**
     * The recording's own curve, in place of `recording_curve`: 2 to 64 points, light and code values rising (codes by 0.001 at least), from no light to the brightest (`light_share` 0 to 1). Straight between points.
     */
    recording_curve_points?: Array<RecordingPoint> | undefined;
    /**
     * What you do with the pictures afterwards. Filters are judged by the colour error after it. Default `in_camera`.
     */
    finish?: Finish | undefined;
    /**
     * Whether you set the exposure for the subject, or the camera meters the whole picture on its own. In `auto` it may also shorten the exposure time. Default `manual`.
     */
    exposure_mode?: ExposureMode | undefined;
    /**
     * How the camera gets its white balance. `auto` takes the mean of subject, sea floor and open water for grey (Buchsbaum 1980), as far as the limits of its balance go. Default `card`.
     */
    white_balance_mode?: WhiteBalanceMode | undefined;
    /**
     * What you set the white balance to, between its limits. Only, and always, with `white_balance_mode` `kelvin`. 1500 to 20000 K.
     */
    white_balance_kelvin_K?: number | undefined;
    /**
     * Lowest colour temperature that the white balance reaches. 2500 K by default; by `camera_class` 2000 K for a cinema camera (from memory). 1500 to 20000 K.
     */
    white_balance_min_cct_K?: number | undefined;
    /**
     * Highest colour temperature that the white balance reaches. 10000 K by default; by `camera_class` 8000 K for a phone, 15000 K for a cinema camera (from memory). 1500 to 20000 K.
     */
    white_balance_max_cct_K?: number | undefined;
    /**
     * Largest distance from the Planckian locus, in CIE 1960 uv, that the white balance can compensate (its tint). 0.03 by default; by `camera_class` 0.02 for a phone or an action camera, 0.05 for a cinema camera (from memory). 0 to 0.1.
     */
    white_balance_max_duv?: number | undefined;
    /**
     * Colour shift to allow before you set the white balance again (CIEDE2000). By default the model's own, a judgement; the answer says which. 0.5 to 50.
     */
    balance_tolerance_delta_e00?: number | undefined;
    /**
     * Measured sensitivities of your camera, in place of the mean of 11 cameras: 4 to 401 samples, wavelengths rising, from 420 nm or less to 680 nm or more. The channels see nothing beyond the samples, and between 400 and 700 nm at least a 100000th of their own peak, since colour mosaics leak (from memory). The curves are taken as exact.
     */
    sensor_samples?: Array<SensorSample> | undefined;
    /**
     * Kind of the filter on the lens. With `filter_density` or `filter_stops`; no filter when left out.
     */
    filter_kind?: FilterKind | undefined;
    /**
     * Peak optical density of the filter on the lens, above that of its clear glass, in the band that its kind absorbs. With `filter_kind`. Or `filter_stops`. 0.05 to 3.
     */
    filter_density?: number | undefined;
    /**
     * Measured curve of the filter on the lens, in place of kind and density: 2 to 401 samples, wavelengths rising.
     */
    filter_transmittance?: Array<TransmittanceSample> | undefined;
    /**
     * Whether the lens filter can be changed under water. Where it is left out beside a `holder` that flips or clips on, it can, in that way. Default `none`.
     */
    filter_change_underwater?: FilterChange | undefined;
    /**
     * Strength of the filter on the lens in stops, in the band that its kind absorbs, in place of `filter_density`: a stop is a density of 0.3. With `filter_kind`. 0.17 to 9.9.
     */
    filter_stops?: number | undefined;
    /**
     * The filter on the lens, by a grey card photographed with and without it, in place of kind, density and curve: 1 to 16 pairs of pictures. Resolved to the kind and density that lose the same; `filter_fits` of the scene says how well.
     */
    filter_samples?: Array<FilterSample> | undefined;
    /**
     * What you own: filters are then chosen only from it. Any filter by default.
     */
    kit?: Array<KitItem> | undefined;
    /**
     * Video lights that are switched on; none when left out or empty.
     */
    lamps?: Array<Lamp> | undefined;
    /**
     * Luminous flux of one video light, without a filter. 1 to 200000 lm.
     */
    lamp_flux_lm?: number | undefined;
    /**
     * How many of these video lights are on. Whole number, 1 to 16. Default 1.
     */
    lamp_count?: number | undefined;
    /**
     * Full angle of the beam. 5 to 180 deg. Default 100 deg.
     */
    lamp_beam_angle_deg?: number | undefined;
    /**
     * Where the beam angle was measured: water narrows the beam behind a flat port. Default `water`.
     */
    lamp_beam_angle_medium?: BeamMedium | undefined;
    /**
     * Colour temperature of the video light. Not with `lamp_led`. 1500 to 20000 K. Default 5600 K.
     */
    lamp_cct_K?: number | undefined;
    /**
     * Spectrum of the video light, by the name of a CIE LED illuminant. In place of `lamp_cct_K`.
     */
    lamp_led?: LedName | undefined;
    /**
     * From the video light to the subject, through water. 0.05 to 20 m.
     */
    lamp_distance_m?: number | undefined;
    /**
     * Kind of the filter in front of the video light. With `lamp_filter_density`; no filter when left out.
     */
    lamp_filter_kind?: FilterKind | undefined;
    /**
     * Peak optical density of the filter in front of the video light, above that of its clear glass, in the band that its kind absorbs. With `lamp_filter_kind`. 0.05 to 3.
     */
    lamp_filter_density?: number | undefined;
    /**
     * By how many stops the video lights should outshine daylight on the subject, in the green channel: `mixed-light` then says how many lumens that needs. -5 to 10 stop.
     */
    wanted_lead_stops?: number | undefined;
    /**
     * From those video lights to the subject. With `wanted_lead_stops`; by default that of the nearest one, or 0.8 m without one. 0.05 to 20 m.
     */
    wanted_lead_distance_m?: number | undefined;
    /**
     * What stands between the lens and the water.
     */
    port_kind?: PortKind | undefined;
    /**
     * How the lens draws.
     */
    lens_kind?: LensKind | undefined;
    /**
     * Radius of curvature of the dome. Only with `port_kind` `dome`. 20 to 500 mm.
     */
    dome_radius_mm?: number | undefined;
    /**
     * Focal length at the widest setting that you use: the real one, not an equivalent. With `sensor_diagonal_mm`, or beside `field_of_view_deg`. 1 to 300 mm.
     */
    focal_length_mm?: number | undefined;
    /**
     * Diagonal of the picture on the sensor. With `focal_length_mm`. 3 to 80 mm.
     */
    sensor_diagonal_mm?: number | undefined;
    /**
     * Full angle that the lens sees over the picture's diagonal, in air. In place of `focal_length_mm`, or beside it. 1 to 220 deg.
     */
    field_of_view_deg?: number | undefined;
    /**
     * Whether the lens comes off the camera, so that something can be put behind it. Default `true`.
     */
    lens_interchangeable?: boolean | undefined;
    /**
     * Filter thread on the front of the lens; the lens has none when left out. 20 to 150 mm.
     */
    lens_thread_mm?: number | undefined;
    /**
     * Filter thread on the outside of the port; the port has none when left out. 20 to 150 mm.
     */
    port_thread_mm?: number | undefined;
    /**
     * Outer diameter of the port, which a clip or a hinge without a thread goes over. 20 to 400 mm.
     */
    port_outer_diameter_mm?: number | undefined;
    /**
     * What lens is on the outside of the port. Not with a dome. Default `none`.
     */
    wet_lens?: 'none' | 'wide' | 'close_up' | undefined;
    /**
     * How far the front of the lens moves forward from the setting that is described to its longest one: 0 for a fixed focal length, and for a zoom that keeps its length. 0 to 200 mm. Default 0 mm.
     */
    zoom_travel_mm?: number | undefined;
    /**
     * Free room between the front rim of the lens and the port's glass, at the setting that is described. Not known when left out. 0 to 300 mm.
     */
    lens_port_gap_mm?: number | undefined;
    /**
     * How far inside the lens has its entrance pupil, counted from the lens's front rim, or from the window of a camera with `port_kind` `none`. Assumed when left out; the answer says what. 0.5 to 200 mm.
     */
    entrance_pupil_distance_mm?: number | undefined;
    /**
     * The holder that you want. Without it, or where it does not fit, the answer advises the best one.
     */
    holder?: FilterHolder | undefined;
    /**
     * Inner diameter of the clip, hinge or frame that goes over the port. By default the answer assumes one that fits. 20 to 400 mm.
     */
    holder_inner_diameter_mm?: number | undefined;
    /**
     * Thread of the filter; that of the lens or port is assumed when left out. 20 to 150 mm.
     */
    filter_thread_mm?: number | undefined;
    /**
     * Width of the filter's clear part: for a filter without a thread, or where it is known. A little less than the thread when left out. 5 to 300 mm.
     */
    filter_clear_diameter_mm?: number | undefined;
    /**
     * How far the filter's front rim stands out in front of what it is screwed into. 0.5 to 30 mm. Default 5 mm.
     */
    filter_thickness_mm?: number | undefined;
    /**
     * What the filter is made of, which decides what it weighs. Default `glass`.
     */
    filter_material?: 'glass' | 'resin' | undefined;
    /**
     * Width of the opening behind the lens that a sheet has to cover, or of the slot that it slides into. With `rear_opening_height_mm`. 5 to 80 mm.
     */
    rear_opening_width_mm?: number | undefined;
    /**
     * Its height. With `rear_opening_width_mm`. 5 to 80 mm.
     */
    rear_opening_height_mm?: number | undefined;
    /**
     * How a sheet stays behind the lens. Default `slot`.
     */
    rear_fixing?: RearFixing | undefined;
    /**
     * Thickness of a sheet behind the lens. 0.01 to 3 mm. Default 0.1 mm.
     */
    sheet_thickness_mm?: number | undefined;
    /**
     * Refractive index of the sheet: about 1.5 for gelatine and polyester. 1.3 to 1.8. Default 1.5.
     */
    sheet_refractive_index?: number | undefined;
    /**
     * Rings that you own, in any order. None by default.
     */
    rings?: Array<StepRing> | undefined;
    /**
     * Answer only if the model has this version (as `model.version` of an earlier answer says); otherwise a 409 problem.
     */
    expect_model_version?: string | undefined;
    /**
     * Language of the texts, in the answer and in problems. Left out, it is the one that `Accept-Language` likes best, and English where it likes none.
     */
    language?: Language | undefined;
    /**
     * Units of depths, distances and visibility in the texts of answers and pictures. Fields keep the units in their names, and so does a problem, which is about fields; threads, rings and sheets are in mm always. Default `metric`.
     */
    units?: TextUnits | undefined;
};

/**
 * What a camera's channels see of light of one wavelength, per watt, before any white balance.
 */
export type SensorSample = {
    /**
     * Wavelength of the light, in air. 380 to 780 nm.
     */
    wavelength_nm: number;
    /**
     * Sensitivity of the red channel, as a share of the highest of all three. 0 to 1.
     */
    red: number;
    /**
     * Sensitivity of the green channel, as a share of the highest of all three. 0 to 1.
     */
    green: number;
    /**
     * Sensitivity of the blue channel, as a share of the highest of all three. 0 to 1.
     */
    blue: number;
};

/**
 * Whether far things stay sharp with a sheet behind the lens: always, since nothing behind this dome appears farther than the lens can focus (`in_reach`); since depth of field hides the blur (`within_depth_of_field`); or only with a lens that turns past infinity (`past_infinity_needed`).
 */
export type SheetFocus = 'in_reach' | 'within_depth_of_field' | 'past_infinity_needed';

/**
 * A filter of the shop's shelf: as in a `kit`, with what it screws into or is held by, and how many there are.
 */
export type ShelfPiece = {
    /**
     * Your own name for it; answers use it.
     */
    id: string;
    /**
     * What it is.
     */
    item: KitItemName;
    /**
     * Kind of a filter. With `filter_density` or `filter_stops`.
     */
    filter_kind?: FilterKind | undefined;
    /**
     * Peak optical density of a filter, above that of its clear glass, in the band that its kind absorbs. With `filter_kind`. 0.05 to 3.
     */
    filter_density?: number | undefined;
    /**
     * Measured curve of a filter, in place of kind and density: 2 to 401 samples, wavelengths rising. Answers call it by the kind whose curve is most like it.
     */
    filter_transmittance?: Array<TransmittanceSample> | undefined;
    /**
     * Strength of a filter in stops, in the band that its kind absorbs, in place of `filter_density`: a stop is a density of 0.3. With `filter_kind`. 0.17 to 9.9.
     */
    filter_stops?: number | undefined;
    /**
     * A filter, by a grey card photographed with and without it, in place of kind, density and curve: 1 to 16 pairs of pictures. Resolved to the kind and density that lose the same; `filter_fits` of the scene says how well.
     */
    filter_samples?: Array<FilterSample> | undefined;
    /**
     * What the piece is made for. Left out, it is a round filter, for the thread of a lens or a port.
     */
    holder?: FilterHolder | undefined;
    /**
     * Inner diameter of the clip, hinge or frame that goes over the port. By default the answer assumes one that fits. 20 to 400 mm.
     */
    holder_inner_diameter_mm?: number | undefined;
    /**
     * Thread of the filter; that of the lens or port is assumed when left out. 20 to 150 mm.
     */
    filter_thread_mm?: number | undefined;
    /**
     * Width of the filter's clear part: for a filter without a thread, or where it is known. A little less than the thread when left out. 5 to 300 mm.
     */
    filter_clear_diameter_mm?: number | undefined;
    /**
     * How far the filter's front rim stands out in front of what it is screwed into. 0.5 to 30 mm. Default 5 mm.
     */
    filter_thickness_mm?: number | undefined;
    /**
     * What the filter is made of, which decides what it weighs. Default `glass`.
     */
    filter_material?: 'glass' | 'resin' | undefined;
    /**
     * Thickness of a sheet behind the lens. 0.01 to 3 mm. Default 0.1 mm.
     */
    sheet_thickness_mm?: number | undefined;
    /**
     * Refractive index of the sheet: about 1.5 for gelatine and polyester. 1.3 to 1.8. Default 1.5.
     */
    sheet_refractive_index?: number | undefined;
    /**
     * How many of it there are. Whole number, 1 to 40.
     */
    quantity: number;
};

/**
 * A ring of the shop that leads from one thread to another, and how many there are.
 */
export type ShelfRing = {
    /**
     * Your own name for it; answers use it.
     */
    id: string;
    /**
     * Thread that screws into the lens, the port or the ring before. 20 to 150 mm.
     */
    from_mm: number;
    /**
     * Thread that it offers to the next ring or to the filter. 20 to 150 mm.
     */
    to_mm: number;
    /**
     * By how much it moves forward what is screwed into it. 0.5 to 50 mm.
     */
    thickness_mm: number;
    /**
     * How many of them there are. Whole number, 1 to 40.
     */
    quantity: number;
};

/**
 * Signal over noise, as percentiles of what it may be.
 */
export type SignalToNoiseEstimate = {
    /**
     * 10th percentile. 0 to 1000000.
     */
    low: number;
    /**
     * 50th percentile. 0 to 1000000.
     */
    likely: number;
    /**
     * 90th percentile. 0 to 1000000.
     */
    high: number;
};

/**
 * What a slate comes in.
 */
export type SlateFormat = 'pdf' | 'svg' | 'png';

/**
 * What a slate comes in.
 */
export type SlateLook = {
    /**
     * A PDF to print, vectors whose texts are text, or pixels. Default `pdf`.
     */
    format?: SlateFormat | undefined;
};

/**
 * What a part of the model is.
 */
export type SourceKind = 'table' | 'formula' | 'assumption';

/**
 * What to set a white balance on without a card.
 */
export type StandIn = 'white_slate' | 'pale_sand' | 'grey_glove' | 'hand';

/**
 * A sentence as its code, and all that it is made of.
 */
export type Statement = {
    /**
     * Stable code, for programs and translations. The examples are all the codes of today, and more may come.
     */
    code: string;
    /**
     * All that the text is made of, so that you can put it in other words or in another language: numbers to six decimals, and names. Which ones depends on the code; empty where there are none. More codes and parameters may come.
     */
    parameters: {
        [key: string]: unknown;
    };
};

/**
 * A ring that leads from one thread to another.
 */
export type StepRing = {
    /**
     * Your own name for it; answers use it.
     */
    id: string;
    /**
     * Thread that screws into the lens, the port or the ring before. 20 to 150 mm.
     */
    from_mm: number;
    /**
     * Thread that it offers to the next ring or to the filter. 20 to 150 mm.
     */
    to_mm: number;
    /**
     * By how much it moves forward what is screwed into it. 0.5 to 50 mm.
     */
    thickness_mm: number;
};

/**
 * Where the filmed side of the subject faces: `up`, the `camera` (wherever that looks) or the `sun`.
 */
export type SubjectFacing = 'up' | 'camera' | 'sun';

/**
 * Where the sun stands, seen from above: `behind_camera` (within 60 degrees of straight behind it), `beside` it, `in_frame` (within 60 degrees of where it looks), or `unknown`: any of them.
 */
export type SunSide = 'behind_camera' | 'beside' | 'in_frame' | 'unknown';

/**
 * Something to take from the shelf.
 */
export type TakeItem = {
    /**
     * Your id of it in `kit`; absent for what the kit lacks.
     */
    id?: string | undefined;
    /**
     * Stable code, for programs and translations. The examples are all the codes of today, and more may come.
     */
    code: string;
    /**
     * What to take.
     */
    what: string;
    /**
     * What it is for.
     */
    why: string;
    /**
     * All that the text is made of, so that you can put it in other words or in another language: numbers to six decimals, and names. Which ones depends on the code; empty where there are none. More codes and parameters may come.
     */
    parameters: {
        [key: string]: unknown;
    };
};

/**
 * Units of lengths in texts: `metric`, or `imperial` with feet and inches.
 */
export type TextUnits = 'metric' | 'imperial';

/**
 * Whether what was done is known from your `events`, or taken from the `plan` for the dive.
 */
export type TimelineBasis = 'events' | 'plan';

/**
 * A clip with its light and how its balance stands.
 */
export type TimelineClip = {
    /**
     * Your name for it.
     */
    id?: string | undefined;
    /**
     * When it begins, since the dive began. 0 to 43200 s.
     */
    from_s: number;
    /**
     * When it ends. 0 to 43200 s.
     */
    to_s: number;
    /**
     * When it begins, by the camera's clock.
     */
    from_clock: string;
    /**
     * When it ends, by the camera's clock.
     */
    to_clock: string;
    /**
     * Its shallowest moment. 0.1 to 100 m.
     */
    min_depth_m: number;
    /**
     * Its deepest moment. 0.1 to 100 m.
     */
    max_depth_m: number;
    /**
     * The filter is on the lens.
     */
    through_filter: boolean;
    /**
     * Exposure value at ISO 100 that the camera meters on the subject, as the mean over the clip.
     */
    exposure_value_ev100: ExposureValueEstimate;
    /**
     * From its darkest moment to its brightest. 0 to 200 stop.
     */
    exposure_span_stops: number;
    /**
     * ISO to set, exactly: on a dial, the nearest third of a stop. 1 to 1000000000000.
     */
    iso: number;
    /**
     * f-number to set, exactly: on a dial, the nearest third of a stop. 0 to 1000000.
     */
    f_number: number;
    /**
     * Exposure time. 0 to 60 s.
     */
    shutter_s: number;
    /**
     * How far these settings are off: above 0 too bright at the least sensitive ones, below 0 too dark at the most sensitive ones. -200 to 200 stop.
     */
    off_by_stops: number;
    /**
     * Red that is left, of what is just below the surface, as the camera's red channel sees it: the mean over the clip.
     */
    red_left_percent: PercentEstimate;
    /**
     * How the last balance stands.
     */
    balance: ClipBalance;
    /**
     * Cast on grey with the last balance, at the moment when a new one would gain most (CIEDE2000).
     */
    cast_delta_e00?: ColourErrorEstimate | undefined;
    /**
     * Cast on grey that a balance made at that moment would leave, as far as the camera reaches.
     */
    cast_if_balanced_delta_e00: ColourErrorEstimate;
    /**
     * How the balance stands, and why.
     */
    reason: Reason;
};

/**
 * A prediction marked by the cards of the dive.
 */
export type TimelineMark = {
    /**
     * What is marked.
     */
    marks: MarkedThing;
    /**
     * Which of the `card_frames`, counted from 0, where it is about one of them. Whole number, 0 to 32.
     */
    frame?: number | undefined;
    /**
     * Depth of that frame. 0.1 to 100 m.
     */
    depth_m?: number | undefined;
    /**
     * What was predicted: the unit is that of what is marked.
     */
    predicted: MarkPrediction;
    /**
     * What the cards show, in the same unit.
     */
    measured: MarkMeasurement;
    /**
     * For an exposure: the exposure value at ISO 100 that the camera was set to. -200 to 60 EV.
     */
    used_ev100?: number | undefined;
    /**
     * How the two go together.
     */
    verdict: MarkVerdict;
    /**
     * The same in words, and what to do next time.
     */
    reason: Reason;
};

/**
 * A moment of the dive at which the camera is to be set, or was set.
 */
export type TimelineMoment = {
    /**
     * Time since the dive began. 0 to 43200 s.
     */
    time_s: number;
    /**
     * The same by the dive's clock.
     */
    dive_clock: string;
    /**
     * And by the camera's.
     */
    camera_clock: string;
    /**
     * Depth then. 0.1 to 100 m.
     */
    depth_m: number;
    /**
     * What is to be done, or was done.
     */
    action: MomentAction;
    /**
     * Exposure value at ISO 100 that the camera meters on the subject from then on.
     */
    exposure_value_ev100: ExposureValueEstimate;
    /**
     * ISO to set, exactly: on a dial, the nearest third of a stop. 1 to 1000000000000.
     */
    iso: number;
    /**
     * f-number to set, exactly: on a dial, the nearest third of a stop. 0 to 1000000.
     */
    f_number: number;
    /**
     * Exposure time. 0 to 60 s.
     */
    shutter_s: number;
    /**
     * How far these settings are off: above 0 too bright at the least sensitive ones, below 0 too dark at the most sensitive ones. -200 to 200 stop.
     */
    off_by_stops: number;
    /**
     * For a balance: cast on grey with the balance before it (CIEDE2000); absent where there was none.
     */
    cast_before_delta_e00?: ColourErrorEstimate | undefined;
    /**
     * For a balance: cast on grey that it leaves, as far as the camera reaches.
     */
    cast_after_delta_e00?: ColourErrorEstimate | undefined;
    /**
     * Why.
     */
    reason: Reason;
};

/**
 * The token has expired. Papers are marked until their `expires`. Ask for a new one.
 */
export type TokenExpiredProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/token-expired';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 422;
    /**
     * The kind of problem, for programs.
     */
    code: 'token_expired';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
    /**
     * Everything that is wrong, up to 50 errors; `detail` says if there are more.
     */
    errors: Array<FieldError>;
};

/**
 * The token is not one of this service, or was altered. Send the token as `/v1/quiz-items` gave it. A token stops working when its key is taken out of use.
 */
export type TokenRefusedProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/token-refused';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 422;
    /**
     * The kind of problem, for programs.
     */
    code: 'token_refused';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
    /**
     * Everything that is wrong, up to 50 errors; `detail` says if there are more.
     */
    errors: Array<FieldError>;
};

/**
 * You have asked for too much. Each request costs a part of your budget. `RateLimit-Policy` gives the budget and its seconds, `RateLimit` what is left. Try again after the time in `Retry-After`.
 */
export type TooManyRequestsProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/too-many-requests';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 429;
    /**
     * The kind of problem, for programs.
     */
    code: 'too_many_requests';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
};

/**
 * How the values of a picture were stored: `linear` (raw), `srgb` (IEC 61966-2-1) or `rec709` (ITU-R BT.709).
 */
export type TransferCurve = 'linear' | 'srgb' | 'rec709';

/**
 * What the filter should let through at one wavelength.
 */
export type TransmittancePoint = {
    /**
     * Wavelength of the light, in air. 300 to 1000 nm.
     */
    wavelength_nm: number;
    /**
     * Share of the light at that wavelength that passes. 0 to 1.
     */
    transmittance: number;
};

/**
 * What a filter lets through at one wavelength.
 */
export type TransmittanceSample = {
    /**
     * Wavelength of the light, in air. 380 to 780 nm.
     */
    wavelength_nm: number;
    /**
     * Share of the light at that wavelength that passes the filter. 0 to 1.
     */
    transmittance: number;
};

/**
 * The filters of every guest on every dive of a trip, and what goes into each crate and on the boat.
 */
export type TripAdviceAnswer = {
    /**
     * The trip.
     */
    id: string;
    /**
     * Each dive, in your order.
     */
    dives: Array<TripDivePlan>;
    /**
     * Each guest's crate, in your order.
     */
    crates: Array<GuestCrate>;
    /**
     * The packing list of the boat.
     */
    packing: TripPacking;
    /**
     * Why the answer is what it is, most important first.
     */
    reasons: Array<Reason>;
    /**
     * Cautions to heed before acting on it.
     */
    cautions: Array<Caution>;
    /**
     * What makes the answer uncertain, largest share first.
     */
    uncertainty: Array<UncertaintyCause>;
    /**
     * The model that answered.
     */
    model: ModelVersion;
};

/**
 * The dives of a trip, the guests with their cameras, and the filters that they share.
 */
export type TripAdviceRequest = {
    /**
     * Your own name for the trip. Events of a calendar are known by it, so keep it.
     */
    id: string;
    /**
     * The dives, 1 to 31.
     */
    dives: Array<TripDive>;
    /**
     * The guests with cameras, 1 to 40. Dives times different cameras times different filters make 5000 at most.
     */
    guests: Array<TripGuest>;
    /**
     * Filters to share, up to 40 kinds. None by default.
     */
    shelf?: Array<ShelfPiece> | undefined;
    /**
     * Step rings to share, up to 24 kinds. None by default.
     */
    rings?: Array<ShelfRing> | undefined;
    /**
     * The guest, by `id`, whose calendar `text/calendar` is to be, in that guest's language. Left out, it is that of the crew, with everyone's filters.
     */
    calendar_for?: string | undefined;
    /**
     * Language of the texts, in the answer and in problems. Left out, it is the one that `Accept-Language` likes best, and English where it likes none.
     */
    language?: Language | undefined;
    /**
     * Units of depths, distances and visibility in the texts of answers and pictures. Fields keep the units in their names, and so does a problem, which is about fields; threads, rings and sheets are in mm always. Default `metric`.
     */
    units?: TextUnits | undefined;
    /**
     * Answer only if the model has this version (as `model.version` of an earlier answer says); otherwise a 409 problem.
     */
    expect_model_version?: string | undefined;
};

/**
 * A dive of the trip.
 */
export type TripDive = {
    /**
     * Your own name for the dive; answers use it.
     */
    id: string;
    /**
     * What guests call the site; a calendar shows it. The `id` by default.
     */
    name?: string | undefined;
    /**
     * When the dive begins, by the clocks of the site, without offset.
     */
    local_time: string;
    /**
     * Time zone of the site, by its name in the IANA database.
     */
    time_zone: string;
    /**
     * How long the calendar keeps free for it. No advice on how long to dive. Whole number, 5 to 240 min. Default 60 min.
     */
    duration_min?: number | undefined;
    /**
     * Water, place or sun, depths and view: a scene as `filter-choice` takes it, without time, camera, filters and video lights. With `daylight_basis` `none`, or at night, nothing is handed out.
     */
    scene: {
        [key: string]: unknown;
    };
};

/**
 * A dive, and what each guest mounts and sets.
 */
export type TripDivePlan = {
    /**
     * The dive.
     */
    id: string;
    /**
     * What guests call the site.
     */
    name?: string | undefined;
    /**
     * When it begins, by the clocks of the site.
     */
    local_time: string;
    /**
     * The zone of these.
     */
    time_zone: string;
    /**
     * When it begins, in UTC (RFC 3339).
     */
    time: string;
    /**
     * How long the calendar keeps free for it. Whole number, 5 to 240 min.
     */
    duration_min: number;
    /**
     * Its scene, with every default filled in.
     */
    scene: {
        [key: string]: unknown;
    };
    /**
     * The guests' plans, in your order.
     */
    plans: Array<GuestPlan>;
};

/**
 * A guest with a camera.
 */
export type TripGuest = {
    /**
     * Your own name for the guest, who need not be known by it; answers use it.
     */
    id: string;
    /**
     * Language of the guest's own texts. That of the answer by default.
     */
    language?: Language | undefined;
    /**
     * The camera: the fields of a scene that say how it exposes, sets its white balance and records; and, from `port_kind` and `lens_kind` on, what a filter is mounted on, with the guest's own `rings`. Without these two every piece is taken to fit.
     */
    camera: {
        [key: string]: unknown;
    };
    /**
     * What the guest owns. None by default.
     */
    kit?: Array<TripPiece> | undefined;
};

/**
 * The packing list of the boat.
 */
export type TripPacking = {
    /**
     * Filters of the shelf that go on the boat: as many as are used at a time, at most.
     */
    pieces: Array<PackedPiece>;
    /**
     * Rings of the shop that go with them.
     */
    rings: Array<PackedRing>;
    /**
     * Rings that it is worth getting.
     */
    rings_to_get: Array<RingToGet>;
    /**
     * What of the shelf nobody needs.
     */
    not_needed: Array<PackedPiece>;
};

/**
 * An item that a guest owns: as in a `kit`, with what a filter screws into or is held by.
 */
export type TripPiece = {
    /**
     * Your own name for it; answers use it.
     */
    id: string;
    /**
     * What it is.
     */
    item: KitItemName;
    /**
     * Kind of a filter. With `filter_density` or `filter_stops`.
     */
    filter_kind?: FilterKind | undefined;
    /**
     * Peak optical density of a filter, above that of its clear glass, in the band that its kind absorbs. With `filter_kind`. 0.05 to 3.
     */
    filter_density?: number | undefined;
    /**
     * Measured curve of a filter, in place of kind and density: 2 to 401 samples, wavelengths rising. Answers call it by the kind whose curve is most like it.
     */
    filter_transmittance?: Array<TransmittanceSample> | undefined;
    /**
     * Strength of a filter in stops, in the band that its kind absorbs, in place of `filter_density`: a stop is a density of 0.3. With `filter_kind`. 0.17 to 9.9.
     */
    filter_stops?: number | undefined;
    /**
     * A filter, by a grey card photographed with and without it, in place of kind, density and curve: 1 to 16 pairs of pictures. Resolved to the kind and density that lose the same; `filter_fits` of the scene says how well.
     */
    filter_samples?: Array<FilterSample> | undefined;
    /**
     * What the piece is made for. Left out, it is a round filter, for the thread of a lens or a port.
     */
    holder?: FilterHolder | undefined;
    /**
     * Inner diameter of the clip, hinge or frame that goes over the port. By default the answer assumes one that fits. 20 to 400 mm.
     */
    holder_inner_diameter_mm?: number | undefined;
    /**
     * Thread of the filter; that of the lens or port is assumed when left out. 20 to 150 mm.
     */
    filter_thread_mm?: number | undefined;
    /**
     * Width of the filter's clear part: for a filter without a thread, or where it is known. A little less than the thread when left out. 5 to 300 mm.
     */
    filter_clear_diameter_mm?: number | undefined;
    /**
     * How far the filter's front rim stands out in front of what it is screwed into. 0.5 to 30 mm. Default 5 mm.
     */
    filter_thickness_mm?: number | undefined;
    /**
     * What the filter is made of, which decides what it weighs. Default `glass`.
     */
    filter_material?: 'glass' | 'resin' | undefined;
    /**
     * Thickness of a sheet behind the lens. 0.01 to 3 mm. Default 0.1 mm.
     */
    sheet_thickness_mm?: number | undefined;
    /**
     * Refractive index of the sheet: about 1.5 for gelatine and polyester. 1.3 to 1.8. Default 1.5.
     */
    sheet_refractive_index?: number | undefined;
};

/**
 * How the camera is set at a depth.
 */
export type TripSetting = {
    /**
     * Depth. 0.1 to 100 m.
     */
    depth_m: number;
    /**
     * ISO to set there, exactly: on a dial, the nearest third of a stop. 1 to 1000000000000.
     */
    iso: number;
    /**
     * f-number to set there. 0 to 1000000.
     */
    f_number: number;
    /**
     * Exposure time there. 0 to 60 s.
     */
    shutter_s: number;
    /**
     * How far these settings are off: above 0 too bright, below 0 too dark. -200 to 200 stop.
     */
    off_by_stops: number;
};

/**
 * The instructor's key is missing or wrong. Packages with keys, and marks before a paper closes, are for instructors: send `Authorization: Bearer` with the instructor's key of this service.
 */
export type UnauthorizedProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/unauthorized';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 401;
    /**
     * The kind of problem, for programs.
     */
    code: 'unauthorized';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
};

/**
 * The service cannot answer now. The service is starting, stopping or overloaded. Try again after the time in `Retry-After`.
 */
export type UnavailableProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/unavailable';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 503;
    /**
     * The kind of problem, for programs.
     */
    code: 'unavailable';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
};

/**
 * A cause of the answer's uncertainty.
 */
export type UncertaintyCause = {
    /**
     * Stable code of the cause. The examples are all the codes of today, and more may come.
     */
    cause: string;
    /**
     * The cause in words.
     */
    text: string;
    /**
     * Share of the variance of the answer's main quantity that it explains. 0 to 1.
     */
    share: number;
    /**
     * What to measure or to send to make the answer surer.
     */
    how_to_shrink: string;
    /**
     * All that the text is made of, so that you can put it in other words or in another language: numbers to six decimals, and names. Which ones depends on the code; empty where there are none. More codes and parameters may come.
     */
    parameters: {
        [key: string]: unknown;
    };
};

/**
 * The service does not understand this type of body. Send `Content-Type: application/json`, without a content encoding.
 */
export type UnsupportedMediaTypeProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/unsupported-media-type';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 415;
    /**
     * The kind of problem, for programs.
     */
    code: 'unsupported_media_type';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
};

/**
 * The URL is too long. A URL can have up to 4096 characters. Send the scene with POST instead: same schema, same answer.
 */
export type UrlTooLongProblem = {
    /**
     * The kind of problem, as a reference to a page that explains it.
     */
    type: '/problems/url-too-long';
    /**
     * The kind of problem in a sentence, in the language that was asked for.
     */
    title: string;
    /**
     * The HTTP status.
     */
    status: 414;
    /**
     * The kind of problem, for programs.
     */
    code: 'url_too_long';
    /**
     * What went wrong this time.
     */
    detail: string;
    /**
     * Id of the request, as in the header `X-Request-Id` and in the log of the service.
     */
    request_id?: string | undefined;
};

/**
 * What filter and rings cost the corners; the lens's own falloff comes on top.
 */
export type Vignetting = {
    /**
     * From where the first ring or the filter sits back to the entrance pupil; its spread is what makes the rest uncertain.
     */
    pupil_distance_mm: LengthEstimate;
    /**
     * Whether that distance is assumed, since the scene has no `entrance_pupil_distance_mm`.
     */
    pupil_distance_assumed: boolean;
    /**
     * Angle between the axis and the corner, in air at the lens. 0 to 220 deg.
     */
    corner_half_field_deg: number;
    /**
     * Angle from the axis up to which filter and rings take no light, in air at the lens.
     */
    clear_half_field_deg: AngleEstimate;
    /**
     * Light that filter and rings leave in the corner.
     */
    corner_light_percent: WholePercentEstimate;
    /**
     * The same as a loss; absent where the corner may be black.
     */
    corner_loss_stops?: LossEstimate | undefined;
    /**
     * The same in a word, by what is likely.
     */
    grade: VignettingGrade;
};

/**
 * How dark filter and rings make the corner: `clear` below 0.1 stop, `slight` below 0.5, `dark` beyond, `black` where no light is left.
 */
export type VignettingGrade = 'clear' | 'slight' | 'dark' | 'black';

/**
 * What divers call the colour of the water, seen horizontally.
 */
export type WaterHue = 'blue' | 'blue_green' | 'green' | 'brown';

/**
 * Optical water type by N. G. Jerlov, edition of 1976: I (clearest) to III for the open ocean, 1C to 9C (most turbid) for coasts.
 */
export type WaterType = 'I' | 'IA' | 'IB' | 'II' | 'III' | '1C' | '3C' | '5C' | '7C' | '9C';

/**
 * An optical water type.
 */
export type WaterTypeInfo = {
    /**
     * Name of the type.
     */
    water_type: WaterType;
    /**
     * The water as a diver would describe it.
     */
    description: string;
    /**
     * Edition of the classification.
     */
    edition: string;
    /**
     * Wavelengths of the curve, rising.
     */
    wavelengths_nm: Array<number>;
    /**
     * Diffuse attenuation of downwelling light, one for each of `wavelengths_nm`.
     */
    kd_per_m: Array<number>;
    /**
     * Where it comes from.
     */
    sources: Array<string>;
};

/**
 * The optical water types that a scene can name.
 */
export type WaterTypesAnswer = {
    /**
     * The optical water types, clearest first.
     */
    water_types: Array<WaterTypeInfo>;
    /**
     * Version of the model: year, month and count. It changes when figures of answers do, not with their wording; you can compare two answers of the same version.
     */
    model_version: string;
};

/**
 * A way out, and what it costs.
 */
export type WayOut = {
    /**
     * What to do.
     */
    way: WayOutKind;
    /**
     * Stable code, for programs and translations. The examples are all the codes of today, and more may come.
     */
    code: string;
    /**
     * The same in a sentence.
     */
    text: string;
    /**
     * All that the text is made of, so that you can put it in other words or in another language: numbers to six decimals, and names. Which ones depends on the code; empty where there are none. More codes and parameters may come.
     */
    parameters: {
        [key: string]: unknown;
    };
    /**
     * Colour difference between the two lights that then remains (CIEDE2000). 0 to 1000.
     */
    split_left_delta_e00: number;
    /**
     * Light on the subject lost by it; negative when it gains light. -10000 to 10000 stop.
     */
    cost_stops: number;
    /**
     * `lamp_filter`: kind of the filter to put on each video light.
     */
    lamp_filter_kind?: FilterKind | undefined;
    /**
     * `lamp_filter`: its density. 0 to 3.
     */
    lamp_filter_density?: number | undefined;
    /**
     * `lamp_filter`: what it lets through in the red channel, relative to its clearest channel. 0 to 1.
     */
    lamp_filter_red_transmittance?: number | undefined;
    /**
     * `lamp_filter`: the same in the green channel. 0 to 1.
     */
    lamp_filter_green_transmittance?: number | undefined;
    /**
     * `lamp_filter`: the same in the blue channel. 0 to 1.
     */
    lamp_filter_blue_transmittance?: number | undefined;
    /**
     * `lamp_filter`: the same as a curve, to ask a maker for.
     */
    lamp_filter_transmittance?: Array<TransmittancePoint> | undefined;
    /**
     * `lamp_filter`: luminous flux left of each of the scene's video lights.
     */
    lamp_flux_left_lm?: Array<number> | undefined;
    /**
     * `come_closer`: distance from the video lights at which they lead. 0 to 20 m.
     */
    lamp_distance_m?: number | undefined;
};

/**
 * A way out of two lights of different colour.
 */
export type WayOutKind = 'lamps_off' | 'lamp_filter' | 'balance_to_lamps' | 'balance_to_both' | 'come_closer';

/**
 * A way to make up for lost light, or to get rid of too much.
 */
export type WayToPay = {
    /**
     * What to change.
     */
    way: WayToPayKind;
    /**
     * Stable code, for programs and translations. The examples are all the codes of today, and more may come.
     */
    code: string;
    /**
     * The same in a sentence.
     */
    text: string;
    /**
     * All that the text is made of, so that you can put it in other words or in another language: numbers to six decimals, and names. Which ones depends on the code; empty where there are none. More codes and parameters may come.
     */
    parameters: {
        [key: string]: unknown;
    };
    /**
     * Light or sensitivity that it gains; negative where it cuts light. -10000 to 10000 stop.
     */
    gains_stops: number;
    /**
     * Whether it is enough on its own.
     */
    enough: boolean;
    /**
     * `iso`: the speed that it comes to. 1 to 1000000000000.
     */
    iso?: number | undefined;
    /**
     * `aperture`: the f-number that it comes to. 0 to 1000000.
     */
    f_number?: number | undefined;
    /**
     * `shutter`: the exposure time that it comes to. 0 to 60 s.
     */
    shutter_s?: number | undefined;
    /**
     * `neutral_density`: its density. 0 to 100.
     */
    neutral_density?: number | undefined;
    /**
     * `shallower`: the depth that it comes to. 0.1 to 100 m.
     */
    depth_m?: number | undefined;
    /**
     * `higher_sun`: the height of the sun that it comes to. 0 to 90 deg.
     */
    sun_elevation_deg?: number | undefined;
    /**
     * `lamp`: flux that a video light with a beam of 100 degrees would need at 0.8 m. 0 to 1000000000000 lm.
     */
    lamp_flux_lm?: number | undefined;
};

/**
 * Something that makes up for lost light, or cuts an excess of it.
 */
export type WayToPayKind = 'iso' | 'aperture' | 'shutter' | 'lamp' | 'higher_sun' | 'shallower' | 'filter_off' | 'neutral_density';

/**
 * Weight, as percentiles of what it may be.
 */
export type WeightEstimate = {
    /**
     * 10th percentile. 0 to 10000 g.
     */
    low: number;
    /**
     * 50th percentile. 0 to 10000 g.
     */
    likely: number;
    /**
     * 90th percentile. 0 to 10000 g.
     */
    high: number;
};

/**
 * How to set a white balance, whether the camera can, and at which depths to set it again.
 */
export type WhiteBalanceAnswer = {
    /**
     * The scene that was answered.
     */
    scene: ResolvedScene;
    /**
     * How to set the white balance.
     */
    method: BalanceMethod;
    /**
     * Depths at which to set a white balance on the way down; the first is where to start.
     */
    balance_depths_descending_m: Array<number>;
    /**
     * Depths at which to set a white balance on the way up.
     */
    balance_depths_ascending_m: Array<number>;
    /**
     * Colour shift allowed between two white balances (CIEDE2000; the model's own is a judgement). 0 to 1000.
     */
    balance_tolerance_delta_e00: number;
    /**
     * For video lights: their own colour temperature, to set without a card; absent otherwise. 0 to 1000000 K.
     */
    lamp_kelvin_setting_K?: number | undefined;
    /**
     * Colour cast that this Kelvin preset leaves on a grey card (CIEDE2000); absent with it.
     */
    lamp_kelvin_leaves_delta_e00?: ColourErrorEstimate | undefined;
    /**
     * Without a card, what to set the white balance on, the least colour cast first; absent where you set it on nothing.
     */
    stand_ins?: Array<BalanceOnStandIn> | undefined;
    /**
     * Where a white card (90 % of a perfect white) lies on a histogram or zebras, of full codes, by the recording curve; absent for `log`, where makers differ. 0 to 100 %.
     */
    white_card_level_percent?: number | undefined;
    /**
     * Where a grey card of 18 % lies on a histogram or zebras, of full codes, by the recording curve; absent for `log`, where makers differ. 0 to 100 %.
     */
    grey_card_level_percent?: number | undefined;
    /**
     * The white balance at depths from shallow to deep.
     */
    depths: Array<BalanceAtDepth>;
    /**
     * What to do, in order.
     */
    procedure: Array<string>;
    /**
     * The same, each step as its code and what its text is made of.
     */
    procedure_steps: Array<Statement>;
    /**
     * Notes on the card: what stands in for it, where it lies on a histogram, and what to do with it in the edit where the camera falls short; empty where you use no card.
     */
    card_notes: Array<CardNote>;
    /**
     * Why the answer is what it is, most important first.
     */
    reasons: Array<Reason>;
    /**
     * Cautions to heed before acting on it.
     */
    cautions: Array<Caution>;
    /**
     * What makes the answer uncertain, largest share first.
     */
    uncertainty: Array<UncertaintyCause>;
    /**
     * The model that answered.
     */
    model: ModelVersion;
    /**
     * Pictures of this answer, and files made of it; empty where there are none. Addresses are relative, the same online and offline: offline they lead to any service.
     */
    links: Array<Link>;
};

/**
 * How the camera gets its white balance: `card` (measured on a white or grey card at depth), `kelvin` (set to `white_balance_kelvin_K` and left there), `auto` (chosen by the camera).
 */
export type WhiteBalanceMode = 'card' | 'kelvin' | 'auto';

/**
 * Share in percent, as percentiles of what it may be.
 */
export type WholePercentEstimate = {
    /**
     * 10th percentile. 0 to 100 %.
     */
    low: number;
    /**
     * 50th percentile. 0 to 100 %.
     */
    likely: number;
    /**
     * 90th percentile. 0 to 100 %.
     */
    high: number;
};

/**
 * What light is looked for: `natural_colour` of the subject by daylight, a `sunlit_background` of bright open water, or daylight so low that video lights lead (`lamps_lead`).
 */
export type WindowAim = 'natural_colour' | 'sunlit_background' | 'lamps_lead';

/** Some fields of `T`, given. */
type Given<T, K extends keyof T> = { [P in K]-?: NonNullable<T[P]> };

/** Fields that do not go with what is given; compilers show why. */
type Without<K extends PropertyKey, Why extends string> = { [P in K]?: Why | undefined };

type CardSampleWhy1 = "iso, shutter_s and f_number go together.";

type CardSampleWhy2 = "red_gain, green_gain and blue_gain go together.";

/** Given: `iso`, `shutter_s`, `f_number`. */
export interface CardWithExposure extends Given<CardSampleFields, "iso" | "shutter_s" | "f_number"> {}

/** None of `iso`, `shutter_s`, `f_number`. */
export interface CardWithoutExposure extends Without<"iso" | "shutter_s" | "f_number", CardSampleWhy1> {}

/** Given: `red_gain`, `green_gain`, `blue_gain`. */
export interface CardWithGains extends Given<CardSampleFields, "red_gain" | "green_gain" | "blue_gain"> {}

/** None of `red_gain`, `green_gain`, `blue_gain`. */
export interface CardWithoutGains extends Without<"red_gain" | "green_gain" | "blue_gain", CardSampleWhy2> {}

/** The fields of a `CardSample` that go with whatever else is given. */
export interface CardSampleRest extends Omit<CardSampleFields, "iso" | "shutter_s" | "f_number" | "red_gain" | "green_gain" | "blue_gain"> {}

/**
 * A grey card photographed at one depth, in daylight alone.
 *
 * iso, shutter_s and f_number go together.
 * red_gain, green_gain and blue_gain go together.
 */
export type CardSample = CardSampleRest & (CardWithExposure | CardWithoutExposure) & (CardWithGains | CardWithoutGains);

type KitItemWhy1 = "A filter needs filter_kind with filter_density or filter_stops, filter_transmittance, or filter_samples; a video light has none of them.";

/** Given: `item`. */
export interface OwnedLight extends Given<KitItemFields, "item">, Without<"filter_samples" | "filter_transmittance" | "filter_kind" | "filter_stops" | "filter_density", KitItemWhy1> {
  item: "lamp";
}

/** Given: `item`, `filter_samples`. */
export interface OwnedFilterBySamples extends Given<KitItemFields, "item" | "filter_samples">, Without<"filter_transmittance" | "filter_kind" | "filter_stops" | "filter_density", KitItemWhy1> {
  item: "lens_filter" | "lamp_filter";
}

/** Given: `item`, `filter_transmittance`. */
export interface OwnedFilterByCurve extends Given<KitItemFields, "item" | "filter_transmittance">, Without<"filter_samples" | "filter_kind" | "filter_stops" | "filter_density", KitItemWhy1> {
  item: "lens_filter" | "lamp_filter";
}

/** Given: `item`, `filter_kind`, `filter_stops`. */
export interface OwnedFilterByStops extends Given<KitItemFields, "item" | "filter_kind" | "filter_stops">, Without<"filter_samples" | "filter_transmittance" | "filter_density", KitItemWhy1> {
  item: "lens_filter" | "lamp_filter";
}

/** Given: `item`, `filter_kind`, `filter_density`. */
export interface OwnedFilterOfDensity extends Given<KitItemFields, "item" | "filter_kind" | "filter_density">, Without<"filter_samples" | "filter_transmittance" | "filter_stops", KitItemWhy1> {
  item: "lens_filter" | "lamp_filter";
}

/** The fields of a `KitItem` that go with whatever else is given. */
export interface KitItemRest extends Omit<KitItemFields, "item" | "filter_samples" | "filter_transmittance" | "filter_kind" | "filter_stops" | "filter_density"> {}

/**
 * An item that you own.
 *
 * A filter needs filter_kind with filter_density or filter_stops, filter_transmittance, or filter_samples; a video light has none of them.
 */
export type KitItem = KitItemRest & (OwnedLight | OwnedFilterBySamples | OwnedFilterByCurve | OwnedFilterByStops | OwnedFilterOfDensity);

type LampWhy1 = "filter_kind and filter_density go together.";

type LampWhy2 = "Give the colour of a light in one way: cct_K, or led.";

/** Given: `filter_kind`, `filter_density`. */
export interface FilteredLight extends Given<LampFields, "filter_kind" | "filter_density"> {}

/** None of `filter_kind`, `filter_density`. */
export interface UnfilteredLight extends Without<"filter_kind" | "filter_density", LampWhy1> {}

/** Given: `led`. */
export interface LightByLed extends Given<LampFields, "led">, Without<"cct_K", LampWhy2> {}

/** None of `led`. Optional: `cct_K`. */
export interface LightByTemperature extends Pick<LampFields, "cct_K">, Without<"led", LampWhy2> {}

/** The fields of a `Lamp` that go with whatever else is given. */
export interface LampRest extends Omit<LampFields, "filter_kind" | "filter_density" | "led" | "cct_K"> {}

/**
 * Equal video lights at one distance, switched on.
 *
 * filter_kind and filter_density go together.
 * Give the colour of a light in one way: cct_K, or led.
 */
export type Lamp = LampRest & (FilteredLight | UnfilteredLight) & (LightByLed | LightByTemperature);

type MountingSceneWhy1 = "Say how much the lens sees: field_of_view_deg, or focal_length_mm with sensor_diagonal_mm.";

type MountingSceneWhy2 = "dome_radius_mm goes with port_kind dome.";

type MountingSceneWhy3 = "rear_opening_width_mm and rear_opening_height_mm go together.";

/** Given: `focal_length_mm`, `sensor_diagonal_mm`. */
export interface LensByFocalLength extends Given<MountingSceneFields, "focal_length_mm" | "sensor_diagonal_mm">, Without<"field_of_view_deg", MountingSceneWhy1> {}

/** Given: `field_of_view_deg`. Optional: `focal_length_mm`, `sensor_diagonal_mm`. */
export interface LensByView extends Given<MountingSceneFields, "field_of_view_deg">, Pick<MountingSceneFields, "focal_length_mm" | "sensor_diagonal_mm"> {}

/** Given: `port_kind`. Optional: `dome_radius_mm`. */
export interface DomePort extends Given<MountingSceneFields, "port_kind">, Pick<MountingSceneFields, "dome_radius_mm"> {
  port_kind: "dome";
}

/** Given: `port_kind`. */
export interface OtherPort extends Given<MountingSceneFields, "port_kind">, Without<"dome_radius_mm", MountingSceneWhy2> {
  port_kind: "flat" | "none";
}

/** Given: `rear_opening_width_mm`, `rear_opening_height_mm`. */
export interface MeasuredRearOpening extends Given<MountingSceneFields, "rear_opening_width_mm" | "rear_opening_height_mm"> {}

/** None of `rear_opening_width_mm`, `rear_opening_height_mm`. */
export interface NoRearOpening extends Without<"rear_opening_width_mm" | "rear_opening_height_mm", MountingSceneWhy3> {}

/** The fields of a `MountingScene` that go with whatever else is given. */
export interface MountingSceneRest extends Omit<MountingSceneFields, "focal_length_mm" | "sensor_diagonal_mm" | "field_of_view_deg" | "port_kind" | "dome_radius_mm" | "rear_opening_width_mm" | "rear_opening_height_mm"> {}

/**
 * Camera, port, filter and rings. Needs the kinds of port and lens, and what the lens sees: a field of view, or a focal length with the sensor's diagonal.
 *
 * Say how much the lens sees: field_of_view_deg, or focal_length_mm with sensor_diagonal_mm.
 * dome_radius_mm goes with port_kind dome.
 * rear_opening_width_mm and rear_opening_height_mm go together.
 */
export type MountingScene = MountingSceneRest & (LensByFocalLength | LensByView) & (DomePort | OtherPort) & (MeasuredRearOpening | NoRearOpening);

type SceneWhy1 = "Describe the water in one way: water_type, or visibility_m with water_hue, or secchi_depth_m with water_hue, or chlorophyll_mg_m3, or kd_samples, or card_samples with transfer_curve.";

type SceneWhy2 = "Give one depth, depth_m, or two, min_depth_m and max_depth_m.";

type SceneWhy3 = "Give daylight in one way: sun_elevation_deg, or a place (latitude_deg, longitude_deg) with time, or with local_time and time_zone, or daylight_basis none. camera_heading_deg needs place and time.";

type SceneWhy4 = "Give the filter on the lens in one way: filter_kind with filter_density or filter_stops, filter_transmittance, or filter_samples.";

type SceneWhy5 = "Give video lights in one way: `lamps`, or lamp_flux_lm with lamp_distance_m and the other lamp_ fields.";

type SceneWhy6 = "Say what a filter is mounted on with port_kind, lens_kind and what the lens sees: field_of_view_deg, or focal_length_mm with sensor_diagonal_mm.";

/** Given: `card_samples`, `transfer_curve`. Optional: `locked_exposure`, `locked_balance`. */
export interface WaterByCard extends Given<SceneFields, "card_samples" | "transfer_curve">, Pick<SceneFields, "locked_exposure" | "locked_balance">, Without<"kd_samples" | "visibility_m" | "water_hue" | "secchi_depth_m" | "chlorophyll_mg_m3" | "water_type", SceneWhy1> {}

/** Given: `kd_samples`. */
export interface WaterByAttenuation extends Given<SceneFields, "kd_samples">, Without<"card_samples" | "transfer_curve" | "locked_exposure" | "locked_balance" | "visibility_m" | "water_hue" | "secchi_depth_m" | "chlorophyll_mg_m3" | "water_type", SceneWhy1> {}

/** Given: `visibility_m`, `water_hue`. */
export interface WaterByVisibility extends Given<SceneFields, "visibility_m" | "water_hue">, Without<"card_samples" | "transfer_curve" | "locked_exposure" | "locked_balance" | "kd_samples" | "secchi_depth_m" | "chlorophyll_mg_m3" | "water_type", SceneWhy1> {}

/** Given: `secchi_depth_m`, `water_hue`. */
export interface WaterBySecchiDepth extends Given<SceneFields, "secchi_depth_m" | "water_hue">, Without<"card_samples" | "transfer_curve" | "locked_exposure" | "locked_balance" | "kd_samples" | "visibility_m" | "chlorophyll_mg_m3" | "water_type", SceneWhy1> {}

/** Given: `chlorophyll_mg_m3`. */
export interface WaterByChlorophyll extends Given<SceneFields, "chlorophyll_mg_m3">, Without<"card_samples" | "transfer_curve" | "locked_exposure" | "locked_balance" | "kd_samples" | "visibility_m" | "water_hue" | "secchi_depth_m" | "water_type", SceneWhy1> {}

/** Given: `water_type`. */
export interface WaterByType extends Given<SceneFields, "water_type">, Without<"card_samples" | "transfer_curve" | "locked_exposure" | "locked_balance" | "kd_samples" | "visibility_m" | "water_hue" | "secchi_depth_m" | "chlorophyll_mg_m3", SceneWhy1> {}

/** Given: `min_depth_m`, `max_depth_m`. */
export interface DepthRange extends Given<SceneFields, "min_depth_m" | "max_depth_m">, Without<"depth_m", SceneWhy2> {}

/** Given: `depth_m`. */
export interface OneDepth extends Given<SceneFields, "depth_m">, Without<"min_depth_m" | "max_depth_m", SceneWhy2> {}

/** Given: `daylight_basis`. */
export interface DaylightAbsent extends Given<SceneFields, "daylight_basis">, Without<"latitude_deg" | "longitude_deg" | "local_time" | "time_zone" | "camera_heading_deg" | "time" | "sun_elevation_deg", SceneWhy3> {
  daylight_basis: "none";
}

/** Given: `latitude_deg`, `longitude_deg`, `local_time`, `time_zone`. Optional: `daylight_basis`, `camera_heading_deg`. */
export interface DaylightByClock extends Given<SceneFields, "latitude_deg" | "longitude_deg" | "local_time" | "time_zone">, Pick<SceneFields, "daylight_basis" | "camera_heading_deg">, Without<"time" | "sun_elevation_deg", SceneWhy3> {
  daylight_basis?: "place_time" | undefined;
}

/** Given: `latitude_deg`, `longitude_deg`, `time`. Optional: `daylight_basis`, `camera_heading_deg`. */
export interface DaylightByInstant extends Given<SceneFields, "latitude_deg" | "longitude_deg" | "time">, Pick<SceneFields, "daylight_basis" | "camera_heading_deg">, Without<"local_time" | "time_zone" | "sun_elevation_deg", SceneWhy3> {
  daylight_basis?: "place_time" | undefined;
}

/** None of `latitude_deg`, `longitude_deg`, `local_time`, `time_zone`, `camera_heading_deg`, `time`. Optional: `daylight_basis`, `sun_elevation_deg`. */
export interface DaylightBySun extends Pick<SceneFields, "daylight_basis" | "sun_elevation_deg">, Without<"latitude_deg" | "longitude_deg" | "local_time" | "time_zone" | "camera_heading_deg" | "time", SceneWhy3> {
  daylight_basis?: "sun" | undefined;
}

/** Given: `filter_samples`. */
export interface LensFilterBySamples extends Given<SceneFields, "filter_samples">, Without<"filter_transmittance" | "filter_kind" | "filter_stops" | "filter_density", SceneWhy4> {}

/** Given: `filter_transmittance`. */
export interface LensFilterByCurve extends Given<SceneFields, "filter_transmittance">, Without<"filter_samples" | "filter_kind" | "filter_stops" | "filter_density", SceneWhy4> {}

/** Given: `filter_kind`, `filter_stops`. */
export interface LensFilterByStops extends Given<SceneFields, "filter_kind" | "filter_stops">, Without<"filter_samples" | "filter_transmittance" | "filter_density", SceneWhy4> {}

/** Given: `filter_kind`, `filter_density`. */
export interface LensFilterOfDensity extends Given<SceneFields, "filter_kind" | "filter_density">, Without<"filter_samples" | "filter_transmittance" | "filter_stops", SceneWhy4> {}

/** None of `filter_samples`, `filter_transmittance`, `filter_kind`, `filter_stops`, `filter_density`. */
export interface NoLensFilter extends Without<"filter_samples" | "filter_transmittance" | "filter_kind" | "filter_stops" | "filter_density", SceneWhy4> {}

/** Given: `lamps`. */
export interface LightsListed extends Given<SceneFields, "lamps">, Without<"lamp_flux_lm" | "lamp_distance_m" | "lamp_count" | "lamp_beam_angle_deg" | "lamp_beam_angle_medium" | "lamp_cct_K" | "lamp_led" | "lamp_filter_kind" | "lamp_filter_density", SceneWhy5> {}

/** Given: `lamp_flux_lm`, `lamp_distance_m`. Optional: `lamp_count`, `lamp_beam_angle_deg`, `lamp_beam_angle_medium`, `lamp_cct_K`, `lamp_led`, `lamp_filter_kind`, `lamp_filter_density`. */
export interface LightsAlike extends Given<SceneFields, "lamp_flux_lm" | "lamp_distance_m">, Pick<SceneFields, "lamp_count" | "lamp_beam_angle_deg" | "lamp_beam_angle_medium" | "lamp_cct_K" | "lamp_led" | "lamp_filter_kind" | "lamp_filter_density">, Without<"lamps", SceneWhy5> {}

/** None of `lamps`, `lamp_flux_lm`, `lamp_distance_m`, `lamp_count`, `lamp_beam_angle_deg`, `lamp_beam_angle_medium`, `lamp_cct_K`, `lamp_led`, `lamp_filter_kind`, `lamp_filter_density`. */
export interface NoLights extends Without<"lamps" | "lamp_flux_lm" | "lamp_distance_m" | "lamp_count" | "lamp_beam_angle_deg" | "lamp_beam_angle_medium" | "lamp_cct_K" | "lamp_led" | "lamp_filter_kind" | "lamp_filter_density", SceneWhy5> {}

/** Given: `port_kind`, `lens_kind`, `focal_length_mm`, `sensor_diagonal_mm`. */
export interface MountByFocalLength extends Given<SceneFields, "port_kind" | "lens_kind" | "focal_length_mm" | "sensor_diagonal_mm">, Without<"field_of_view_deg", SceneWhy6> {}

/** Given: `port_kind`, `lens_kind`, `field_of_view_deg`. Optional: `focal_length_mm`, `sensor_diagonal_mm`. */
export interface MountByView extends Given<SceneFields, "port_kind" | "lens_kind" | "field_of_view_deg">, Pick<SceneFields, "focal_length_mm" | "sensor_diagonal_mm"> {}

/** None of `port_kind`, `lens_kind`, `focal_length_mm`, `sensor_diagonal_mm`, `field_of_view_deg`. */
export interface NoMount extends Without<"port_kind" | "lens_kind" | "focal_length_mm" | "sensor_diagonal_mm" | "field_of_view_deg", SceneWhy6> {}

/** The fields of a `Scene` that go with whatever else is given. */
export interface SceneRest extends Omit<SceneFields, "card_samples" | "transfer_curve" | "locked_exposure" | "locked_balance" | "kd_samples" | "visibility_m" | "water_hue" | "secchi_depth_m" | "chlorophyll_mg_m3" | "water_type" | "min_depth_m" | "max_depth_m" | "depth_m" | "daylight_basis" | "latitude_deg" | "longitude_deg" | "local_time" | "time_zone" | "camera_heading_deg" | "time" | "sun_elevation_deg" | "filter_samples" | "filter_transmittance" | "filter_kind" | "filter_stops" | "filter_density" | "lamps" | "lamp_flux_lm" | "lamp_distance_m" | "lamp_count" | "lamp_beam_angle_deg" | "lamp_beam_angle_medium" | "lamp_cct_K" | "lamp_led" | "lamp_filter_kind" | "lamp_filter_density" | "port_kind" | "lens_kind" | "focal_length_mm" | "sensor_diagonal_mm" | "field_of_view_deg"> {}

/**
 * What you film, where and with what. Needs exactly one way to describe the water, and a depth; all else has a default or may be left out.
 *
 * Describe the water in one way: water_type, or visibility_m with water_hue, or secchi_depth_m with water_hue, or chlorophyll_mg_m3, or kd_samples, or card_samples with transfer_curve.
 * Give one depth, depth_m, or two, min_depth_m and max_depth_m.
 * Give daylight in one way: sun_elevation_deg, or a place (latitude_deg, longitude_deg) with time, or with local_time and time_zone, or daylight_basis none. camera_heading_deg needs place and time.
 * Give the filter on the lens in one way: filter_kind with filter_density or filter_stops, filter_transmittance, or filter_samples.
 * Give video lights in one way: `lamps`, or lamp_flux_lm with lamp_distance_m and the other lamp_ fields.
 * Say what a filter is mounted on with port_kind, lens_kind and what the lens sees: field_of_view_deg, or focal_length_mm with sensor_diagonal_mm.
 */
export type Scene = SceneRest & (WaterByCard | WaterByAttenuation | WaterByVisibility | WaterBySecchiDepth | WaterByChlorophyll | WaterByType) & (DepthRange | OneDepth) & (DaylightAbsent | DaylightByClock | DaylightByInstant | DaylightBySun) & (LensFilterBySamples | LensFilterByCurve | LensFilterByStops | LensFilterOfDensity | NoLensFilter) & (LightsListed | LightsAlike | NoLights) & (MountByFocalLength | MountByView | NoMount);
