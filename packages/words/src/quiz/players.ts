import { PLAYER_EN } from "../en/quiz/player.js";
import { PLAYER_ES } from "../es/quiz/player.js";
import type { PlayerTexts } from "./player-texts.js";

/** The languages that the player of a practice package speaks. */
export const playerTexts: Readonly<Record<"en" | "es", PlayerTexts>> = { en: PLAYER_EN, es: PLAYER_ES };
