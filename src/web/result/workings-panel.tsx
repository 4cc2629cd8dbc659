import { useEffect, useState } from "react";
import type { ReactElement } from "react";
import type { Programme, Workings } from "../../agronomy/index.ts";
import type { EngineView } from "../engine/use-engine.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { BalanceTable } from "./balance-table.tsx";
import { DosePicture, DoseTable } from "./dose-picture.tsx";
import { programmeWords } from "./programme-words.ts";

interface WorkingsPanelProps {
  readonly plan: number;
  readonly programme: Programme;
  readonly askAbout: EngineView<"plan">["askAbout"];
}

/** How the picked way came about: asked of the engine when it is opened. */
export function WorkingsPanel({ plan, programme, askAbout }: WorkingsPanelProps): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  const [open, setOpen] = useState(false);
  const [workings, setWorkings] = useState<Workings | null>(null);
  const { id } = programme;
  useEffect(() => {
    setWorkings(null);
    if (!open) return;
    let current = true;
    void askAbout({ plan, programme: id, what: "workings" }).then((reply) => {
      if (current) setWorkings(reply?.workings ?? null);
    });
    return () => {
      current = false;
    };
  }, [open, plan, id, askAbout]);
  return (
    <details
      data-testid="workings"
      onToggle={(event) => {
        setOpen(event.currentTarget.open);
      }}
    >
      <summary>
        {say("Dose curve and free share worked out: {way}", { way: programmeWords(programme, language) })}
      </summary>
      {open && workings === null && <p className="about">{say("Working it out.")}</p>}
      {workings !== null && workings.curve !== null && (
        <>
          <DosePicture id="dose-curve" curve={workings.curve} />
          <DoseTable curve={workings.curve} />
        </>
      )}
      {workings?.balances.map((balance) => (
        <BalanceTable key={`${balance.active} ${balance.where}`} balance={balance} />
      ))}
    </details>
  );
}
