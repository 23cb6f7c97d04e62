import type { Api } from "../generated/api.js";

/** Every operation's name, whatever its group. */
type OperationName = { [Group in keyof Api]: keyof Api[Group] }[keyof Api];

/**
 * The part of `Api` that has the operations `Name`: what a function asks for that takes any client with these, be it
 * `Sunfathom`, `OfflineSunfathom` or what `offlineWith` makes.
 * @example
 * async function filterFor(client: ApiOf<"filterChoice">, scene: Scene): Promise<string> {
 *   return (await client.calculations.filterChoice(scene)).filter_kind;
 * }
 */
export type ApiOf<in Name extends OperationName> = {
  readonly [Group in keyof Api as Name & keyof Api[Group] extends never ? never : Group]: Pick<
    Api[Group],
    Name & keyof Api[Group]
  >;
};
