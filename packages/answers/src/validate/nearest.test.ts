import { wireSchemas } from "@sunfathom/contract";
import { describe, expect, it } from "vitest";
import { nearest } from "./nearest.js";
import { otherNames } from "./other-names.js";

const namesOf = (component: "Scene" | "MountingScene" | "Lamp") =>
  Object.keys(wireSchemas[component].properties ?? {});
const scene = namesOf("Scene");

describe("a name that is not one of a scene's fields", () => {
  it.each([
    // Slips of the pen.
    ["dept_m", "depth_m"],
    ["detph_m", "depth_m"],
    ["maxdepth_m", "max_depth_m"],
    ["water_typ", "water_type"],
    ["chlorophyl_mg_m3", "chlorophyll_mg_m3"],
    ["lamp", "lamps"],
    ["lattitude_deg", "latitude_deg"],
    ["mex_depth", "max_depth_m"],
    // Another spelling of the same words.
    ["depthM", "depth_m"],
    ["waterType", "water_type"],
    ["water-type", "water_type"],
    ["ISO", "iso"],
    ["timezone", "time_zone"],
    ["iso_max", "max_iso"],
    ["isoMax", "max_iso"],
    ["depth_max_m", "max_depth_m"],
    // A part of the name that no other name has.
    ["lat", "latitude_deg"],
    ["lon", "longitude_deg"],
    ["latitude", "latitude_deg"],
    ["longitude", "longitude_deg"],
    ["visibility", "visibility_m"],
    ["chlorophyll", "chlorophyll_mg_m3"],
    ["wind_speed", "wind_speed_m_s"],
    ["max_depth", "max_depth_m"],
    ["frame_rate", "frame_rate_fps"],
    ["sun_elevation", "sun_elevation_deg"],
    ["fps", "frame_rate_fps"],
    ["hue", "water_hue"],
    ["oktas", "cloud_oktas"],
    // Other words for it.
    ["depth", "depth_m"],
    ["water", "water_type"],
    ["sun_height", "sun_elevation_deg"],
    ["sunHeight", "sun_elevation_deg"],
    ["aperture", "f_number"],
    ["f_stop", "f_number"],
    ["shutter", "shutter_s"],
    ["shutter_speed", "shutter_s"],
    ["filter", "filter_kind"],
    ["wind", "wind_speed_m_s"],
    ["clouds", "cloud_oktas"],
    ["lights", "lamps"],
    ["white_balance", "white_balance_mode"],
  ])("%s is taken for %s", (sent, meant) => {
    expect(nearest(sent, scene)).toBe(meant);
  });

  it.each([
    // Things that a scene does not have.
    "location",
    "site",
    "temperature",
    "water_temperature",
    "salinity",
    "date",
    "name",
    "country",
    "camera",
    "housing",
    "currency",
    "camera_brand",
    "comment",
    "gas",
    "id",
    "model",
    "lens_type",
    "pressure",
    "boat",
    "diver",
    "profile",
    "current",
    "mode",
    "mount",
    // Several are as near.
    "min",
    "max",
    "distance",
    "density",
    // Nothing at all.
    "x",
    "de",
    "",
    "_",
    "__proto__",
    "constructor",
    "a".repeat(1000),
  ])("%s is taken for none", (sent) => {
    expect(nearest(sent, scene)).toBeUndefined();
  });
});

describe("a name in a scene of another kind", () => {
  it.each([
    ["lens", "lens_kind"],
    ["port", "port_kind"],
    ["fov", "field_of_view_deg"],
    ["focal_length", "focal_length_mm"],
    ["aperture", "f_number"],
  ])("%s is taken for its %s", (sent, meant) => {
    expect(nearest(sent, namesOf("MountingScene"))).toBe(meant);
  });

  it.each([
    ["lumens", "flux_lm"],
    ["kelvin", "cct_K"],
    ["distance", "distance_m"],
  ])("%s is taken for %s of a lamp", (sent, meant) => {
    expect(nearest(sent, namesOf("Lamp"))).toBe(meant);
  });
});

describe("a word that is none of the options", () => {
  const types = ["I", "IA", "IB", "II", "III", "1C", "3C", "5C", "7C", "9C"];

  it.each([
    ["ib", types, "IB"],
    ["3c", types, "3C"],
    ["5-C", types, "5C"],
    ["redd", ["none", "red", "magenta"], "red"],
    ["magneta", ["none", "red", "magenta"], "magenta"],
  ])("%s is one of them, misspelt", (sent, options, meant) => {
    expect(nearest(sent, options)).toBe(meant);
  });

  it.each(["2C", "IC", "IV", "C", "oceanic"])("%s is not taken for another water", (sent) => {
    expect(nearest(sent, types)).toBeUndefined();
  });
});

it("other words lead to fields that there are, each to one, and none is a field itself", () => {
  const all = new Set([...scene, ...namesOf("MountingScene"), ...namesOf("Lamp")]);
  for (const [other, name] of otherNames) {
    expect(all, other).toContain(name);
    expect(all).not.toContain(other);
  }
});
