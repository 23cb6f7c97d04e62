import type { MountingCautionCode } from "@sunfathom/planner";

/** Précautions sur la place du filtre. */
export const mountingCautions: Readonly<Record<MountingCautionCode, string>> = {
  mount_makers_instructions:
    "Suivez les notices des fabricants pour les filtres, les objectifs et les caissons : vérifiez que l’objectif et le caisson acceptent ce que vous ajoutez.",
  mount_sensor_dust:
    "Le capteur est juste derrière l’objectif : travaillez au propre et à l’abri du vent, tenez la poussière et les doigts à l’écart, et ne laissez jamais une gélatine ou un adhésif toucher les contacts, la monture ou l’obturateur.",
  mount_flat_port_edges:
    "Avec un champ de plus de 90 degrés environ dans l’air, un hublot plan étale les couleurs et perd le piqué vers les bords ; un dôme est alors le meilleur hublot.",
};
