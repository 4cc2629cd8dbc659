import type { ReactElement } from "react";
import type { Draft, Typed } from "../job/draft.ts";
import { useForm } from "./form-context.ts";
import { SelectField, TextField } from "./fields.tsx";
import { QuantityField } from "./quantity-field.tsx";
import { Section } from "./section.tsx";

type Spray = Draft["spray"];

interface SprayQuestion {
  readonly key: keyof Spray;
  readonly label: string;
  /** Name in the document. */
  readonly name: string;
  readonly units: readonly string[];
  readonly dimension: "volume per area" | "volume" | "area" | "temperature" | "share" | "time";
  readonly hint?: string;
  readonly signed?: boolean;
}

const QUESTIONS: readonly SprayQuestion[] = [
  {
    key: "volume",
    label: "Water volume",
    name: "volume",
    dimension: "volume per area",
    units: ["L/ha", "US gal/ac", "imp gal/ac"],
  },
  {
    key: "leastVolume",
    label: "Least volume you would use",
    name: "least volume",
    dimension: "volume per area",
    units: ["L/ha", "US gal/ac", "imp gal/ac"],
    hint: "Blank: not said.",
  },
  { key: "tank", label: "Tank", name: "tank", dimension: "volume", units: ["L", "US gal", "imp gal"] },
  { key: "area", label: "Area", name: "area", dimension: "area", units: ["ha", "ac"] },
  {
    key: "temperature",
    label: "Water temperature",
    name: "temperature",
    dimension: "temperature",
    units: ["°C", "°F"],
    signed: true,
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
    key: "holdingTime",
    label: "Longest time in the tank",
    name: "holding time",
    dimension: "time",
    units: ["h", "min", "d"],
    hint: "From mixing to the last of the load.",
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

/** The spray: volumes, area, temperature and time. */
export function SprayGroup(): ReactElement {
  const { draft, dispatch } = useForm();
  const edit = (key: keyof Spray, value: Typed): void => {
    dispatch({ type: "edit", change: (d) => ({ ...d, spray: { ...d.spray, [key]: value } }) });
  };
  return (
    <Section id="section-spray" title="Spray">
      <div className="fields">
        {QUESTIONS.map(({ key, label, name, dimension, units, hint, signed }) => (
          <QuantityField
            key={key}
            label={label}
            path={`spray.${name}`}
            value={draft.spray[key]}
            units={units}
            measure={{ dimension }}
            signed={signed ?? false}
            {...(hint === undefined ? {} : { hint })}
            onChange={(value) => {
              edit(key, value);
            }}
          />
        ))}
      </div>
    </Section>
  );
}

const PLACES = [
  { id: "on the leaf", name: "on the leaf" },
  { id: "in the tank", name: "in the tank" },
];
const YES_NO = [
  { id: "yes", name: "yes" },
  { id: "no", name: "no" },
];

/** The aim: how much must stay free, where, and how sure. */
export function AimGroup(): ReactElement {
  const { draft, dispatch } = useForm();
  const edit = (change: Partial<Draft["aim"]>): void => {
    dispatch({ type: "edit", change: (d) => ({ ...d, aim: { ...d.aim, ...change } }) });
  };
  return (
    <Section id="section-aim" title="Aim">
      <div className="fields">
        <TextField
          label="Share that must stay free"
          path="aim.free share"
          decimal
          hint="0.95 is 95 in 100."
          value={draft.aim.freeShare}
          onChange={(freeShare) => {
            edit({ freeShare });
          }}
        />
        <SelectField
          label="Judged"
          path="aim.where"
          choices={PLACES}
          value={draft.aim.where}
          onChange={(where) => {
            edit({ where });
          }}
        />
        <TextField
          label="Confidence"
          path="aim.confidence"
          decimal
          hint="0.9 is 9 waters in 10 that fit the test."
          value={draft.aim.confidence}
          onChange={(confidence) => {
            edit({ confidence });
          }}
        />
        <SelectField
          label="Do dicamba volatility rules apply here?"
          path="site.volatility rules"
          choices={YES_NO}
          none="not said"
          value={draft.volatilityRules}
          onChange={(volatilityRules) => {
            dispatch({ type: "edit", change: (d) => ({ ...d, volatilityRules }) });
          }}
        />
      </div>
    </Section>
  );
}
