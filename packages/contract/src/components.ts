import type { z } from "zod/v3";
import * as batchLine from "./batch/line.js";
import { BatchItem, BatchOperation, BatchRequest } from "./batch/request.js";
import { calculationAnswers } from "./generated/calculation-answers.js";
import * as kitAdviceAnswer from "./kit-advice/answer.js";
import { KitAdviceRequest, KitDive, KitPiece, PieceHolder, PieceItem } from "./kit-advice/request.js";
import { PictureFormat, PictureLook, PictureTheme } from "./picture/look.js";
import { ErrorMeaning, ProblemPage } from "./problem/page-schema.js";
import { FieldError, problemSchemas } from "./problem/problem.js";
import * as quizAnswers from "./quiz/answers.js";
import * as quizItems from "./quiz/items.js";
import { QtiVersion, QuizPackageFormat, QuizPackageRequest } from "./quiz/package.js";
import { QuizLanguage, QuizLevel, QuizRelease, QuizTemplate, QuizUnits } from "./quiz/paper-request.js";
import * as reference from "./reference/reference.js";
import { Brief } from "./result/brief.js";
import * as cardFit from "./result/card-fit.js";
import { Clarity } from "./result/clarity.js";
import {
  Caution,
  Figure,
  ModelVersion,
  Reason,
  ReasonBasis,
  Statement,
  UncertaintyCause,
} from "./result/common.js";
import * as estimates from "./result/estimates.js";
import { Link, LinkMethod } from "./result/links.js";
import * as mountingParts from "./result/mounting-parts.js";
import { Bottom, ReflectanceSample } from "./scene/bottom.js";
import {
  CameraClass,
  ExposureMode,
  Finish,
  RecordingCurve,
  RecordingPoint,
  WhiteBalanceMode,
} from "./scene/camera.js";
import { CardSample, TransferCurve } from "./scene/card.js";
import { DaylightBasis } from "./scene/daylight.js";
import { SubjectFacing } from "./scene/dive.js";
import { FilterFit, FilterMatch, FilterSample } from "./scene/filter-samples.js";
import { KitItem, KitItemName, ResolvedKitItem } from "./scene/kit.js";
import { BeamMedium, Lamp, LedName, ResolvedLamp } from "./scene/lamps.js";
import { FilterChange, FilterKind, TransmittanceSample } from "./scene/lens-filter.js";
import { FilterHolder, RearFixing, StepRing } from "./scene/mounting/filter.js";
import { LensKind, PortKind } from "./scene/mounting/lens.js";
import { MountingScene, ResolvedMountingScene } from "./scene/mounting/scene.js";
import { Overhead } from "./scene/overhead.js";
import { ResolvedScene, Scene } from "./scene/scene.js";
import { SensorSample } from "./scene/sensor.js";
import { Language, TextUnits } from "./scene/texts-asked.js";
import { SunSide } from "./scene/view.js";
import { KdSample, WaterHue, WaterType } from "./scene/water.js";
import { Health } from "./service/health.js";
import { ContactEdge, CuttingTemplateRequest } from "./sheet/cutting-template.js";
import {
  CuttingTemplateFormat,
  CuttingTemplateLook,
  GradeFormat,
  GradeLook,
  SlateFormat,
  SlateLook,
} from "./sheet/look.js";
import * as diveTimelinesAnswer from "./trip/dive-timelines-answer.js";
import {
  CardFrame,
  DiveClip,
  DiveEvent,
  DiveSample,
  DiveTimelinesRequest,
  LensEvent,
} from "./trip/dive-timelines-request.js";
import * as lightWindowsAnswer from "./trip/light-windows-answer.js";
import { CloudForecast, LightWindowsRequest, WindowAim } from "./trip/light-windows-request.js";
import * as tripAdviceAnswer from "./trip/trip-advice-answer.js";
import * as tripAdviceRequest from "./trip/trip-advice-request.js";

const all: Record<string, z.ZodTypeAny> = {
  Scene,
  Language,
  TextUnits,
  WaterType,
  WaterHue,
  KdSample,
  CardSample,
  TransferCurve,
  CameraClass,
  RecordingCurve,
  RecordingPoint,
  SensorSample,
  Finish,
  ExposureMode,
  WhiteBalanceMode,
  DaylightBasis,
  SubjectFacing,
  SunSide,
  Overhead,
  Bottom,
  ReflectanceSample,
  FilterKind,
  FilterChange,
  TransmittanceSample,
  FilterSample,
  FilterFit,
  FilterMatch,
  KitItem,
  KitItemName,
  ResolvedKitItem,
  Lamp,
  BeamMedium,
  LedName,
  ResolvedScene,
  ResolvedLamp,
  MountingScene,
  PortKind,
  LensKind,
  FilterHolder,
  RearFixing,
  StepRing,
  ResolvedMountingScene,
  ...estimates,
  Figure,
  Statement,
  ReasonBasis,
  Reason,
  Caution,
  UncertaintyCause,
  ModelVersion,
  LinkMethod,
  Link,
  Brief,
  Clarity,
  ...cardFit,
  ...calculationAnswers,
  ...mountingParts,
  ...reference,
  ...quizItems,
  ...quizAnswers,
  QtiVersion,
  QuizPackageFormat,
  QuizPackageRequest,
  QuizLevel,
  QuizRelease,
  QuizUnits,
  QuizLanguage,
  QuizTemplate,
  PictureLook,
  PictureFormat,
  PictureTheme,
  SlateLook,
  SlateFormat,
  CuttingTemplateRequest,
  CuttingTemplateLook,
  CuttingTemplateFormat,
  ContactEdge,
  GradeLook,
  GradeFormat,
  BatchRequest,
  BatchItem,
  BatchOperation,
  ...batchLine,
  LightWindowsRequest,
  WindowAim,
  CloudForecast,
  ...lightWindowsAnswer,
  KitAdviceRequest,
  KitDive,
  KitPiece,
  PieceHolder,
  PieceItem,
  ...kitAdviceAnswer,
  ...tripAdviceRequest,
  ...tripAdviceAnswer,
  DiveTimelinesRequest,
  CardFrame,
  DiveSample,
  DiveClip,
  DiveEvent,
  LensEvent,
  ...diveTimelinesAnswer,
  Health,
  FieldError,
  ErrorMeaning,
  ProblemPage,
  ...problemSchemas,
};

/** Every named schema of the wire, by name in alphabetical order. */
export const components: Readonly<Record<string, z.ZodTypeAny>> = Object.fromEntries(
  Object.entries(all).sort(([a], [b]) => (a < b ? -1 : 1)),
);
