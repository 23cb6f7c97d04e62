import { flatLampNames, lampDefaults, resolvedLampForm, type Scene as WireScene } from "@sunfathom/contract";
import { type Assume, oneForm } from "./one-form.js";

type WireLamp = NonNullable<WireScene["lamps"]>[number];

const inOneForm = oneForm<WireLamp>({
  form: resolvedLampForm,
  defaults: lampDefaults,
  own: {
    cct_K: ({ led, cct_K }, assume) =>
      led === undefined ? { cct_K: assume(cct_K, lampDefaults.cct_K, "cct_K") } : {},
  },
});

/** The lamps of a scene as a list, whichever way they were given. */
export function canonicalLamps(wire: WireScene, assume: Assume): object[] {
  const lamps = wire.lamp_flux_lm === undefined ? (wire.lamps ?? []) : [flatLamp(wire)];
  return lamps.map((lamp, index) =>
    inOneForm(lamp, (value, fallback, name) => assume(value, fallback, `lamps/${index}/${name}`)),
  );
}

/** The lamp of the fields that begin with `lamp_`, which the rules between fields have found whole. */
function flatLamp(wire: WireScene): WireLamp {
  const fields = flatLampNames.map((name) => [name.slice("lamp_".length), wire[name]]);
  return Object.fromEntries(fields) as WireLamp;
}
