import { hintCases, type PlayerHint, type PlayerTexts } from "../../quiz/player-texts.js";
import { quizRefusals } from "./refusals.js";

const hint = (code: PlayerHint): string => quizRefusals.response_malformed(hintCases[code]).message;

/** What the player of a practice package says. */
export const PLAYER_EN: PlayerTexts = {
  decimalMark: ".",
  practice: "This is for practice.",
  keysInside:
    "The package marks your answers on its own, so the right answers are inside it, where anyone can read them. Do not use it for an exam.",
  questions: "Questions: {count}",
  notConnected: "No learning platform is connected, so nobody gets your result and this page forgets it.",
  needsScript: "The questions need JavaScript, which is switched off in this browser.",
  start: "Start",
  resume: "Continue",
  question: "Question {n} of {count}",
  takeCare: "Take care",
  answerIn: "Your answer in {unit}",
  answerBare: "Your answer, a number",
  entries: "Entries",
  howToPlace: "Drag each entry to its place, or choose it from the list there.",
  place: "Place {n}",
  notPlaced: "nothing yet",
  partnerOf: "{left} goes with",
  check: "Check answer",
  back: "Back",
  next: "Next",
  toResults: "Results",
  scoreOfQuestion: "Score: {score} of 1",
  scoreOfPaper: "Score: {score} of {count} ({percent} %)",
  yourAnswer: "How you did",
  solution: "Worked solution",
  results: "Results",
  right: "right",
  partlyRight: "right in part",
  wrong: "wrong",
  blank: "blank",
  blanksLeft: "Questions still blank: {count}. You can go back to them. Once you finish, a blank scores 0.",
  finish: "Finish",
  finished: "You have finished.",
  saved: "The learning platform has your result.",
  notSaved: "The learning platform did not take your result. Write your score down.",
  hints: {
    not_a_number: "Answer with a number.",
    number_ambiguous: hint("number_ambiguous"),
    other_unit: hint("other_unit"),
    unit_unasked: hint("unit_unasked"),
    order_incomplete: hint("order_incomplete"),
  },
};
