import type { Scene } from "../scene/scene.js";
import type { WindowAim } from "./objective.js";

/** Cloud that is forecast for a day, or for one hour of it by the clocks of the place. */
export interface CloudForecast {
  /** `YYYY-MM-DD` */
  date: string;
  /** 0 to 23; the whole day where absent. */
  hour?: number;
  cloud_oktas: number;
}

/** What light windows are looked for in. */
export interface WindowsPlan {
  /** The site and the camera. What it says of daylight is replaced, window by window. */
  scene: Scene;
  latitude_deg: number;
  longitude_deg: number;
  /** IANA name. */
  time_zone: string;
  /** First and last day, `YYYY-MM-DD`, by the clocks of the place. */
  first_date: string;
  last_date: string;
  /** Opening hours by the clocks of the place, `hh:mm`. */
  opens_at: string;
  closes_at: string;
  window_min: number;
  aim: WindowAim;
  forecast: readonly CloudForecast[];
}
