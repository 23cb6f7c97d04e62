import type { ModelInfo } from "../result/reference.js";

/** What they rest on behind that: sensor, filters, colours, ports and rings. */
export const cameraModels: readonly ModelInfo[] = [
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
    what: "Colour error of the 24-patch chart after balance, exposure and the finish: a fitted 3 x 3 matrix, a basic edit, or the camera's own matrix",
    kind: "formula",
    source: "This project; error measure CIEDE2000",
    domain: "A subject lit as a whole; open water behind it",
    known_weaknesses:
      "A grade by hand can be better or worse than a fitted matrix. A filter is worth mounting if it gains 0.5 before such a grade, 1 without one: judgements. Cameras make their pictures by matrices and tables of their own.",
  },
  {
    id: "grey_world",
    what: "Automatic white balance: the mean of the picture is taken for grey",
    kind: "assumption",
    source: "Buchsbaum 1980, Journal of the Franklin Institute 310, 1",
    domain:
      "Subject, sea floor and open water in the shares of the scene level; within the limits of the camera's balance",
    known_weaknesses: "Cameras weigh the picture by their own, unpublished rules.",
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
    what: "Spectra of white video lights",
    kind: "table",
    source: "CIE 15:2018, Table 12; mixed linearly in mired between 2733 and 6598 K",
    domain: "2733 to 6598 K as phosphor LEDs, below as Planckian radiators, above as CIE daylight",
    known_weaknesses:
      "Video lights of one colour temperature differ in their red; an even cone is assumed for the beam and its peak carried as uncertainty.",
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
    what: "Light that filters and rings cost the corners",
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
    id: "gap_and_weight",
    what: "Ghosts between filter and window, and a filter's weight in water",
    kind: "formula",
    source:
      "Fresnel's equations and Archimedes' principle of any textbook, exact; densities of glass, acrylic and aluminium from data sheets and handbooks, from memory",
    domain: "Uncoated surfaces that face each other; a disc in an aluminium rim, in sea water",
    known_weaknesses:
      "Coatings make ghosts fainter. How thick glass and rim are is taken from a few filters.",
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
