import type { FilterHolder } from "@sunfathom/planner";

/** Was einen Filter hält, im Nominativ und im Akkusativ. */
export const mountingHolders: Readonly<Record<FilterHolder, { wer: string; wen: string }>> = {
  screw_on_lens: {
    wer: "ein Schraubfilter auf dem Objektiv",
    wen: "einen Schraubfilter auf dem Objektiv",
  },
  screw_on_port: { wer: "ein Schraubfilter auf dem Port", wen: "einen Schraubfilter auf dem Port" },
  flip: { wer: "ein Klapphalter am Port", wen: "einen Klapphalter am Port" },
  clip_on: { wer: "ein Clip-Filter", wen: "einen Clip-Filter" },
  rear_sheet: { wer: "eine Folie hinter dem Objektiv", wen: "eine Folie hinter dem Objektiv" },
  action_camera: {
    wer: "ein Rahmen über dem Fenster der Kamera",
    wen: "einen Rahmen über dem Fenster der Kamera",
  },
};
