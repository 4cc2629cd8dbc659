import type { LanguagePack } from "../language.ts";
import { ANSWERS } from "./answers.ts";
import { BINDING_NOTES } from "./binding-notes.ts";
import { CARD } from "./card.ts";
import { CERTAINTY } from "./certainty.ts";
import { EVIDENCE } from "./evidence.ts";
import { FIGURES } from "./figures.ts";
import { GROWER } from "./grower.ts";
import { ISSUES } from "./issues.ts";
import { PLAN } from "./plan.ts";
import { ACTIVES } from "./actives.ts";
import { ASSUMPTIONS } from "./assumptions.ts";
import { CAUTIONS } from "./cautions.ts";
import { CHEMISTRIES } from "./chemistries.ts";
import { COMPLAINT } from "./complaint.ts";
import { COMPLAINT_CAUSES } from "./complaint-causes.ts";
import { DEMONSTRATIONS } from "./demonstrations.ts";
import { FILLING } from "./filling.ts";
import { FLASK_LOOKS } from "./flask-looks.ts";
import { FLASK_PHRASES } from "./flask-phrases.ts";
import { FLASKS } from "./flasks.ts";
import { FORM } from "./form.ts";
import { ISSUE_TEXTS } from "./issue-texts.ts";
import { ISSUES_FILES } from "./issues-files.ts";
import { ISSUES_JOB } from "./issues-job.ts";
import { ISSUES_UNITS } from "./issues-units.ts";
import { ISSUES_WATER } from "./issues-water.ts";
import { OWN_FIELDS } from "./own-fields.ts";
import { PAGE } from "./page.ts";
import { READINGS } from "./readings.ts";
import { REMARKS } from "./remarks.ts";
import { RESULT } from "./result.ts";
import { RULES } from "./rules.ts";
import { SENDING } from "./sending.ts";
import { SHEET } from "./sheet.ts";
import { THRESHOLDS } from "./thresholds.ts";
import { WORKINGS } from "./workings.ts";
import { PRODUCT_CAUTIONS } from "./product-cautions.ts";
import { unbroken } from "./unbroken.ts";

/** French, not yet checked by an adviser who speaks it. */
export const FRENCH: LanguagePack = {
  words: unbroken({
    answers: ANSWERS,
    card: CARD,
    certainty: CERTAINTY,
    evidence: EVIDENCE,
    figures: FIGURES,
    grower: GROWER,
    issues: ISSUES,
    plan: PLAN,
  }),
  phrases: unbroken({
    ...ACTIVES,
    ...CHEMISTRIES,
    ...FILLING,
    ...CAUTIONS,
    ...PRODUCT_CAUTIONS,
    ...READINGS,
    ...ISSUE_TEXTS,
    ...ISSUES_UNITS,
    ...ISSUES_WATER,
    ...ISSUES_JOB,
    ...ISSUES_FILES,
    ...ASSUMPTIONS,
    ...REMARKS,
    ...RULES,
    ...BINDING_NOTES,
    ...THRESHOLDS,
    ...COMPLAINT_CAUSES,
    ...FLASK_PHRASES,
    ...DEMONSTRATIONS,
  }),
  page: unbroken({
    ...PAGE,
    ...FORM,
    ...OWN_FIELDS,
    ...SHEET,
    ...RESULT,
    ...WORKINGS,
    ...SENDING,
    ...COMPLAINT,
    ...FLASKS,
    ...FLASK_LOOKS,
  }),
};
