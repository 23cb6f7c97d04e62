// A client that orval makes of the description: what it is asked and prints, sdk.ts asks and prints, too.
import {
  computeFilterChoice,
  type FilterKind,
  listWaterTypes,
  readAttenuation,
  type Scene,
} from "./described.js";

const scene: Scene = { water_type: "IB", sun_elevation_deg: 40, min_depth_m: 5, max_depth_m: 18 };

const choice = await computeFilterChoice(scene);
if (choice.status !== 200) throw new Error(choice.data.title);
const kind: "none" | FilterKind = choice.data.filter_kind;
const light = await readAttenuation({ water_type: "IB", depth_m: 12 });
if (light.status !== 200) throw new Error("no light");
const likely: number | undefined = light.data.red_to_tenth_depth_m?.likely;
const refused = await computeFilterChoice({ ...scene, depth_m: 500 });
const pointers =
  refused.status === 400 && refused.data.code === "invalid_scene"
    ? refused.data.errors.map(({ pointer }) => pointer)
    : [];
const types = await listWaterTypes();
console.log(JSON.stringify([kind, likely, pointers, choice.data, light.data, types.data]));

// @ts-expect-error there is no such water
await readAttenuation({ water_type: "XX", depth_m: 12 });
