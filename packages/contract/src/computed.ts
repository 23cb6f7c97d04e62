/** Components that come in and go out where answers are computed, be it in a service or without one. */
export const sceneNames = ["Scene", "MountingScene"] as const;
export type SceneName = (typeof sceneNames)[number];

export const answerNames = [
  "AttenuationAnswer",
  "ColourRecoveryAnswer",
  "DiveAdviceAnswer",
  "ExposureLossAnswer",
  "FilterChoiceAnswer",
  "FilterKindsAnswer",
  "FilterMountingAnswer",
  "MixedLightAnswer",
  "ModelsAnswer",
  "WaterTypesAnswer",
  "WhiteBalanceAnswer",
] as const;
export type AnswerName = (typeof answerNames)[number];
