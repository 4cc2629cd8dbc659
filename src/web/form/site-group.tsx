import { memo } from "react";
import type { ReactElement } from "react";
import type { Draft } from "../job/draft.ts";
import { SelectField, YES_NO } from "./fields.tsx";
import { useDraft, useForm } from "./form-context.ts";
import { LeftOver } from "./left-over.tsx";
import { More } from "./more.tsx";
import { QuantityField } from "./quantity-field.tsx";
import { FieldGroup } from "./field-group.tsx";
import { Ticks } from "./ticks.tsx";
import { UNITS } from "./units.ts";

const words = {
  title: "Place",
  lead: "What some published rules ask for. Blank: not said.",
  more: "About the place, the air and the metals",
  volatility: "Do dicamba volatility rules apply here?",
  air: "Air temperature while spraying",
  treatments: "What was done to the water",
  metals: "Metals the spray touches",
  unsaid: "not said",
};

/** Facts about the place and the sprayer that published rules ask for. */
export function SiteGroup(): ReactElement {
  return <Site site={useDraft().site} />;
}

const Site = memo(function Site({ site }: Pick<Draft, "site">): ReactElement {
  const { catalogue, dispatch } = useForm();
  const withSite = (d: Draft, change: Partial<Draft["site"]>): Draft => ({
    ...d,
    site: { ...d.site, ...change },
  });
  const edit = (change: Partial<Draft["site"]>): void => {
    dispatch({ type: "edit", change: (d) => withSite(d, change) });
  };
  const said = [
    site.volatilityRules !== "",
    site.airTemperature.text.trim() !== "",
    site.waterTreatments !== null,
    site.metals !== null,
  ].filter(Boolean).length;
  return (
    <FieldGroup id="section-site" title={words.title} lead={words.lead}>
      <More title={words.more} said={said} paths={["site"]}>
        <div className="fields">
          <SelectField
            label={words.volatility}
            path="site.volatility rules"
            choices={YES_NO}
            none={words.unsaid}
            value={site.volatilityRules}
            onChange={(volatilityRules) => {
              edit({ volatilityRules });
            }}
          />
          <QuantityField
            label={words.air}
            path="site.air temperature"
            value={site.airTemperature}
            units={UNITS.temperature}
            measure={{ dimension: "temperature" }}
            signed
            onChange={(airTemperature) => {
              edit({ airTemperature });
            }}
          />
        </div>
        <Ticks
          label={words.treatments}
          path="site.water treatments"
          choices={catalogue?.waterTreatments ?? []}
          value={site.waterTreatments}
          onChange={(waterTreatments) => {
            edit({ waterTreatments });
          }}
        />
        <Ticks
          label={words.metals}
          path="site.metals"
          choices={catalogue?.sprayerMetals ?? []}
          value={site.metals}
          onChange={(metals) => {
            edit({ metals });
          }}
        />
      </More>
      <LeftOver rest={site.rest} onChange={(d, rest) => withSite(d, { rest })} />
    </FieldGroup>
  );
});
