import type { MountingCautionCode } from "@sunfathom/planner";

/** Hinweise dazu, wo ein Filter hinkommt. */
export const mountingCautions: Readonly<Record<MountingCautionCode, string>> = {
  mount_makers_instructions:
    "Halte dich bei Filter, Objektiv und Gehäuse an die Angaben der Hersteller: Prüf, ob Objektiv und Gehäuse zulassen, was du anbaust.",
  mount_sensor_dust:
    "Der Sensor liegt gleich hinter dem Objektiv: Arbeite sauber und ohne Luftzug, halte Staub und Finger fern, und lass Folie oder Klebeband nie Kontakte, Bajonett oder Verschluss berühren.",
  mount_flat_port_edges:
    "Ab einem Bildwinkel von etwa 90 Grad in Luft macht ein Planport das Bild zum Rand hin unscharf, mit Farbsäumen; ein Domeport ist dann die bessere Wahl.",
};
