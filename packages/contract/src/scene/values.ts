// The names that fields of a scene can take. Plain data, without zod, so that code which only reads them stays small.

/** Jerlov's optical water types, edition of 1976: ocean from clear to less clear, then coast. */
export const waterTypes = ["I", "IA", "IB", "II", "III", "1C", "3C", "5C", "7C", "9C"] as const;

/** The words that divers have for the colour of water. */
export const waterHues = ["blue", "blue_green", "green", "brown"] as const;

/** How the values of a picture were stored. */
export const transferCurves = ["linear", "srgb", "rec709"] as const;

export const daylightBases = ["none", "sun", "place_time"] as const;

/** What lies over the diver. */
export const overheads = ["none", "overhang", "cavern", "cave", "wreck", "ice"] as const;

/** Where the sun stands, seen from above. */
export const sunSides = ["behind_camera", "beside", "in_frame", "unknown"] as const;

/** What the sea floor is. */
export const bottoms = [
  "none",
  "sand",
  "coral",
  "crustose_coralline_algae",
  "macroalgae",
  "seagrass",
] as const;

/** Where the filmed side of the subject faces. */
export const subjectFacings = ["up", "camera", "sun"] as const;

export const filterKinds = ["red", "magenta", "blue", "green", "neutral"] as const;

/** How code values are spread over light. */
export const recordingCurves = ["rec709", "log", "linear", "hlg"] as const;

/** Cameras by their size. */
export const cameraClasses = [
  "phone",
  "phone_merged",
  "action",
  "compact",
  "interchangeable",
  "cinema",
] as const;

/** How the camera comes to its white balance. */
export const whiteBalanceModes = ["card", "kelvin", "auto"] as const;

export const exposureModes = ["manual", "auto"] as const;

/** What is done with a picture before it is looked at. */
export const finishes = ["in_camera", "basic_edit", "matched"] as const;

export const filterChanges = ["none", "flip", "clip_on"] as const;

export const kitItems = ["lens_filter", "lamp_filter", "lamp"] as const;

export const beamMedia = ["air", "water"] as const;

/** LED illuminants of the CIE (CIE 015:2018). */
export const ledNames = [
  "LED-B1",
  "LED-B2",
  "LED-B3",
  "LED-B4",
  "LED-B5",
  "LED-BH1",
  "LED-RGB1",
  "LED-V1",
  "LED-V2",
] as const;

/** What stands between the lens and the water. */
export const portKinds = ["flat", "dome", "none"] as const;

export const lensKinds = ["wide", "standard", "fisheye"] as const;

/** How a filter is held. */
export const filterHolders = [
  "screw_on_lens",
  "screw_on_port",
  "flip",
  "clip_on",
  "rear_sheet",
  "action_camera",
] as const;

/** A lens in the water, on the outside of the port. */
export const wetLenses = ["none", "wide", "close_up"] as const;

/** What a filter is made of. */
export const filterMaterials = ["glass", "resin"] as const;

/** How a sheet stays behind the lens. */
export const rearFixings = ["slot", "tape"] as const;
