// What generated clients are held to: the same calls by the client that the service gives.
import { InvalidSceneError, Sunfathom } from "@sunfathom/sdk";

const client = new Sunfathom({ baseUrl: process.argv[2] ?? "" });
const scene = { water_type: "IB", sun_elevation_deg: 40, min_depth_m: 5, max_depth_m: 18 } as const;

const choice = await client.calculations.filterChoice(scene);
const light = await client.calculations.attenuation({ water_type: "IB", depth_m: 12 });
// @ts-expect-error the depth is given twice
const error = await client.calculations.filterChoice({ ...scene, depth_m: 500 }).catch((caught) => caught);
if (!(error instanceof InvalidSceneError)) throw error;
const types = await client.reference.waterTypes();
console.log(
  JSON.stringify([
    choice.filter_kind,
    light.red_to_tenth_depth_m?.likely,
    error.errors.map(({ pointer }) => pointer),
    choice,
    light,
    types,
  ]),
);
