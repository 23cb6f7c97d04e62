import type { MountingCautionCode } from "@sunfathom/planner";

/** Advertencias sobre dónde va un filtro. */
export const mountingCautions: Readonly<Record<MountingCautionCode, string>> = {
  mount_makers_instructions:
    "Siga las instrucciones de los fabricantes de filtros, objetivos y carcasas: compruebe que el objetivo y la carcasa admiten lo que añade.",
  mount_sensor_dust:
    "El sensor está justo detrás del objetivo: trabaje en un lugar limpio y sin corrientes de aire, no deje que entren polvo ni dedos, y que la lámina o la cinta no toquen nunca los contactos, la montura ni el obturador.",
  mount_flat_port_edges:
    "Con un ángulo de visión de más de unos 90 grados en el aire, un puerto plano emborrona los colores y la nitidez hacia los bordes; el domo es mejor puerto.",
};
