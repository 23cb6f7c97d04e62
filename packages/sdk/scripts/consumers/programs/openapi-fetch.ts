// A client that openapi-typescript makes of the description: what it is asked and prints, sdk.ts asks and prints, too.
import createClient from "openapi-fetch";
import type { components, paths } from "./described.js";

const client = createClient<paths>({ baseUrl: process.argv[2] ?? "" });
const scene: components["schemas"]["Scene"] = {
  water_type: "IB",
  sun_elevation_deg: 40,
  min_depth_m: 5,
  max_depth_m: 18,
};

const choice = await client.POST("/v1/filter-choice", { body: scene });
if (choice.error !== undefined) throw new Error(choice.error.title);
const kind: "none" | components["schemas"]["FilterKind"] = choice.data.filter_kind;
const light = await client.GET("/v1/attenuation", { params: { query: { water_type: "IB", depth_m: 12 } } });
const likely: number | undefined = light.data?.red_to_tenth_depth_m?.likely;
const refused = await client.POST("/v1/filter-choice", { body: { ...scene, depth_m: 500 } });
const pointers = refused.error?.code === "invalid_scene" ? refused.error.errors.map((e) => e.pointer) : [];
const types = await client.GET("/v1/water-types");
console.log(JSON.stringify([kind, likely, pointers, choice.data, light.data, types.data]));

// @ts-expect-error there is no such water
await client.GET("/v1/attenuation", { params: { query: { water_type: "XX", depth_m: 12 } } });
