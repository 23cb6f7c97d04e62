/** Texts of questions on mounting filters. */
import { list } from "./common.js";

export const MOUNTING_EN = {
  ring: (p: { from: string; to: string }) => `${p.from} on the lens side, ${p.to} on the filter side`,
  ring_chain: {
    stem: (p: { lens: string; filter: string }) =>
      `A lens has a filter thread of ${p.lens}, and your filter has a thread of ${p.filter}. Put these step rings in the order in which you screw them on, the one on the lens at the top.`,
    last: (p: { threads: string[] }) =>
      `Each ring screws into the one before it. From lens to filter the threads are ${list(p.threads)}.`,
  },
  ring_direction: {
    stem: (p: { lens: string; filter: string }) =>
      `A lens has a filter thread of ${p.lens}, and your filter has a thread of ${p.filter}. Which step ring joins them?`,
    twoStem: (p: { lens: string; filter: string }) =>
      `A lens has a filter thread of ${p.lens}, and your filter has a thread of ${p.filter}. Which two step rings join them, named from lens side to filter side and in the order you screw them on?`,
    two: (p: { first: string; second: string }) => `First ${p.first}; then ${p.second}`,
    brief: (p: { from: string; to: string }) => `${p.from} to ${p.to}`,
    last: (p: { lens: string; filter: string }) =>
      `The lens side must fit the lens (${p.lens}), the filter side the filter (${p.filter}).`,
    twoLast: (p: { lens: string; between: string; filter: string }) =>
      `Each ring has to fit what it screws into: ${p.lens} on the lens, ${p.between} between the rings, ${p.filter} at the filter.`,
  },
  flat_port_field: {
    stem: (p: { field: string }) =>
      `A lens has a field of view of ${p.field} from corner to corner in air. What is its field of view in water, behind a flat port? The refractive index of sea water is 1.34.`,
    airStem: (p: { field: string }) =>
      `Behind a flat port you want a field of view of ${p.field} from corner to corner in water. Which field of view must the lens have in air? The refractive index of sea water is 1.34.`,
    airHalf: (p: { half: string; sine: string; product: string }) =>
      `Half the field in water is ${p.half}. Its sine is ${p.sine}, and ${p.sine} × 1.34 = ${p.product}.`,
    half: (p: { half: string; sine: string; divided: string }) =>
      `Half the field in air is ${p.half}. Its sine is ${p.sine}, and ${p.sine} / 1.34 = ${p.divided}.`,
    last: (p: { divided: string; half: string; field: string }) =>
      `The angle with a sine of ${p.divided} is ${p.half}, and the field of view is twice that: ${p.field}.`,
  },
  sheet_shift: {
    stem: (p: { thickness: string; index: string; focal: string }) =>
      `You fix a filter sheet of ${p.thickness} with a refractive index of ${p.index} behind a lens of ${p.focal}. Distant things are no longer sharp at ∞. To which distance do you turn the focus ring to get them sharp again?`,
    shift: (p: { thickness: string; index: string; shift: string }) =>
      `The sheet moves the image back by (1 - 1 / ${p.index}) × ${p.thickness} = ${p.shift}.`,
    last: (p: { focal: string; shift: string; distance: string }) =>
      `The lens has to move out by the same amount, as it does for a distance of f²/shift: (${p.focal})² / ${p.shift} = ${p.distance}.`,
  },
  mount_place: {
    fisheyeStem: (p: { dome: string }) =>
      `A camera with interchangeable lenses carries a fisheye lens behind a dome port of ${p.dome} radius. Where does the colour filter go?`,
    flatStem: (p: { thread: string }) =>
      `A standard lens sits behind a flat port with a thread of ${p.thread} on its outside. You want to take the filter off and put it back at depth. Where does it go?`,
    domeStem: (p: { thread: string; dome: string }) =>
      `A standard lens with a filter thread of ${p.thread} sits behind a dome port of ${p.dome} radius. The lens is built into the camera. Where does the colour filter go?`,
    wideStem: (p: { dome: string }) =>
      `A camera with interchangeable lenses carries a very wide lens without a filter thread, behind a dome port of ${p.dome} radius. Where does the colour filter go?`,
    actionStem:
      "An action camera has a flat window and goes into the water without a housing. Where does the colour filter go?",
    option: {
      behind_lens: "As a sheet behind the lens",
      on_lens: "Screwed onto the lens, inside the housing",
      before_port: "In the water in front of the port or window",
    },
    last: {
      fisheye:
        "A fisheye's front bulges and has no thread, and no flat filter covers its view: a thin sheet goes behind the lens.",
      flat: "You can only change what sits in the water, and a flat port takes a flat filter in front of it.",
      wide: "No flat filter seats on a dome, and this lens has no thread: a thin sheet goes behind the lens.",
      action:
        "You cannot get at its lens: a frame or clip holds the filter in the water in front of the window.",
      dome: "No flat filter seats on a dome, and nothing goes behind a lens that is built in: that leaves the lens's own thread.",
    },
  },
};
