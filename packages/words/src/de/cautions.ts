import type { CautionCode } from "@sunfathom/planner";

/** Hinweise zur Sicherheit, die mehrere Antworten geben. */
export const cautions: Readonly<Record<CautionCode, string>> = {
  not_a_dive_planner:
    "Hier geht es um Licht und Farbe, das ist kein Tauchplan. Tiefe, Zeit, Gas und Aufstieg richten sich nach deiner Ausbildung, deinem Tauchlehrer und den örtlichen Regeln.",
  ascent_first:
    "Dein Aufstieg und dein Sicherheitsstopp gehen vor. An Tiefen für den Rückweg kommst du ohnehin vorbei: Ändere dafür nie deinen Aufstieg.",
  overhead_by_training:
    "Tauche nachts, in Höhlen und Wracks oder unter Eis nur mit der Ausbildung, der Führung und den Backup-Lampen, die dazugehören. Videolampen sind keine Backup-Lampen.",
  hover_to_balance:
    "Mach einen Weißabgleich nur, wenn du sicher austariert schwebst und nichts berührst. Lass ihn lieber aus, als Buddy, Tiefe oder Gas aus den Augen zu verlieren.",
  closer_under_control:
    "Geh nur näher heran, wenn deine Tarierung sitzt: Berühre nichts und lass den Tieren Raum.",
  lamps_in_water_only:
    "Videolampen zum Tauchen werden vom Wasser gekühlt: Schalte sie nur im Wasser ein. An der Luft überhitzen sie, können dich verbrennen und Kunststofffilter schmelzen.",
  lamps_not_into_eyes: "Schau nie in eine Videolampe und leuchte weder Tauchern noch Tieren in die Augen.",
  lamps_stay_on_rig:
    "Lass Videolampen und Akkus am Rig, auch wenn du sie nicht brauchst: Ohne sie ist es anders austariert. Probier jeden Umbau aus, bevor du dich darauf verlässt.",
  batteries_by_maker:
    "Akkus und Ladegeräte nur nach Angaben der Hersteller. Lade nie unbeaufsichtigt und verwende nichts, was beschädigt oder geflutet war.",
  filter_on_dry_land:
    "Wechsle einen Filter im Gehäuse oder hinter dem Objektiv nur an Land und im Trockenen; öffne ein Gehäuse nie dicht am Wasser.",
  filter_flip_practised:
    "Wechsle einen Filter unter Wasser nur, wenn du sicher austariert schwebst und nichts berührst. Übe es vorher an der Oberfläche: In der Tiefe ist ein freier Kopf wichtiger als das Bild.",
};
