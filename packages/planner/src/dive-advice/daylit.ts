import type { Scene } from "../scene/scene.js";

/** Whether it matters where the sun is: it is neither hidden by cloud nor by what is overhead. */
export const isSunny = ({ daylight_basis, cloud_oktas = 0, overhead = "none" }: Scene): boolean =>
  daylight_basis !== "none" && cloud_oktas < 7 && overhead === "none";
