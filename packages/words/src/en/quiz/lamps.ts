/** Texts of questions on lamps, alone and against daylight. */
export const LAMPS_EN = {
  mixed_verdict: {
    stem: (p: { scene: string; depth: string; distance: string; lamp: string; daylight: string }) =>
      `${p.scene} At ${p.depth} two white lamps of 5600 K light an upright subject from ${p.distance}. On the subject a meter reads ${p.daylight} of daylight and ${p.lamp} of lamp light. Which light sets the colour of the subject?`,
    option: {
      lamps_lead: "The lamps lead: balance to them",
      daylight_leads: "Daylight leads: balance to daylight",
      lights_fight: "Neither: both count, and they differ visibly",
    },
    compare: (p: { red: string; green: string; blue: string }) =>
      `Lamp light against daylight on the subject: ${p.red} stops in red, ${p.green} stops in green and ${p.blue} stops in blue (plus means more lamp light).`,
    last: {
      lamps_lead: "The lamps outshine daylight so far that it hardly tints the subject.",
      daylight_leads: "Daylight outshines the lamps so far that they hardly show.",
      lights_fight:
        "Both lights count, and their colours differ: whatever the balance, one of them shows a cast.",
    },
  },
  way_out: {
    stem: (p: { scene: string; depth: string; distance: string }) =>
      `${p.scene} At ${p.depth} you balanced to daylight. Two white lamps, ${p.distance} from a subject, now make it look too red against the rest of the picture. What takes the difference away and keeps the lamps on?`,
    option: {
      lamp_filter: (p: { kind: string }) => `A ${p.kind} filter on each lamp`,
      red_on_lamp: ["A red filter on each lamp", "A red filter on each of the two lamps"],
      kelvin: ["A lower kelvin setting of the white balance", "A lower kelvin setting"],
      red_on_lens: ["A red filter on the lens", "A red filter in front of the lens"],
    },
    split: (p: { split: string; left: string; kind: string; density: string }) =>
      `Lamp-lit and daylit grey differ by ${p.split} (CIEDE2000). A ${p.kind} filter of density ${p.density} on the lamps brings that down to ${p.left}.`,
    last: "The lamp has to be made like the daylight at depth, which lacks red: its filter holds red back. All that acts on the whole picture leaves the difference.",
  },
  lamp_falloff: {
    stem: (p: { near: string; far: string }) =>
      `A lamp lights a subject from ${p.near} away. You move the lamp back to ${p.far}. How much of its light does the subject lose? Leave out what the water takes.`,
    waterStem: (p: { near: string; far: string; perMetre: string; water: string }) =>
      `A lamp lights a subject from ${p.near} away, in ${p.water}, which takes ${p.perMetre} of red light per metre. You move the lamp back to ${p.far}. How much of the lamp's red light does the subject lose?`,
    spread: (p: { ratio: string; stops: string }) =>
      `The beam's light falls with the square of the distance, two stops for each doubling: 2 × log2(${p.ratio}) = ${p.stops} stops.`,
    water: (p: { more: string; perMetre: string; stops: string }) =>
      `On ${p.more} more of water it loses ${p.perMetre} per metre: ${p.stops} stops.`,
    last: (p: { spread: string; water: string; total: string }) =>
      `Distance and water together: ${p.spread} + ${p.water} stops, about ${p.total} stops.`,
  },
  lamp_path: {
    stem: (p: { depth: string; water: string; perMetre: string; lamp: string; camera: string }) =>
      `On a night dive at ${p.depth} in ${p.water}, the water takes ${p.perMetre} of red light per metre. From the lamp to the subject it is ${p.lamp}, and from the subject to the camera ${p.camera}. How much red light does the water take from lamp to camera?`,
    path: (p: { lamp: string; camera: string; total: string }) =>
      `The light goes from the lamp to the subject and on to the camera: ${p.lamp} + ${p.camera} = ${p.total}.`,
    last: (p: { perMetre: string; total: string; stops: string }) =>
      `${p.perMetre} per metre over ${p.total}: ${p.stops} stops.`,
  },
};
