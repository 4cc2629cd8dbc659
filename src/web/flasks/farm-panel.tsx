import { useState } from "react";
import type { ReactElement } from "react";
import type { FarmBeside, FarmProgramme, FarmShare } from "../../agronomy/index.ts";
import { figure, inHundred } from "../result/words.ts";
import type { JobDocument } from "../job/to-document.ts";
import type { FlasksView } from "./use-flasks.ts";

const words = {
  summary: "From flask to farm: the same conditioners in a real water",
  working: "Working out the plan …",
  none: "The open job is not finished, and the demonstration brings no water. Finish the job first.",
  of: (of: string, water: string): string => `Water: ${water}, of ${of}.`,
  water: (hardness: string, pH: string): string => `Hardness ${hardness} mg/L as CaCO₃, pH ${pH}.`,
  lead: "Free share of each active, in 100, at the rates of the job. Computed.",
  table: "The conditioners of the flasks in this water",
  heads: ["With", "Tank pH", "Active", "In the tank", "On the leaf", "Leaf, its two ends"],
  notKnown: "not known",
  nothing: "No conditioner of the flasks found a dose here.",
  notShown: "What the flasks do not show",
};

interface FarmPanelProps {
  readonly flasks: FlasksView;
  readonly job: JobDocument;
}

/** Beside the flasks: their conditioners with real actives at real rates, by the engine that plans. */
export function FarmPanel({ flasks, job }: FarmPanelProps): ReactElement {
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
      <summary>{words.summary}</summary>
      {view === null ? (
        <p role="status">{words.working}</p>
      ) : view.farm === null ? (
        <p role="status">{words.none}</p>
      ) : (
        <Farm farm={view.farm} of={view.of} />
      )}
    </details>
  );
}

function Farm({ farm, of }: { farm: FarmBeside; of: string }): ReactElement {
  const shown = farm.programmes.filter((programme) => programme.shown);
  return (
    <div data-testid="farm">
      <p>
        {words.of(of, farm.water)}{" "}
        {words.water(figure(farm.hardness_mgPerL_asCaCO3), figure(farm.waterPh, 2))}
      </p>
      <p className="about">{words.lead}</p>
      <div className="flask-scroll" role="group" aria-label={words.table} tabIndex={0}>
        <table className="flask-pairs">
          <thead>
            <tr>
              {words.heads.map((head) => (
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
      {shown.every(({ dose_gPerL }) => dose_gPerL === 0) && <p>{words.nothing}</p>}
      <h4>{words.notShown}</h4>
      <ul className="not-shown">
        {farm.notShown.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </div>
  );
}

function FarmRow({ programme, share }: { programme: FarmProgramme; share: FarmShare }): ReactElement {
  const { name, dose_gPerL, tankPh } = programme;
  return (
    <tr>
      <th scope="row">
        {name}
        {dose_gPerL > 0 && `, ${figure(dose_gPerL)} g/L`}
      </th>
      <td>{figure(tankPh, 2)}</td>
      <td>{share.active}</td>
      <td>{shareWords(share.inTank)}</td>
      <td>{shareWords(share.onLeaf)}</td>
      <td>
        {share.onLeafWithSolid === null || share.onLeafWithoutSolid === null
          ? words.notKnown
          : `${inHundred(share.onLeafWithSolid)} to ${inHundred(share.onLeafWithoutSolid)}`}
      </td>
    </tr>
  );
}

function shareWords(share: number | null): string {
  return share === null ? words.notKnown : inHundred(share);
}
