import type { MountingSteps } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";

/** Was zu tun ist, um einen Filter anzubringen. Übliche Praxis. */
export const mountingProcedure: Texts<MountingSteps, string> = {
  cut_practice: () =>
    "Übe den Zuschnitt an billiger Beleuchtungsfolie, bis sie ohne Druck und ohne Spalt passt.",
  cut_sheet: () =>
    "Schneide die Filterfolie zwischen sauberem Papier mit scharfer Klinge, und fass sie nur am Rand an.",
  slide_in: () => "Blas sie sauber und schieb sie plan in die Halterung hinter dem Objektiv.",
  tape_on: () =>
    "Blas sie sauber und kleb sie plan über die Öffnung. Halte Klebeband von Kontakten und Auflageflächen des Bajonetts fern.",
  refocus: () =>
    "Stell mit eingesetzter Folie neu scharf, und prüf die ersten Bilder in der Tiefe auf Schärfe.",
  sheet_set: () => "Bewahr die Folie beim Glasfilter gleicher Dichte auf, dann bleibt der Satz zusammen.",
  sheet_renew: () =>
    "Sieh dir die Folie vor jeder Reise an, und tausch sie aus, wenn sie zerkratzt, ausgebleicht oder gewellt ist.",
  dry_land_only: () => "Wechsle sie nur an Land, im Trockenen, fern von Sand und Gischt.",
  chain_assemble: () =>
    "Schraub die Ringe von Hand in der angegebenen Reihenfolge zusammen, ohne Gewalt; eine Spur Silikonfett hält sie gängig.",
  wall_test: () =>
    "Fotografiere eine weiße Wand bei größtem Bildwinkel und kleinster Blende, und sieh dir die Ecken an.",
  clear_of_port: () =>
    "Schieb das Objektiv langsam ins Gehäuse, und prüf vor dem Schließen, dass nichts den Port berührt.",
  no_bubbles: () =>
    "Nimm im Wasser den Filter kurz ab oder kipp ihn, damit die Luft zwischen ihm und dem Fenster entweicht.",
  tether: () => "Sichere den Filter mit einer kurzen Leine, damit er nicht verloren geht.",
  change_practised: () => "Übe den Wechsel an der Oberfläche, mit Handschuhen, wenn du welche trägst.",
  rinse: () => "Spül Filter und Halter nach dem Tauchgang in Süßwasser, und trockne sie getrennt.",
  tape_renew: () =>
    "Nimm für jede Reise neues Klebeband, und entferne, was vom alten übrig ist: Wärme und Feuchtigkeit lösen es.",
  no_grit: () => "Spül Filter und Scheibe ab, bevor du den Filter ansetzt: Sand dazwischen zerkratzt beide.",
};
