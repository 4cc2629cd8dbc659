import { useState } from "react";
import type { ReactElement } from "react";
import type { FarmBeside, FarmProgramme, FarmShare } from "../../agronomy/index.ts";
import type { Language } from "../../words/index.ts";
import { sayIn, useLanguage, useSay } from "../language/language-context.ts";
import { Text } from "../language/text.tsx";
import { figure, inHundred } from "../result/words.ts";
import type { JobDocument } from "../job/to-document.ts";
import type { FlasksView } from "./use-flasks.ts";

interface FarmPanelProps {
  readonly flasks: FlasksView;
  readonly job: JobDocument;
}

/** Beside the flasks: their conditioners with real actives at real rates, by the engine that plans. */
export function FarmPanel({ flasks, job }: FarmPanelProps): ReactElement {
  const say = useSay();
  const [asked, setAsked] = useState(false);
  const { farm: view } = flasks;
  return (
    <details
      className="farm-panel"
      onToggle={(event) => {
        if (!event.currentTarget.open || asked) return;
        setAsked(true);
        flasks.askFarm(job);
      }}
    >
      <summary>{say("From flask to farm: the same conditioners in a real water")}</summary>
      {view === null ? (
        <p role="status">{say("Working out the plan …")}</p>
      ) : view.farm === null ? (
        <p role="status">
          {say("The open job is not finished, and the demonstration brings no water. Finish the job first.")}
        </p>
      ) : (
        <Farm farm={view.farm} of={view.of} />
      )}
    </details>
  );
}

function Farm({ farm, of }: { farm: FarmBeside; of: string }): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  const title = say("The conditioners of the flasks in this water");
  const heads = [
    say("With"),
    say("Tank pH"),
    say("Active"),
    say("In the tank"),
    say("On the leaf"),
    say("Leaf, its two ends"),
  ];
  const shown = farm.programmes.filter((programme) => programme.shown);
  return (
    <div data-testid="farm">
      <p>
        {say("Water: {water}, of {owner}.", { water: farm.water, owner: language.page(of) })}{" "}
        {say("Hardness {hardness} mg/L as CaCO₃, pH {pH}.", {
          hardness: figure(farm.hardness_mgPerL_asCaCO3, 3, language),
          pH: figure(farm.waterPh, 2, language),
        })}
      </p>
      <p className="about">{say("Free share of each active, in 100, at the rates of the job. Computed.")}</p>
      <div className="flask-scroll" role="group" aria-label={title} tabIndex={0}>
        <table className="flask-pairs">
          <thead>
            <tr>
              {heads.map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {shown.flatMap((programme, i) =>
              programme.shares.map((share) => (
                <FarmRow key={`${String(i)} ${share.active}`} programme={programme} share={share} />
              )),
            )}
          </tbody>
        </table>
      </div>
      {shown.every(({ dose_gPerL }) => dose_gPerL === 0) && (
        <p>{say("No conditioner of the flasks found a dose here.")}</p>
      )}
      <h4>{say("What the flasks do not show")}</h4>
      <ul className="not-shown">
        {farm.notShown.map((text) => (
          <li key={text}>
            <Text of={text} />
          </li>
        ))}
      </ul>
    </div>
  );
}

function FarmRow({ programme, share }: { programme: FarmProgramme; share: FarmShare }): ReactElement {
  const { name, dose_gPerL, tankPh } = programme;
  const language = useLanguage();
  const say = sayIn(language);
  return (
    <tr>
      <th scope="row">
        {language.phrases.name(name)}
        {dose_gPerL > 0 && `, ${figure(dose_gPerL, 3, language)} g/L`}
      </th>
      <td>{figure(tankPh, 2, language)}</td>
      <td>{language.phrases.name(share.active)}</td>
      <td>{shareWords(share.inTank, language)}</td>
      <td>{shareWords(share.onLeaf, language)}</td>
      <td>
        {share.onLeafWithSolid === null || share.onLeafWithoutSolid === null
          ? say("not known")
          : say("{low} to {high}", {
              low: inHundred(share.onLeafWithSolid, language),
              high: inHundred(share.onLeafWithoutSolid, language),
            })}
      </td>
    </tr>
  );
}

function shareWords(share: number | null, language: Language): string {
  return share === null ? sayIn(language)("not known") : inHundred(share, language);
}
