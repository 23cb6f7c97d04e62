import type { CautionCode } from "@sunfathom/planner";

/** Advertencias que dan varias respuestas. */
export const cautions: Readonly<Record<CautionCode, string>> = {
  not_a_dive_planner:
    "Esto son consejos sobre luz y color, no un plan de inmersión. La profundidad, el tiempo, el gas y el ascenso se rigen por su formación, su instructor y las normas locales.",
  ascent_first:
    "Su ascenso y su parada de seguridad van primero. Las profundidades que se dan para la subida son profundidades por las que pasa de todos modos: no cambie nunca su ascenso por ninguna de ellas.",
  overhead_by_training:
    "Bucee de noche, en cuevas, en pecios o bajo el hielo solo con la formación, el guía y las luces de reserva que esas inmersiones exigen. Los focos para filmar no son luces de reserva.",
  hover_to_balance:
    "Haga un balance de blancos solo mientras se mantiene suspendido con la flotabilidad controlada y sin tocar nada. Renuncie a ello antes que descuidar a su compañero, su profundidad o su gas.",
  closer_under_control:
    "Acérquese solo con la flotabilidad controlada: no toque nada, y deje espacio a los animales.",
  lamps_in_water_only:
    "Los focos de vídeo para buceo se refrigeran con el agua: enciéndalos solo dentro del agua. Fuera de ella se sobrecalientan, pueden causar quemaduras y pueden fundir un filtro de plástico.",
  lamps_not_into_eyes:
    "No mire nunca de frente a un foco de vídeo ni apunte con él a los ojos de buceadores o animales.",
  lamps_stay_on_rig:
    "Deje los focos de vídeo y las baterías montados en el equipo de cámara aunque no los use: sin ellos cambia su equilibrio en el agua. Tras cualquier cambio en el equipo, pruebe cómo se maneja antes de confiar en él.",
  batteries_by_maker:
    "Con baterías y cargadores, siga las instrucciones de los fabricantes. No cargue nunca sin vigilancia, y no use nunca baterías ni cargadores dañados o que se hayan inundado.",
  filter_on_dry_land:
    "Cambie un filtro de dentro de la carcasa o de detrás del objetivo solo en tierra y en seco; no abra nunca una carcasa cerca del agua.",
  filter_flip_practised:
    "Cambie un filtro bajo el agua solo mientras se mantiene suspendido con la flotabilidad controlada y sin tocar nada. Practíquelo antes en la superficie: bajo el agua, no sobrecargarse de tareas importa más que la imagen.",
};
