import type { ReactElement } from "react";
import type { ActiveVerdict, DryingStep, Share, TankState } from "../../agronomy/index.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { DryingPicture } from "./drying-picture.tsx";
import { Evidence } from "./evidence.tsx";
import { figure, heldParts } from "./words.ts";

interface NumbersProps {
  readonly id: string;
  readonly verdict: ActiveVerdict;
  readonly path: readonly DryingStep[];
  readonly tank: TankState;
}

/** The figures behind the picture, as tables. */
export function Numbers(props: NumbersProps): ReactElement {
  const { id, verdict, path, tank } = props;
  const language = useLanguage();
  const say = sayIn(language);
  const rows: readonly (readonly [string, Pick<Share, "free" | "heldBy"> | null])[] = [
    [say("in the tank"), verdict.inTank],
    [say("on the leaf, central"), verdict.onLeaf],
    [say("on the leaf, salt never forms"), verdict.onLeaf.withoutSolid],
    [say("on the leaf, salt forms at once"), verdict.onLeaf.withSolid],
  ];
  const name = language.phrases.name(verdict.name);
  const put = (value: number, digits = 3): string => figure(value, digits, language);
  const solids = tank.solids.map(
    (solid) => `${language.phrases.name(solid.name)} ${put(solid.amount_molPerL * 1000)} mmol/L`,
  );
  const { free } = verdict.inTank;
  return (
    <details>
      <summary>{say("The numbers for {active}", { active: name })}</summary>
      <p>
        {say(
          "Free share = active bound to nothing but hydrogen, sodium, potassium or ammonium ÷ all of the active.",
        )}
        {free !== null &&
          ` ${say("In the tank: {part} ÷ {whole} mmol/L = {share}.", {
            part: put(1000 * free * verdict.concentration_molPerL, 4),
            whole: put(1000 * verdict.concentration_molPerL, 4),
            share: put(free),
          })}`}{" "}
        <Evidence of="computed" />
      </p>
      <p>
        {say("Tank: pH {pH}, ionic strength {strength} mol/L, solids: {solids}.", {
          pH: put(tank.pH),
          strength: put(tank.ionicStrength_molPerL),
          solids: solids.join(", ") || say("none"),
        })}
        {tank.extrapolated &&
          ` ${say("Activity coefficients are used beyond the range they were fitted to.")}`}
      </p>
      <div
        className="table"
        role="region"
        aria-label={say("Shares of {active}", { active: name })}
        tabIndex={0}
      >
        <table>
          <thead>
            <tr>
              <th scope="col">{say("Where")}</th>
              <th scope="col">{say("Free, share of 1")}</th>
              <th scope="col">{say("Held, share of 1")}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(([where, share]) => (
              <tr key={where}>
                <th scope="row">{where}</th>
                <td>{share === null || share.free === null ? say("not known") : put(share.free)}</td>
                <td>
                  {share === null || share.free === null
                    ? say("not known")
                    : heldParts(share.heldBy)
                        .map(([holder, part]) => `${language.phrases.name(holder)} ${put(part)}`)
                        .join(", ") || say("nothing")}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {verdict.onLeaf.free !== null && (
        <>
          <DryingPicture id={`${id}-drying`} active={verdict.active} name={name} path={path} />
          <DryingTable verdict={verdict} path={path} />
        </>
      )}
    </details>
  );
}

function DryingTable({
  verdict,
  path,
}: {
  verdict: ActiveVerdict;
  path: readonly DryingStep[];
}): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  const put = (value: number, digits = 3): string => figure(value, digits, language);
  const label = say("Drying path of {active}", { active: language.phrases.name(verdict.name) });
  return (
    <div className="table" role="region" aria-label={label} tabIndex={0}>
      <table>
        <caption>{say("The drop as it dries")}</caption>
        <thead>
          <tr>
            <th scope="col">{say("Times stronger")}</th>
            <th scope="col">{say("Free, share of 1")}</th>
            <th scope="col">pH</th>
            <th scope="col">{say("Ionic strength, mol/L")}</th>
            <th scope="col">{say("Solids")}</th>
          </tr>
        </thead>
        <tbody>
          {path.map((step) => {
            const free = step.free[verdict.active] ?? null;
            return (
              <tr key={step.factor}>
                <th scope="row">{put(step.factor, 2)}</th>
                <td>{free === null ? say("not known") : put(free)}</td>
                <td>{put(step.pH)}</td>
                <td>
                  {put(step.ionicStrength_molPerL)}
                  {step.extrapolated && ` (${say("beyond the fitted range")})`}
                </td>
                <td>
                  {step.solids.map((solid) => language.phrases.name(solid.name)).join(", ") || say("none")}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
