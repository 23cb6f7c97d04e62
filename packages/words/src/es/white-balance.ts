import type { WhiteBalanceTexts } from "../calculation-texts.js";
import { balanceProcedure } from "./balance-procedure.js";

import { cardNotes } from "./card-notes.js";
import { causes } from "./causes.js";
import { cautions } from "./cautions.js";
import { lightReasons } from "./reasons/light.js";
import { whiteBalanceReasons } from "./reasons/white-balance.js";

export const whiteBalance: WhiteBalanceTexts = {
  reasons: { ...whiteBalanceReasons, ...lightReasons },
  causes,
  cautions,
  procedure: balanceProcedure,
  notes: cardNotes,
};
