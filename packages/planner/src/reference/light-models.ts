import type { ModelInfo } from "../result/reference.js";

/** What answers rest on from the sun to the picture's haze: daylight, water, what lies on its ground. */
export const lightModels: readonly ModelInfo[] = [
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
    known_weaknesses: "Divers guess distances, and look at different targets: about a third either way.",
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
    known_weaknesses: "Shade from cliffs and hulls is not modelled.",
  },
  {
    id: "williamson_hollins_2022",
    what: "Scattering from diffuse attenuation: of open sea by its chlorophyll, of the coast fitted to measured scattering per water type",
    kind: "formula",
    source:
      "Open sea: Morel & Maritorena 2001, Journal of Geophysical Research 106, 7163, 0.416 Chl^0.766 at 550 nm with chlorophyll from Kd(490). Coast: fitted to Williamson & Hollins 2022, Applied Optics 61, 9951, types 1C to 7C. Between them by the shape of the attenuation",
    domain: "Chlorophyll 0.02 to 20 mg/m^3; coast from 1C to 7C",
    known_weaknesses:
      "Scattering is not fixed by diffuse attenuation: a factor of two either way is carried as uncertainty. In type III the campaigns measured half of what chlorophyll gives, at the coastal stations of Petzold 1972 a quarter to a fifth of what the types give. 7C rests on one campaign.",
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
    known_weaknesses: "The day's haze, dust and humidity are unknown: about 10 % in level.",
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
      "About 4 % for a solid subject, 10 % for open water at eye level and a third of a stop looking up or down, more in water that hardly scatters. Looking up by more than 35 degrees, open water is taken as at 35: the bright window of the surface is not modelled.",
  },
  {
    id: "sea_floor",
    what: "Light that the sea floor sends up to the subject and into the water",
    kind: "formula",
    source:
      "Maritorena, Morel & Gentili 1994, Limnology and Oceanography 39, 1689; attenuation of diffuse upward light fitted to photon tracing",
    domain: "A level, matt floor without end",
    known_weaknesses:
      "Slopes, walls and shadows on the floor are not modelled. Floors of one name differ in how pale they are by more than half.",
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
    id: "overhead",
    what: "Share of open water's daylight that comes in under an overhang, into a cavern or a wreck",
    kind: "assumption",
    source: "From memory: a half, a tenth, a fiftieth, unless the share is given",
    domain: "Where daylight still reaches; the same at all wavelengths, without a beam of the sun",
    known_weaknesses:
      "Places differ by a factor of two either way and more; light from an opening to the side goes through more water than the depth suggests.",
  },
  {
    id: "ice_cover",
    what: "Daylight through ice and snow",
    kind: "formula",
    source:
      "Two streams through layers (Dunkle & Bevans 1956; Perovich 1990, from memory); absorption of ice: Warren & Brandt 2008; what scatters and dims from extinction and albedo at 500 nm: Grenfell & Maykut 1977, J. Glaciol. 18, 445",
    domain: "Ice to 4 m, snow to 1 m, away from holes and edges",
    known_weaknesses: "Clear ice and dry snow only; algae, sediment and melt are left out.",
  },
  {
    id: "path_attenuation",
    what: "Light lost on a short path from a video light or to the lens",
    kind: "assumption",
    source: "Absorption plus half of scattering, from memory; bounds are absorption and beam attenuation",
    domain: "Paths of a few metres",
    known_weaknesses:
      "The share of scattered light that still arrives depends on beam and lens: 0.25 to 1 of scattering is carried as uncertainty.",
  },
  {
    id: "lamp_beam",
    what: "How a video light's lumens fall on a subject: intensity as a power of the cosine, half of it at the edge of the beam angle, and the mean over the subject for an aim that is off",
    kind: "formula",
    source:
      "Beam angle as CIE e-ILV 17-27-077 has it; pattern of LEDs by Moreno & Sun 2008, Opt. Express 16, 1808, from memory; aim off by 8 degrees up and down and left and right, from memory",
    domain: "Full beam angles from 5 to 180 degrees in water",
    known_weaknesses:
      "Beams differ: one with an even middle is half a stop brighter, one with a hot spot and spill half a stop darker on the subject. All video lights are assumed to be aimed alike.",
  },
  {
    id: "lit_haze",
    what: "Backscatter of video lights between camera and subject",
    kind: "formula",
    source:
      "Single scattering along the line of sight; backscattered share of particles 0.0183 (Petzold 1972, as used in public radiative-transfer code)",
    domain: "Video lights beside the camera pointing at the subject, in homogeneous water",
    known_weaknesses:
      "The distance of the video lights from the line of sight is assumed, and large particles near the port are not counted: a factor of two either way.",
  },
];
