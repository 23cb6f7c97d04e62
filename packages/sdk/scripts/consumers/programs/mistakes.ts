import { type ApiOf, type Scene, Sunfathom } from "@sunfathom/sdk";
import { attenuation, filterChoice, offlineWith, waterTypes } from "@sunfathom/sdk/offline/parts";

const client = new Sunfathom({ baseUrl: "https://light.example.org" });
declare const maybe: number | undefined;

// Handing on what may be missing is fine, also under exactOptionalPropertyTypes.
export const handedOn: Scene = { water_type: "IB", depth_m: 12, iso: maybe };
export const density: Promise<number | undefined> = client.calculations
  .filterChoice(handedOn)
  .then(({ filter_density }) => filter_density);

// A client has the parts that it is made from, and takes the place of another where no more is asked for.
const boat = offlineWith([filterChoice, waterTypes], { expectModelVersion: undefined });
export const either: ApiOf<"filterChoice">[] = [boat, client];
export const waters: Promise<string | undefined> = boat.reference
  .waterTypes()
  .then(({ water_types }) => water_types[0]?.water_type);

// @ts-expect-error a part that it was not made from
boat.calculations.attenuation(handedOn);
// @ts-expect-error a group that none of its parts is in
boat.quiz;
// @ts-expect-error a client with less than is asked for
export const more: ApiOf<"filterChoice" | "attenuation"> = boat;
// @ts-expect-error no part
offlineWith([]);
// @ts-expect-error parts are listed
offlineWith(attenuation);

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

// Some fields of an answer: the compiler knows their names, and what is left.
export const kindAlone: Promise<string> = client.calculations
  .filterChoice(handedOn, { fields: ["filter_kind", "depths.depth_m"] })
  .then(({ filter_kind, depths, cautions }) => `${filter_kind} ${depths[0]?.depth_m} ${cautions[0]?.text}`);
export const headline: Promise<string> = client.calculations
  .diveAdvice(handedOn, { fields: "brief" })
  .then(({ headline, caution }) => `${headline} ${caution}`);
// @ts-expect-error a name that the answer does not have
client.calculations.filterChoice(handedOn, { fields: ["filter_knd"] });
client.calculations
  .filterChoice(handedOn, { fields: ["filter_kind"] })
  // @ts-expect-error a field that was not asked for
  .then(({ verdict }) => verdict);
