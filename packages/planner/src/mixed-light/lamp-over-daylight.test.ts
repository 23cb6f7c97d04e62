/**
 * Lamp against daylight on an upright subject at 12 m in Jerlov IB, worked out again from the published tables, line by line.
 * Only the daylight above the sea is taken from the model: its own test replays a published run of it.
 */

import { REEF_WITH_LAMPS } from "@sunfathom/fixtures/scenes";
import { column, numberIn, type Row, readTable } from "@sunfathom/fixtures/tables";
import { surfaceDaylight } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { mixedLight } from "./mixed-light.js";

const DEG = Math.PI / 180;
/** The sensor sees nothing outside 400 to 720 nm. */
const NM = Array.from({ length: 65 }, (_, i) => 400 + 5 * i);
const lookup = (rows: readonly Row[], key: string) =>
  new Map(rows.map((row) => [numberIn(row, "wavelength_nm"), numberIn(row, key)]));
const of = (map: Map<number, number>, nm: number): number => {
  const value = map.get(nm);
  if (value === undefined) throw new Error(`nothing at ${nm} nm`);
  return value;
};
const sum = (f: (nm: number) => number): number => NM.reduce((total, nm) => total + 5 * f(nm), 0);

// Water. Pope & Fry 1997; Zhang, Hu & He 2009; Jerlov 1976.
const aw = lookup(readTable("water_absorption_pope_fry_1997"), "a_w_per_m");
const bw = lookup(readTable("seawater_scattering"), "b_zhang2009_S35_T20_per_m");
const kw = (nm: number) => of(aw, nm) + of(bw, nm) / 2;
const jerlov = lookup(
  readTable("jerlov_1976_kd").filter((row) => row["water_type"] === "IB"),
  "Kd_per_m",
);
function tableKd(nm: number): number {
  if (nm > 700) return kw(nm);
  const below = 25 * Math.floor(nm / 25);
  const above = Math.min(700, below + 25);
  const share = above === below ? 0 : (nm - below) / (above - below);
  const remainder = (1 - share) * (of(jerlov, below) - kw(below)) + share * (of(jerlov, above) - kw(above));
  return Math.max(of(aw, nm), kw(nm) + remainder);
}

// Scattering: Morel & Maritorena 2001, chlorophyll from Kd(490). Absorption: Kirk 1984 inverted, at the tables' path cosine of 0.9.
const chlorophyllRows = readTable("morel_maritorena_2001_kd");
const at490 = (key: string) => of(lookup(chlorophyllRows, key), 490);
const chlorophyll = ((tableKd(490) - at490("Kw_per_m")) / at490("chi")) ** (1 / at490("e"));
const b = (nm: number) => of(bw, nm) + 0.416 * chlorophyll ** 0.766 * (550 / nm);
function a(nm: number): number {
  const g = 0.425 * 0.9 - 0.19;
  // a^2 + g b a - (0.9 Kd)^2 = 0
  const root = (-g * b(nm) + Math.sqrt((g * b(nm)) ** 2 + 4 * (0.9 * tableKd(nm)) ** 2)) / 2;
  return Math.max(of(aw, nm), root);
}

// Sea surface: sun at 50 degrees, wind 4 m/s. Snell; Gregg & Carder 1990.
const inWater_deg = Math.asin(Math.sin(40 * DEG) / 1.34) / DEG;
const sky = surfaceDaylight(50, 0);
const V = lookup(readTable("cie_luminous_efficiency_1nm"), "V_photopic_1924");
const direct = (nm: number) => (1 - 0.0253) * sky.direct[(nm - 380) / 5];
const below = (nm: number) => direct(nm) + (1 - 0.066) * sky.diffuse[(nm - 380) / 5];
const directShare = sum((nm) => direct(nm) * of(V, nm)) / sum((nm) => below(nm) * of(V, nm));
const mu0 = 1 / (directShare / Math.cos(inWater_deg * DEG) + (1 - directShare) / 0.85);

