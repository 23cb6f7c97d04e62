import {
  add,
  ev100FromDome,
  ev100FromIlluminance,
  illuminance_lx,
  lossStops,
  multiply,
  type Spectrum,
} from "@sunfathom/optics";
import { cardDaylightAt, DOME_AS_FLAT, subjectDaylightAt } from "../light/daylight-at-depth.js";
import { contrastLoss, viewAt } from "../light/haze.js";
import { METER_GREY } from "../light/picture-mean.js";
import {
  CLEAR_LAMPS,
  downwellingAt,
  lampLightAt,
  PORT,
  towardsCamera,
  type Underwater,
} from "../light/underwater.js";
import { sceneLight } from "./scene-level.js";

/** The budget at one depth: losses in stops, levels as logarithms to base 2. Names carry over to the answer. */
export interface Budget {
  surface: number;
  depth: number;
  upright: number;
  distance: number;
  port: number;
  lensFilter: number;
  lampFilter: number;
  total: number;
  log2SubjectLux: number;
  /** Of the subject, as a dome receptor in its place meters it. */
  ev100: number;
  /** Of a flat card across the axis, as a flat receptor in its place meters it. */
  cardEv100: number;
  /** Of the whole picture, as a meter in the housing averages it; 0 without daylight and not to be shown. */
  sceneEv100: number;
  /** What haze over a grey subject adds to it as the camera sees it; 0 without daylight and not to be shown. */
  hazeGain: number;
  /** Of what the camera is exposed for: the subject with its haze or, where it exposes by itself by day, the picture. */
  meteredEv100: number;
  /** Contrast against open water that is lost on the way to the camera, in stops. */
  contrast: number;
}

export function budgetAt(world: Underwater, lensFilter: Spectrum, depth_m: number): Budget {
  const daylight = subjectDaylightAt(world, depth_m);
  const lamps = lampLightAt(world);
  const subject = add(daylight, lamps);
  const card = add(cardDaylightAt(world, depth_m), lamps);
  const arriving = multiply(subject, towardsCamera(world));
  const filtered = illuminance_lx(multiply(arriving, lensFilter));
  const haze = world.daylight ? illuminance_lx(multiply(viewAt(world, depth_m).haze, lensFilter)) : 0;
  const hazeGain = Math.log2(1 + haze / (METER_GREY * DOME_AS_FLAT * filtered));
  const lux = illuminance_lx(subject);
  const down = illuminance_lx(downwellingAt(world, depth_m));
  const below = world.daylight ? illuminance_lx(world.daylight.below.downwelling) : 0;
  const above = world.daylight ? illuminance_lx(world.daylight.above) : 0;
  const loss = (from: number, to: number) => (to > 0 ? lossStops(from, to) : 0);
  const seenDaylight = PORT * illuminance_lx(multiply(multiply(daylight, towardsCamera(world)), lensFilter));
  const ev100 = ev100FromDome(PORT * filtered);
  const sceneEv100 = world.daylight
    ? ev100FromDome(PORT * illuminance_lx(multiply(sceneLight(world, subject, depth_m), lensFilter)))
    : 0;
  const isAuto = world.scene.exposure_mode === "auto" && world.daylight !== undefined;
  return {
    surface: loss(above, below),
    depth: loss(below, down),
    upright: loss(down, illuminance_lx(daylight)),
    distance: loss(lux, illuminance_lx(arriving)),
    port: -Math.log2(PORT),
    lensFilter: loss(illuminance_lx(arriving), filtered),
    lampFilter: loss(illuminance_lx(lampLightAt(world, CLEAR_LAMPS)), illuminance_lx(lamps)),
    total: loss(above, seenDaylight),
    log2SubjectLux: Math.log2(lux),
    ev100,
    cardEv100: ev100FromIlluminance(
      PORT * illuminance_lx(multiply(multiply(card, towardsCamera(world)), lensFilter)),
    ),
    sceneEv100,
    hazeGain,
    meteredEv100: isAuto ? sceneEv100 : ev100 + hazeGain,
    contrast: contrastLoss(world, subject),
  };
}
