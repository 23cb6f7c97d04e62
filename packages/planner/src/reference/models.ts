import type { ModelInfo } from "../result/reference.js";

/** Every table, formula and assumption behind the answers, with its source, where it holds and what is known to be weak. */
const MODELS: ModelInfo[] = [
  {
    id: "jerlov_1976",
    what: "Diffuse attenuation of ten optical water types",
    kind: "table",
    source: "Jerlov 1976, Marine Optics, 2nd edition, Elsevier, Table XXVII",
    domain: "350 to 700 nm in 25 nm; high sun; interpolated as the part above pure water",
    known_weaknesses:
      "The edition of 1968 differs by 4 to 15 %. Types I, IA and IB lie below pure water at 675 and 700 nm, and II at 700 nm: all are raised to it. Beyond 700 nm pure water alone is used.",
  },
  {
    id: "pope_fry_1997",
    what: "Absorption of pure water",
    kind: "table",
    source:
      "Pope & Fry 1997, Applied Optics 36, 8710; beyond 727.5 nm Röttgers et al. 2016, Water Optical Properties Processor v3; scattering of sea water Zhang, Hu & He 2009, Optics Express 17, 5698",
    domain: "380 to 780 nm, about 20 °C",
    known_weaknesses:
      "Absorption near 600 and 740 nm shifts by some percent with temperature, which is not modelled.",
  },
  {
    id: "morel_maritorena_2001",
    what: "Diffuse attenuation from chlorophyll",
    kind: "formula",
    source: "Morel & Maritorena 2001, Journal of Geophysical Research 106, 7163, Table 2",
    domain:
      "Chlorophyll 0.02 to 20 mg/m^3, waters whose colour follows the phytoplankton; to 700 nm, beyond it pure water",
    known_weaknesses:
      "Not for river, tannin or sediment waters. Waters of one concentration differ by about 30 % in the part above pure water.",
  },
  {
    id: "lee_2015",
    what: "Diffuse attenuation from the depth at which a Secchi disc vanishes",
    kind: "formula",
    source: "Lee et al. 2015, Remote Sensing of Environment 169, 139",
    domain: "A white disc of 30 cm, lowered in daylight",
    known_weaknesses: "Readings differ by about 20 % between people, sun and waves.",
  },
  {
    id: "visibility_contrast",
    what: "Beam attenuation from the distance at which a dark body vanishes: 4.8 / c",
    kind: "formula",
    source:
      "Davies-Colley 1988, Limnology and Oceanography 33, 616; Zaneveld & Pegau 2003, Optics Express 11, 2997",
    domain: "Level view, dark target, contrast threshold 2 %",
    known_weaknesses: "Divers guess distances, and mean different targets: about a third either way.",
  },
  {
    id: "water_family",
    what: "Diffuse attenuation from turbidity and the colour of the water",
    kind: "formula",
    source: "Interpolated between the types of Jerlov 1976",
    domain: "Blue, blue-green, green and brown water",
    known_weaknesses:
      "Waters of one clarity and colour still differ from wavelength to wavelength, by about a quarter in the part above pure water.",
  },
  {
    id: "card_fit",
    what: "The water that a grey card saw at two or more depths",
    kind: "formula",
    source: "Robust least squares over the water family (Huber weights)",
    domain: "One homogeneous water in daylight; card unshaded, in one pose and at one distance",
    known_weaknesses:
      "Three channels leave the spectral shape partly open. Without exposures only differences between channels are used.",
  },
  {
    id: "sun_position",
    what: "Height and direction of the sun",
    kind: "formula",
    source: "Reda & Andreas 2004, Solar Energy 76, 577, its series cut",
    domain: "1900 to 2100, at sea level",
    known_weaknesses: "Cliffs and hulls that shade the water are not known.",
  },
  {
    id: "williamson_hollins_2022",
    what: "Scattering from diffuse attenuation: of open sea by its chlorophyll, of the coast fitted to measured scattering per water type",
    kind: "formula",
    source:
      "Open sea: Morel & Maritorena 2001, Journal of Geophysical Research 106, 7163, 0.416 Chl^0.766 at 550 nm with chlorophyll from Kd(490). Coast: fitted to Williamson & Hollins 2022, Applied Optics 61, 9951, types 1C to 7C. Between them by the shape of the attenuation",
    domain: "Chlorophyll 0.02 to 20 mg/m^3; coast from 1C to 7C",
    known_weaknesses:
      "Scattering is not fixed by diffuse attenuation: a factor of two either way is carried as uncertainty. In type III the campaigns measured half of what chlorophyll tells, at the coastal stations of Petzold 1972 a quarter to a fifth of what the types say. 7C rests on one campaign.",
  },
  {
    id: "kirk_1984",
    what: "Absorption from diffuse attenuation and scattering, and the effect of the sun's height",
    kind: "formula",
    source: "Kirk 1984, Limnology and Oceanography 29, 350",
    domain: "Scattering up to 30 times absorption; mean over the lit depths",
    known_weaknesses:
      "The sun's effect fades with depth, which a mean does not show. Reference path cosine 0.9 for the tables, from memory.",
  },
  {
    id: "bird_riordan_1986",
    what: "Clear-sky spectrum, direct and diffuse",
    kind: "formula",
    source: "Bird & Riordan 1986, SERI/TR-215-2436; air mass Kasten & Young 1989",
    domain: "Sun 10 to 90 degrees above the horizon; clean sea air assumed",
    known_weaknesses: "Haze, dust and humidity of the day are not known: about 10 % in level.",
  },
  {
    id: "kasten_czeplak_1980",
    what: "Light left under cloud",
    kind: "formula",
    source: "Kasten & Czeplak 1980, Solar Energy 24, 177",
    domain: "Sun above 10 degrees; hourly means",
    known_weaknesses:
      "Scatter of about 30 %; cloud is taken as grey, which shifts blue against red by up to about 10 %.",
  },
  {
    id: "gregg_carder_1990",
    what: "Reflection at a sea roughened by wind",
    kind: "formula",
    source: "Gregg & Carder 1990, Limnology and Oceanography 35, 1657",
    domain: "Wind to 20 m/s, sun above 5 degrees",
    known_weaknesses:
      "Focusing by waves makes the light flicker by tens of percent in the top metres; only its mean is modelled.",
  },
  {
    id: "bartlett_1998",
    what: "Red that water makes itself by inelastic scattering",
    kind: "formula",
    source: "Bartlett, Voss, Sathyendranath & Vodacek 1998, Applied Optics 37, 3324",
    domain: "An estimate of where red from the surface is no longer most of it",
    known_weaknesses: "A narrow band and exponential fading are assumed; fluorescence of algae is left out.",
  },
  {
    id: "light_field",
    what: "How daylight is spread over directions at depth: light on a solid subject and on a card, and how bright open water is",
    kind: "formula",
    source:
      "Refraction of sun and sky at the surface (exact), Gershun's law at depth, and constants fitted to photon tracing with the phase function of Fournier & Jonasz 1999 and molecules; a solid subject as a receptor of cardioid response (ISO 2720)",
    domain:
      "Particles scattering 0.1 to 8 times and molecules up to 0.3 times the absorption, sun 20 degrees high or more, three absorption lengths deep",
    known_weaknesses:
      "About 4 % for a solid subject, 10 % for open water, more in water that hardly scatters. Open water is taken at eye level, however the camera is tilted.",
  },
  {
    id: "sea_floor",
    what: "Light that the sea floor sends up to the subject and into the water",
    kind: "formula",
    source:
      "Maritorena, Morel & Gentili 1994, Limnology and Oceanography 39, 1689; attenuation of diffuse upward light fitted to photon tracing",
    domain: "A level, matt floor without end",
    known_weaknesses:
      "Slopes, walls and shadows on the floor are not known. How pale a floor of one name is differs by more than half.",
  },
  {
    id: "bottom_reflectance",
    what: "What sand, coral, algae and seagrass reflect",
    kind: "table",
    source:
      "Means of in-water spectra by G. Asner (sand, coral, algae) and of seagrass in air by Schnalzger 2017, as carried by an open bio-optical library, DOI 10.5281/zenodo.10246861",
    domain: "380 to 780 nm",
    known_weaknesses: "Means: sand goes from half of it to 0.5 (from memory).",
  },
  {
    id: "path_attenuation",
    what: "Light lost on a short path from a lamp or to the lens",
    kind: "assumption",
    source: "Absorption plus half of scattering, from memory; bounds are absorption and beam attenuation",
    domain: "Paths of a few metres",
    known_weaknesses:
      "The share of scattered light that still arrives depends on beam and lens: 0.25 to 1 of scattering is carried as uncertainty.",
  },
  {
    id: "lit_haze",
    what: "Haze that lamps light between camera and subject",
    kind: "formula",
    source:
      "Single scattering along the line of sight; backscattered share of particles 0.0183 (Petzold 1972, as used in public radiative-transfer code)",
    domain: "Lamps beside the camera pointing at the subject, in homogeneous water",
    known_weaknesses:
      "The distance of the lamps from the line of sight is assumed, and large particles near the port are not counted: a factor of two either way.",
  },
  {
    id: "mean_sensor",
    what: "Spectral sensitivity of a camera",
    kind: "table",
    source:
      "Mean of 11 anonymous cameras published by the Academy of Motion Picture Arts and Sciences; heights of the channels from memory",
    domain: "400 to 720 nm",
    known_weaknesses:
      "Cameras differ most in how much green and blue their red channel sees, which decides how early red is gone: carried as uncertainty.",
  },
  {
    id: "port_radiance",
    what: "Light lost between the water and the lens in its housing",
    kind: "formula",
    source:
      "Radiance over n^2 kept along a ray, and Fresnel: the immersion factor of in-water radiometers (Austin 1976; Voss & Flora 2017, J. Atmos. Oceanic Technol. 34, 1203)",
    domain: "Near the axis, behind a clear uncoated window, flat or dome",
    known_weaknesses: "A coated window loses up to 0.06 stop less. The corners of a wide picture lose more.",
  },
  {
    id: "camera_recording",
    what: "Photons, read noise, clipping and code values of a recording",
    kind: "assumption",
    source:
      "ISO 12232 for saturation; full well, read noise and pixels averaged by class of camera, from memory (compact: 20 000 electrons at ISO 100, 3 electrons, four pixels); transfer curves ITU-R BT.709 and BT.2100 (HLG)",
    domain: "Video and stills with a transfer curve that is named or given",
    known_weaknesses:
      "Full well differs by a factor of three between cameras of a class: carried as uncertainty. Compression is not modelled.",
  },
  {
    id: "filter_merit",
    what: "Colour error of the 24-patch chart after balance, exposure and a fitted 3 x 3 matrix",
    kind: "formula",
    source: "This project; error measure CIEDE2000",
    domain: "A subject lit as a whole; open water behind it",
    known_weaknesses:
      "A grade by hand can be better or worse than a fitted matrix. A filter has to gain 0.5 to be worth mounting, a judgement.",
  },
  {
    id: "filter_shapes",
    what: "Absorption bands of red, magenta, blue and green filters",
    kind: "assumption",
    source: "Logistic edges and a Gaussian band; no standard publishes curves",
    domain: "Density 0.05 to 3 above base",
    known_weaknesses:
      "Filters of the same name differ: shifts and widths are carried as uncertainty; a measured curve is better.",
  },
  {
    id: "cie_1931_observer",
    what: "Colour-matching functions, luminous efficiency, illuminants",
    kind: "table",
    source: "CIE 15; ISO/CIE 11664-1",
    domain: "380 to 780 nm in 5 nm",
    known_weaknesses:
      "Correlated colour temperature has no meaning beyond 0.05 from the Planckian locus and is withheld there.",
  },
  {
    id: "cie_led_illuminants",
    what: "Spectra of white lamps",
    kind: "table",
    source: "CIE 15:2018, Table 12; mixed linearly in mired between 2733 and 6598 K",
    domain: "2733 to 6598 K as phosphor LEDs, below as Planckian radiators, above as CIE daylight",
    known_weaknesses:
      "Lamps of one colour temperature differ in their red; an even cone is assumed for the beam and its peak carried as uncertainty.",
  },
  {
    id: "chart_24",
    what: "Reflectance of a 24-patch colour chart",
    kind: "table",
    source: "Ohta 1997; the chart of ISO 17321-1",
    domain: "380 to 780 nm in 5 nm",
    known_weaknesses: "Reefs and skin are not a chart; it stands for a fair spread of colours.",
  },
  {
    id: "ciede2000",
    what: "Colour difference",
    kind: "formula",
    source: "ISO/CIE 11664-6; Sharma, Wu & Dalal 2005, Color Research and Application 30, 21",
    domain: "Differences below about 5; larger ones in order only",
    known_weaknesses: "Made for patches side by side, not for moving pictures.",
  },
  {
    id: "iso_2720",
    what: "Exposure from illuminance",
    kind: "formula",
    source: "ISO 2720:1974, C = 250 for a flat receptor",
    domain: "Evenly lit subjects",
    known_weaknesses: "Meters differ within the constants that the standard allows, by about half a stop.",
  },
  {
    id: "ports",
    what: "Field of view, magnification and lateral colour through a flat port; virtual image of a dome port",
    kind: "formula",
    source:
      "Snell's law and the single refracting surface of any textbook of optics, exact; indices Quan & Fry 1995, Applied Optics 34, 3477",
    domain:
      "Thin ports; flat ones to 170 degrees of field in air; domes near the axis, entrance pupil in the centre",
    known_weaknesses: "The thickness of glass is left out. Curvature of field behind a dome is not modelled.",
  },
  {
    id: "vignetting",
    what: "Light that filters and rings take from the corners",
    kind: "formula",
    source: "Overlap of two circles, exact",
    domain: "Round stops before a round entrance pupil; 85 degrees from the axis at most",
    known_weaknesses:
      "Where the entrance pupil lies is assumed unless given, and it moves with the angle: 20 % either way. The lens's own falloff comes on top.",
  },
  {
    id: "ring_chain",
    what: "Shortest chain of step rings",
    kind: "formula",
    source: "Dijkstra 1959, Numerische Mathematik 1, 269",
    domain: "Any set of rings",
    known_weaknesses: "Rims are taken as 1.5 mm wide on each side, from memory.",
  },
  {
    id: "rear_sheet",
    what: "Focus shift of a sheet behind the lens",
    kind: "formula",
    source: "(1 - 1/n) t, exact near the axis, any textbook of optics",
    domain: "A flat, plane-parallel sheet; a thin lens",
    known_weaknesses:
      "Wedge, tilt and cockle of the sheet are not modelled, nor blur at the edge of wide cones of light.",
  },
  {
    id: "mounting_practice",
    what: "Where filters go, and how they are cut, fixed and cared for",
    kind: "assumption",
    source: "Common practice of the trade, no published source",
    domain: "Cameras in housings and watertight action cameras",
    known_weaknesses: "Makers' instructions come first.",
  },
];

/** Those of this version of the model. */
export const models = (): ModelInfo[] => MODELS;
