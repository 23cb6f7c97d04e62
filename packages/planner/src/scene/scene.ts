import type { FilterKind, FloorKind, SubjectFacing, TransferCurve, WaterHue } from "@sunfathom/optics";
import type { FilterChange } from "./filter-change.js";
import type { FilterMountingScene } from "./filter-mounting-scene.js";

/**
 * A scene with every default filled in: what the planner works on. Field names are those of the wire contract,
 * units are in the names, and fields that have no meaning for this scene are absent.
 */
export type { FilterKind, SubjectFacing, TransferCurve, WaterHue } from "@sunfathom/optics";
export type { FilterChange } from "./filter-change.js";

export interface Scene
  extends WaterBasis,
    Daylight,
    Cover,
    Dive,
    View,
    Bottom,
    Camera,
    LensFilter,
    MountedOn {
  /** What is owned; filters are then chosen from it alone. */
  kit?: KitItem[];
  /** Lamps that are switched on; empty when there are none. */
  lamps: Lamp[];
  /** By how much lamps are to outshine daylight on the subject, and from where: both or none. */
  wanted_lead_stops?: number;
  wanted_lead_distance_m?: number;
}

/** What a filter is mounted on: all or none of what a mounting scene needs. */
export type MountedOn = Partial<Omit<FilterMountingScene, "f_number" | "filter_change_underwater">>;

/** How the water is described: exactly one field is present. */
export interface WaterBasis {
  /** Optical water type by Jerlov, edition of 1976. */
  water_type?: string;
  /** For waters whose colour follows the phytoplankton. */
  chlorophyll_mg_m3?: number;
  /** Depth at which a white disc of 30 cm vanishes from above; with `water_hue`. */
  secchi_depth_m?: number;
  /** Horizontal distance at which a dark body vanishes; with `water_hue`. */
  visibility_m?: number;
  /** Goes with `secchi_depth_m` and `visibility_m`. */
  water_hue?: WaterHue;
  /** Measured diffuse attenuation of downwelling light. */
  kd_samples?: KdSample[];
  /** A grey card photographed at two or more depths. */
  card_samples?: CardSample[];
  /** How the card's values were stored: `linear`, `srgb` or `rec709`. */
  transfer_curve?: TransferCurve;
  /** All cards were taken at one exposure. */
  locked_exposure?: boolean;
  /** All cards are raw, or were taken at one white balance. */
  locked_balance?: boolean;
}

/** The mean of the card in one picture, as stored, above 0 and below 1. */
export interface CardSample {
  depth_m: number;
  red: number;
  green: number;
  blue: number;
  /** The exposure of this picture: all three or none. */
  iso?: number;
  shutter_s?: number;
  f_number?: number;
  /** What the white balance multiplied each channel by: all three or none. */
  red_gain?: number;
  green_gain?: number;
  blue_gain?: number;
}

export interface KdSample {
  wavelength_nm: number;
  kd_per_m: number;
}

/** What lies over the diver and cuts the sky. */
export type Overhead = "none" | "overhang" | "cavern" | "cave" | "wreck" | "ice";

export interface Cover {
  /** `none` where absent. */
  overhead?: Overhead;
  /** With an opening: share of open water's daylight that comes in. */
  daylight_open_share?: number;
  /** With `ice`. */
  ice_thickness_m?: number;
  snow_thickness_m?: number;
}

export type DaylightBasis = "none" | "sun" | "place_time";

export interface Daylight {
  daylight_basis: DaylightBasis;
  /** Height of the sun above the horizon; present when `daylight_basis` is `sun`. */
  sun_elevation_deg?: number;
  /** Place and time are present when `daylight_basis` is `place_time`: `time`, or `local_time` with `time_zone`. */
  latitude_deg?: number;
  longitude_deg?: number;
  /** Instant with offset, RFC 3339. */
  time?: string;
  /** What the clock on the wall shows, without offset. */
  local_time?: string;
  /** IANA name. */
  time_zone?: string;
  cloud_oktas: number;
  wind_speed_m_s: number;
}

export interface Dive {
  /** Whether a card can be held before the subject; it can where absent. */
  subject_in_reach?: boolean;
  /** Shallow end of the part of the dive that is filmed; equal to `max_depth_m` for a single depth. */
  min_depth_m: number;
  max_depth_m: number;
  subject_distance_m: number;
  /** Where the filmed side of the subject faces: `up`, the `camera`, or the `sun`. */
  subject_facing: SubjectFacing;
}

/** Where the sun stands, seen from above: within 60 degrees of straight behind the camera, of where it looks, between, or anywhere. */
export type SunSide = "behind_camera" | "beside" | "in_frame" | "unknown";

