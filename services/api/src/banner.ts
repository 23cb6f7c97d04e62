import { clientPath } from "./features/documentation/client-package.js";

/**
 * What a person who starts the service needs to know.
 * @param address where it listens, for example `http://127.0.0.1:8080`
 */
export function banner(address: string): string {
  const query = "water_type=IB&sun_elevation_deg=40&min_depth_m=5&max_depth_m=18";
  return [
    `Sunfathom is listening on ${address}`,
    `Documentation:       ${address}/docs`,
    `Client:              npm install ${address}${clientPath()}`,
    `Try it:              curl '${address}/v1/filter-choice?${query}'`,
  ].join("\n");
}
