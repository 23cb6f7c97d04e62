import { hintCases, type PlayerHint, type PlayerTexts } from "../../quiz/player-texts.js";
import { quizRefusals } from "./refusals.js";

const hint = (code: PlayerHint): string => quizRefusals.response_malformed(hintCases[code]).message;

/** Lo que dice el reproductor de un paquete de práctica. */
export const PLAYER_ES: PlayerTexts = {
  decimalMark: ",",
  practice: "Esto es para practicar.",
  keysInside:
    "El paquete corrige las respuestas por sí mismo, así que las soluciones van dentro y cualquiera puede leerlas. No lo use en un examen.",
  questions: "Preguntas: {count}",
  notConnected:
    "No hay ninguna plataforma de aprendizaje conectada: nadie recibe su resultado y esta página lo olvida.",
  needsScript: "Las preguntas necesitan JavaScript, que está desactivado en este navegador.",
  start: "Empezar",
  resume: "Continuar",
  question: "Pregunta {n} de {count}",
  takeCare: "Precaución",
  answerIn: "Su respuesta en {unit}",
  answerBare: "Su respuesta, un número",
  entries: "Elementos",
  howToPlace: "Arrastre cada elemento a su sitio, o elíjalo en la lista que hay allí.",
  place: "Sitio {n}",
  notPlaced: "nada todavía",
  partnerOf: "{left} va con",
  check: "Comprobar la respuesta",
  back: "Atrás",
  next: "Siguiente",
  toResults: "Resultados",
  scoreOfQuestion: "Puntos: {score} de 1",
  scoreOfPaper: "Puntos: {score} de {count} ({percent} %)",
  yourAnswer: "Cómo le ha ido",
  solution: "Solución paso a paso",
  results: "Resultados",
  right: "bien",
  partlyRight: "bien en parte",
  wrong: "mal",
  blank: "en blanco",
  blanksLeft:
    "Preguntas aún en blanco: {count}. Puede volver a ellas. Cuando termine, las que queden en blanco valen 0.",
  finish: "Terminar",
  finished: "Ha terminado.",
  saved: "La plataforma de aprendizaje tiene su resultado.",
  notSaved: "La plataforma de aprendizaje no ha aceptado su resultado. Anote sus puntos.",
  hints: {
    not_a_number: "Responda con un número.",
    number_ambiguous: hint("number_ambiguous"),
    other_unit: hint("other_unit"),
    unit_unasked: hint("unit_unasked"),
    order_incomplete: hint("order_incomplete"),
  },
};
