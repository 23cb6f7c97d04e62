import { type Scene, Sunfathom } from "@sunfathom/sdk";

const client = new Sunfathom({ baseUrl: "https://light.example.org" });
declare const maybe: number | undefined;

// Handing on what may be missing is fine, also under exactOptionalPropertyTypes.
export const handedOn: Scene = { water_type: "IB", depth_m: 12, iso: maybe };
export const density: Promise<number | undefined> = client.calculations
  .filterChoice(handedOn)
  .then(({ filter_density }) => filter_density);

// @ts-expect-error a misspelt name
export const misspelt: Scene = { dept_m: 12 };
// @ts-expect-error a word that the field does not take
export const noSuchType: Scene = { water_type: "1B" };
// @ts-expect-error text where a number belongs
export const text: Scene = { depth_m: "12" };
// @ts-expect-error no such operation
client.calculations.filterChoise(handedOn);
// @ts-expect-error no service named
new Sunfathom({});
// @ts-expect-error an answer is a promise
client.calculations.filterChoice(handedOn).filter_kind;
