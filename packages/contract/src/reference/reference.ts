import { z } from "zod/v3";
import { choice, flag, list, text } from "../field/choice.js";
import { quantityList } from "../field/quantity.js";
import { ModelVersion } from "../result/common.js";
import { density, share } from "../result/quantities.js";
import { FilterKind } from "../scene/lens-filter.js";
import { WaterType } from "../scene/water.js";
import { build } from "./build.js";

const wavelengths_nm = quantityList({
  description: "Wavelengths of the curve, rising.",
  unit: "nm",
  decimals: 1,
  min: 300,
  max: 1000,
  example: 450,
  minItems: 1,
  maxItems: 1000,
  examples: [450, 550, 650],
});

const sources = list(
  text({ description: "Id of a source, as /v1/models lists it.", example: "jerlov_1976" }),
  {
    description: "Where it comes from.",
    example: ["jerlov_1976"],
  },
);

export const WaterTypeInfo = z
  .object({
    water_type: choice(WaterType, { description: "Name of the type.", example: "IB" }),
    description: text({
      description: "The water as a diver would describe it.",
      example: "Clear tropical ocean.",
    }),
    edition: text({ description: "Edition of the classification.", example: "1976" }),
    wavelengths_nm,
    kd_per_m: quantityList({
      description: "Diffuse attenuation of downwelling light, one for each of `wavelengths_nm`.",
      unit: "1/m",
      decimals: 4,
      min: 0,
      max: 20,
      example: 0.043,
      minItems: 1,
      maxItems: 1000,
      examples: [0.043, 0.075, 0.362],
    }),
    sources,
  })
  .describe("An optical water type.");
export type WaterTypeInfo = z.infer<typeof WaterTypeInfo>;

export const FilterUse = z.enum(["lens", "lamp", "lens_or_lamp"]).describe("Where a filter goes.");

export const FilterKindInfo = z
  .object({
    filter_kind: choice(FilterKind, { description: "Name of the kind.", example: "red" }),
    description: text({ description: "The kind in words.", example: "Absorbs blue and green." }),
    use: choice(FilterUse, { description: "Where it goes.", example: "lens" }),
    base_density: density("Density of the glass outside the band that it absorbs.", 0.04),
    leakage: share("Transmittance that remains inside the band however dense the filter.", 0.01),
    shape_assumed: flag({
      description: "Whether the shape is an assumption, as no standard publishes one.",
      example: true,
    }),
    wavelengths_nm,
    density_shape: quantityList({
      description: "Density per unit of nominal density, one for each of `wavelengths_nm`.",
      unit: "1",
      decimals: 4,
      min: 0,
      max: 1,
      example: 0.98,
      minItems: 1,
      maxItems: 1000,
      examples: [1, 0.98, 0.03],
    }),
  })
  .describe("A kind of filter.");
export type FilterKindInfo = z.infer<typeof FilterKindInfo>;

export const SourceKind = z.enum(["table", "formula", "assumption"]).describe("What a part of the model is.");

export const ModelInfo = z
  .object({
    id: text({ description: "Id, as answers name it in `model.sources`.", example: "jerlov_1976" }),
    what: text({ description: "What it is.", example: "Diffuse attenuation of ten optical water types." }),
    kind: choice(SourceKind, { description: "Table, formula or assumption.", example: "table" }),
    source: text({
      description: "Publication that it was taken from.",
      example: "Jerlov N. G. (1976), Marine Optics, Elsevier.",
    }),
    domain: text({ description: "Where it holds.", example: "310 to 700 nm." }),
    known_weaknesses: text({
      description: "Its known weaknesses.",
      example: "Steps of 25 nm smooth the edges of absorption bands.",
    }),
  })
  .describe("A part of the model, with its source.");
export type ModelInfo = z.infer<typeof ModelInfo>;

const version = ModelVersion.shape.version;

export const WaterTypesAnswer = z
  .object({
    water_types: list(WaterTypeInfo, {
      description: "The optical water types, clearest first.",
      example: [
        {
          water_type: "IB",
          description: "Clear tropical ocean.",
          edition: "1976",
          wavelengths_nm: [450, 550, 650],
          kd_per_m: [0.043, 0.075, 0.362],
          sources: ["jerlov_1976"],
        },
      ],
    }),
    model_version: version,
  })
  .describe("The optical water types that a scene can name.");

export const FilterKindsAnswer = z
  .object({
    filter_kinds: list(FilterKindInfo, {
      description: "The kinds of filter.",
      example: [
        {
          filter_kind: "red",
          description: "Absorbs blue and green.",
          use: "lens",
          base_density: 0.04,
          leakage: 0.01,
          shape_assumed: true,
          wavelengths_nm: [450, 550, 650],
          density_shape: [1, 0.98, 0.03],
        },
      ],
    }),
    model_version: version,
  })
  .describe("The kinds of filter that a scene can name.");

export const ModelsAnswer = z
  .object({
    models: list(ModelInfo, {
      description: "Every table, formula and assumption.",
      example: [
        {
          id: "jerlov_1976",
          what: "Diffuse attenuation of ten optical water types.",
          kind: "table",
          source: "Jerlov N. G. (1976), Marine Optics, Elsevier.",
          domain: "310 to 700 nm.",
          known_weaknesses: "Steps of 25 nm smooth the edges of absorption bands.",
        },
      ],
    }),
    model_version: version,
    build,
  })
  .describe("The parts of the model.");