// Down to 12 m, the table's Kd taken to this sun by Kirk 1984.
const kirk = (nm: number, mu: number) => Math.sqrt(a(nm) ** 2 + (0.425 * mu - 0.19) * a(nm) * b(nm)) / mu;
const kd = (nm: number) => Math.max(of(aw, nm), (tableKd(nm) * kirk(nm, mu0)) / kirk(nm, 0.9));
const down = (nm: number) => below(nm) * Math.exp(-kd(nm) * 12);

/** Upright over downwelling irradiance of a field exp(k cos), k from its mean cosine, all by quadrature. */
function asymptotic(meanCosine: number): number {
  const steps = 400;
  const integral = (f: (cos: number, sin: number) => number, to: number) => {
    let total = 0;
    for (let i = 0; i < steps; i++) {
      const angle = ((i + 0.5) * to) / steps;
      total += (f(Math.cos(angle), Math.sin(angle)) * to) / steps;
    }
    return total;
  };
  let low = 0.01;
  let high = 60;
  for (let i = 0; i < 60; i++) {
    const k = (low + high) / 2;
    const net = integral((cos, sin) => Math.exp(k * (cos - 1)) * cos * sin, Math.PI);
    if (net / integral((cos, sin) => Math.exp(k * (cos - 1)) * sin, Math.PI) < meanCosine) low = k;
    else high = k;
  }
  const upright = integral((cos, sin) => (Math.exp(low * (cos - 1)) * sin * sin) / Math.PI, Math.PI);
  return upright / integral((cos, sin) => Math.exp(low * (cos - 1)) * cos * sin, Math.PI / 2);
}

// A card across the way to the camera, level, the sun 30 degrees off straight behind it: half of the headings within 60 degrees of
// that face it more. Near: tan(w)/pi of the sun's light in the mean, 0.198 of the sky's and 1.03 of what comes back from below, turning
// with depth to the above. On top of the mean, the sun's beam that is left, as the card faces it. Constants fitted to photon tracing.
function daylightOnSubject(nm: number): number {
  const particles = b(nm) - of(bw, nm);
  const upwelling = (0.0183 * particles + 0.5 * of(bw, nm)) / (2 * kd(nm));
  const x = b(nm) * 12;
  const tangent = Math.tan(inWater_deg * DEG);
  const near = (directShare * tangent) / Math.PI + (1 - directShare) * 0.198 + 1.03 * upwelling;
  const turned = 1 - Math.exp(-0.321 * Math.sqrt(x));
  const upright = (1 - turned) * near + turned * 1.14 * asymptotic(a(nm) / kd(nm));
  const extraPath = a(nm) * 12 * (1 / Math.cos(inWater_deg * DEG) - 1);
  const beam = directShare * Math.exp((-0.121 * x ** 2) / (x + 11.9) - 0.508 * extraPath);
  return down(nm) * (upright - (beam * tangent) / Math.PI + beam * tangent * Math.cos(30 * DEG));
}

