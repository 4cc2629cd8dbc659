import { memo } from "react";
import type { ReactElement } from "react";
import type { Dimension } from "../../units/index.ts";
import type { Draft } from "../job/draft.ts";
import type { Typed } from "../job/typed.ts";
import { SelectField, YES_NO } from "./fields.tsx";
import { useDraft, useForm } from "./form-context.ts";
import { LeftOver } from "./left-over.tsx";
import { More } from "./more.tsx";
import { QuantityField } from "./quantity-field.tsx";
import { FieldGroup } from "./field-group.tsx";
import { UNITS } from "./units.ts";

const words = {
  more: "More about the spray and the sprayer",
  aerated: "Is the tank full of air?",
  aeratedHint: "Open, with a splashing return: iron(II) then rusts.",
  unsaid: "not said",
};

type Spray = Draft["spray"];

interface SprayQuestion {
  readonly key: Exclude<keyof Spray, "rest" | "aerated">;
  readonly label: string;
  /** Name in the document. */
  readonly name: string;
  readonly units: readonly string[];
  readonly dimension: Exclude<Dimension, "price">;
  readonly hint?: string;
  readonly signed?: boolean;
}

const VOLUME_PER_AREA = ["L/ha", "US gal/ac", "imp gal/ac"];

/** What every job needs. */
const FIRST: readonly SprayQuestion[] = [
  {
    key: "volume",
    label: "Water volume",
    name: "volume",
    dimension: "volume per area",
    units: VOLUME_PER_AREA,
  },
  { key: "tank", label: "Tank", name: "tank", dimension: "volume", units: UNITS.volume },
  { key: "area", label: "Area", name: "area", dimension: "area", units: UNITS.area },
  {
    key: "temperature",
    label: "Water temperature",
    name: "temperature",
    dimension: "temperature",
    units: UNITS.temperature,
    signed: true,
  },
  {
    key: "holdingTime",
    label: "Longest time in the tank",
    name: "holding time",
    dimension: "time",
    units: UNITS.time,
    hint: "From mixing to the last of the load.",
  },
];

/** What some jobs can say. */
const FURTHER: readonly SprayQuestion[] = [
  {
    key: "leastVolume",
    label: "Least volume you would use",
    name: "least volume",
    dimension: "volume per area",
    units: VOLUME_PER_AREA,
    hint: "Blank: not said.",
  },
  {
    key: "seasonArea",
    label: "Area sprayed like this in a season",
    name: "season area",
    dimension: "area",
    units: UNITS.area,
    hint: "All passes together. Blank: no cost per season.",
  },
  {
    key: "humidity",
    label: "Humidity of the air",
    name: "humidity",
    dimension: "share",
    units: ["%"],
    hint: "Blank: 80 %.",
  },
  {
    key: "leafCalcium",
    label: "Calcium on the leaf",
    name: "leaf calcium",
    dimension: "solid rate",
    units: ["mg/m2"],
    hint: "What drops take up from the leaf surface. Blank: none counted.",
  },
  {
    key: "coverage",
    label: "Leaf the spray covers",
    name: "coverage",
    dimension: "share",
    units: ["%"],
    hint: "Needed with calcium on the leaf.",
  },
  {
    key: "output",
    label: "Output of all nozzles",
    name: "output",
    dimension: "flow",
    units: ["L/min", "US gal/min"],
    hint: "Gives the time in the tank where that is blank.",
  },
  {
    key: "deadVolume",
    label: "Left when it runs dry",
    name: "dead volume",
    dimension: "volume",
    units: UNITS.volume,
    hint: "In tank, pump and lines.",
  },
  {
    key: "hopper",
    label: "Induction hopper holds",
    name: "hopper",
    dimension: "volume",
    units: UNITS.volume,
    hint: "Blank: none, or not said.",
  },
  {
    key: "jar",
    label: "Jar for the jar test",
    name: "jar",
    dimension: "volume",
    units: ["L", "mL"],
    hint: "Blank: 1 L.",
  },
];

/** The spray: volumes, area, temperature and time; behind a tap what fewer jobs say. */
export function SprayGroup(): ReactElement {
  return <SprayQuestions spray={useDraft().spray} />;
}

const SprayQuestions = memo(function SprayQuestions({ spray }: { spray: Spray }): ReactElement {
  const { dispatch } = useForm();
  const { aerated, rest } = spray;
  const further = FURTHER.filter(({ key }) => spray[key].text.trim() !== "").length;
  return (
    <FieldGroup id="section-spray" title="Spray">
      <Questions questions={FIRST} spray={spray} />
      <More
        title={words.more}
        said={further + (aerated === "" ? 0 : 1)}
        paths={[...FURTHER.map(({ name }) => `spray.${name}`), "spray.aerated"]}
      >
        <Questions questions={FURTHER} spray={spray} />
        <SelectField
          label={words.aerated}
          path="spray.aerated"
          choices={YES_NO}
          none={words.unsaid}
          hint={words.aeratedHint}
          value={aerated}
          onChange={(answer) => {
            dispatch({ type: "edit", change: (d) => ({ ...d, spray: { ...d.spray, aerated: answer } }) });
          }}
        />
      </More>
      <LeftOver rest={rest} onChange={(d, rest) => ({ ...d, spray: { ...d.spray, rest } })} />
    </FieldGroup>
  );
});

interface QuestionsProps {
  readonly questions: readonly SprayQuestion[];
  readonly spray: Spray;
}

function Questions({ questions, spray }: QuestionsProps): ReactElement {
  return (
    <div className="fields">
      {questions.map((question) => (
        <Question key={question.key} question={question} value={spray[question.key]} />
      ))}
    </div>
  );
}

interface QuestionProps {
  readonly question: SprayQuestion;
  readonly value: Typed;
}

const Question = memo(function Question({ question, value }: QuestionProps): ReactElement {
  const { dispatch } = useForm();
  const { key, label, name, dimension, units, hint, signed } = question;
  return (
    <QuantityField
      label={label}
      path={`spray.${name}`}
      value={value}
      units={units}
      measure={{ dimension }}
      signed={signed ?? false}
      {...(hint === undefined ? {} : { hint })}
      onChange={(answer) => {
        dispatch({ type: "edit", change: (d) => ({ ...d, spray: { ...d.spray, [key]: answer } }) });
      }}
    />
  );
});
