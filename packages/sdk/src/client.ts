import { batchesOverHttp } from "./core/batch-over-http.js";
import type { Batches } from "./core/batches.js";
import { settingsOf } from "./core/settings.js";
import { overHttp } from "./core/transport.js";
import type { SunfathomOptions } from "./core/types.js";
import { Api } from "./generated/api.js";

/**
 * A client of the service. It holds no connection and needs no closing.
 * @throws TypeError for an option that cannot be
 * @example
 * const client = new Sunfathom({ baseUrl: "https://light.example.org" });
 * const choice = await client.calculations.filterChoice({ water_type: "IB", min_depth_m: 5, max_depth_m: 18 });
 * console.log(choice.filter_kind, choice.filter_density);
 */
export class Sunfathom extends Api {
  /** Many scenes in one call. */
  readonly batches: Batches;

  constructor(options: SunfathomOptions) {
    const settings = settingsOf(options);
    super(overHttp(settings));
    this.batches = { run: batchesOverHttp(settings) };
  }
}