// Two lamps: 8000 lm over 100 degrees, half of the middle's intensity at the edge (CIE e-ILV 17-27-077) by a power of the cosine; a
// subject of 0.26 m about, aimed at with an error of 8 degrees in two directions, half of all aims being better. At 0.8 m, 5600 K between LED-B4 (5109 K) and LED-B5 (6598 K) in mired.
const led = (name: string) => {
  const spectrum = lookup(
    readTable("cie_led_illuminants_5nm").filter((row) => row["illuminant"] === name),
    "relative_power",
  );
  let lumen = 0;
  for (let nm = 380; nm <= 780; nm += 5) lumen += 683 * 5 * of(spectrum, nm) * of(V, nm);
  return (nm: number) => of(spectrum, nm) / lumen;
};
const share = (1e6 / 5109 - 1e6 / 5600) / (1e6 / 5109 - 1e6 / 6598);
const [b4, b5] = [led("LED-B4"), led("LED-B5")];
const power = Math.log(0.5) / Math.log(Math.cos(50 * DEG));
const candela = (8000 * (power + 1)) / (2 * Math.PI);
/** Mean over the subject's cap, by fine steps. */
function onSubject(): number {
  const off = 8 * DEG * Math.sqrt(2 * Math.log(2));
  const half = Math.atan(0.26 / 0.8);
  let [total, weight] = [0, 0];
  for (let i = 0; i < 400; i++) {
    const r = ((i + 0.5) / 400) * half;
    for (let k = 0; k < 360; k++) {
      const cos = Math.cos(r) * Math.cos(off) + Math.sin(r) * Math.sin(off) * Math.cos(k * DEG);
      total += cos ** power * Math.sin(r);
      weight += Math.sin(r);
    }
  }
  return total / weight;
}
const towards = candela * onSubject();
// On short paths half of scattering counts as lost (assumption of the model).
const onPath = (nm: number, length_m: number) => Math.exp(-(a(nm) + b(nm) / 2) * length_m);
const lampOnSubject = (nm: number) =>
  (((1 - share) * b4(nm) + share * b5(nm)) * towards * onPath(nm, 0.8)) / 0.8 ** 2;

// Sensor: mean of 11 cameras, channels 0.75, 1 and 0.85 high.
const sensor = readTable("sensor_rgb_mean");
const channels = {
  red: lookup(sensor, "mean_R"),
  green: lookup(sensor, "mean_G"),
  blue: lookup(sensor, "mean_B"),
};
const seen = (channel: keyof typeof channels, light: (nm: number) => number) =>
  sum((nm) => light(nm) * onPath(nm, 1) * of(channels[channel], nm));
const stops = (channel: keyof typeof channels) =>
  Math.log2(seen(channel, lampOnSubject) / seen(channel, daylightOnSubject));

describe("lamps against daylight at 12 m, by hand", () => {
  const answer = () => mixedLight(REEF_WITH_LAMPS).depths[0];

  it("starts from numbers that can be checked on paper", () => {
    // ln 0.5 / ln 0.642788 = 1.56841; 8000 * 2.56841 / 6.283185 = 3270.2 cd.
    expect(candela).toBeCloseTo(3270.2, 1);
    expect(inWater_deg).toBeCloseTo(28.67, 2);
    expect(column(readTable("jerlov_1976_kd"), "Kd_per_m").length).toBe(150);
    expect(tableKd(550)).toBeCloseTo(0.072, 12);
  });

  it.each(["red", "green", "blue"] as const)(
    "lamp over daylight in %s, to a thousandth of a stop",
    (channel) => {
      const ours = answer()[`${channel}_lamp_over_daylight_stops`];
      expect(Math.abs((ours?.likely ?? Number.NaN) - stops(channel))).toBeLessThan(1e-3);
    },
  );

  it("illuminance of both on the subject, to a thousandth", () => {
    // Below 400 nm V is under 4e-4 and above 720 nm under 1e-3 of its peak.
    const lux = (light: (nm: number) => number) => 683 * sum((nm) => light(nm) * of(V, nm));
    expect(answer().lamp_illuminance_lx.likely / lux(lampOnSubject)).toBeCloseTo(1, 3);
    expect(answer().daylight_illuminance_lx.likely / lux(daylightOnSubject)).toBeCloseTo(1, 3);
  });

  it("what 1.8 m of water takes from the lamps' light per channel", () => {
    for (const channel of ["red", "green", "blue"] as const) {
      const port = (nm: number) => (1 - share) * b4(nm) + share * b5(nm);
      const left = sum((nm) => port(nm) * onPath(nm, 1.8) * of(channels[channel], nm));
      const loss = Math.log2(sum((nm) => port(nm) * of(channels[channel], nm)) / left);
      expect(answer()[`lamp_${channel}_water_loss_stops`]?.likely).toBeCloseTo(loss, 3);
    }
  });
});