/** Which way the camera looks. */
export interface View {
  /** `unknown` where absent, unless the heading says it. */
  sun_side?: SunSide;
  /** From north through east; with `daylight_basis` `place_time` alone. */
  camera_heading_deg?: number;
  /** Above 0 where the camera looks up; level where absent. */
  camera_tilt_deg?: number;
}

export interface ReflectanceSample {
  wavelength_nm: number;
  reflectance: number;
}

/** The sea floor; deep water where all of it is absent. */
export interface Bottom {
  bottom?: "none" | FloorKind;
  /** A measured curve in its place. */
  bottom_reflectance?: ReflectanceSample[];
  /** Not above `max_depth_m`; present with a floor. */
  bottom_depth_m?: number;
}

export type RecordingCurve = "rec709" | "log" | "linear" | "hlg";

/** A point of a measured recording curve. */
export interface RecordingPoint {
  /** Of the brightest that is recorded, 0 to 1. */
  light_share: number;
  /** Of the highest code value, 0 to 1. */
  code_share: number;
}

/** What the camera's channels see at one wavelength, in one unit for all. */
export interface SensorSample {
  wavelength_nm: number;
  red: number;
  green: number;
  blue: number;
}

/** Kinds of cameras by the size of their pixels; `phone_merged` takes several frames for each that it stores. */
export type CameraClass = "phone" | "phone_merged" | "action" | "compact" | "interchangeable" | "cinema";

/** How the camera comes to its white balance. */
export type BalanceMode = "card" | "kelvin" | "auto";
export type ExposureMode = "auto" | "manual";
/** What is done with a picture before it is looked at. */
export type Finish = "in_camera" | "basic_edit" | "matched";

export interface Camera {
  /** `compact` where absent. */
  camera_class?: CameraClass;
  /** Measured curves in place of the mean of cameras. */
  sensor_samples?: SensorSample[];
  /** Fixed by the diver when present; free within the limits otherwise. */
  iso?: number;
  min_iso: number;
  max_iso: number;
  /** Fixed by the diver when present; free within the limits otherwise. */
  f_number?: number;
  min_f_number: number;
  max_f_number: number;
  shutter_s: number;
  /** Frames per second, where given: no exposure can last longer than a frame. */
  frame_rate_fps?: number;
  /** Bits per channel of the recording. */
  bits: number;
  /** How code values are spread over light: as ITU-R BT.709, evenly per stop, evenly, or as BT.2100's HLG. BT.709 where absent. */
  recording_curve?: RecordingCurve;
  /** A measured curve in its place, from no light to the brightest. */
  recording_curve_points?: RecordingPoint[];
  /** `card` where absent. */
  white_balance_mode?: BalanceMode;
  /** Present where the mode is `kelvin`. */
  white_balance_kelvin_K?: number;
  /** `manual` where absent. */
  exposure_mode?: ExposureMode;
  /** `in_camera` where absent. */
  finish?: Finish;
  white_balance_min_cct_K: number;
  white_balance_max_cct_K: number;
  /** Largest distance from the Planckian locus that the balance can compensate, in CIE 1960 uv. */
  white_balance_max_duv: number;
  /** Colour shift between two balances that is let pass, in CIEDE2000; the planner's default where absent. */
  balance_tolerance_delta_e00?: number;
}

export interface TransmittanceSample {
  wavelength_nm: number;
  transmittance: number;
}

/** The lens filter in use; absent fields mean no filter is mounted. */
export interface LensFilter {
  filter_kind?: FilterKind;
  /** Peak density above base in the kind's absorption band. */
  filter_density?: number;
  /** A measured curve in place of kind and density. */
  filter_transmittance?: TransmittanceSample[];
  filter_change_underwater: FilterChange;
  filter_fits?: FilterFit[];
}

/** How well pictures of a card tell a filter. */
export interface FilterFit {
  /** Name of it in the kit; absent for the filter on the lens. */
  id?: string;
  density_standard_error: number;
  /** Root mean square over the channels. */
  residual_stops: number;
}

export interface KitItem {
  /** The caller's name of it. */
  id: string;
  item: "lens_filter" | "lamp_filter" | "lamp";
  /** Filters: the kind, with a nominal density or a measured curve. */
  filter_kind?: FilterKind;
  filter_density?: number;
  filter_transmittance?: TransmittanceSample[];
}

export interface Lamp {
  /** Luminous flux of one lamp. */
  flux_lm: number;
  count: number;
  /** Full beam angle, and where it was measured. */
  beam_angle_deg: number;
  beam_angle_medium: "air" | "water";
  /** Exactly one of `cct_K` and `led` is present. */
  cct_K?: number;
  /** Name of a CIE LED illuminant. */
  led?: string;
  /** From lamp to subject, through water. */
  distance_m: number;
  /** Filter in front of the lamp, when mounted. */
  filter_kind?: FilterKind;
  filter_density?: number;
  /** A measured curve in place of kind and density. */
  filter_transmittance?: TransmittanceSample[];
}
