import type { Scene } from "./arbitrary.js";

/** A scene as a query string. Shortest decimals, as JSON writes them. */
export function queryOf(scene: Scene): string {
  return Object.entries(scene)
    .map(
      ([name, value]) =>
        `${encodeURIComponent(name)}=${encodeURIComponent(Object.is(value, -0) ? "-0" : String(value))}`,
    )
    .join("&");
}
