import { useEffect, useRef, useState } from "react";
import type { ReactElement } from "react";
import type { SheetOptions } from "../../water/index.ts";
import type { SheetInput, SheetView } from "../engine/messages.ts";
import { useForm } from "../form/form-context.ts";
import { IssueText } from "../form/messages.tsx";
import { useSay } from "../language/language-context.ts";
import { readSheetFile } from "./read-file.ts";
import { SamplePreview } from "./sample-preview.tsx";

/** How long [ms] the panel waits after a keystroke before the sheet is read again. */
const DEBOUNCE_MS = 200;
const NOTHING: SheetInput = { text: "" };

/** Paste, drop or open a laboratory sheet; what stands there is shown beside what was understood. */
export function SheetPanel({ onTaken }: { onTaken: () => void }): ReactElement {
  const { readSheet } = useForm();
  const say = useSay();
  const [input, setInput] = useState<SheetInput>(NOTHING);
  const [options, setOptions] = useState<SheetOptions>({});
  const [view, setView] = useState<SheetView | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [note, setNote] = useState<string | null>(null);
  const [chosen, setChosen] = useState(0);
  const file = useRef<HTMLInputElement>(null);

  useEffect(() => {
    let current = true;
    const timer = setTimeout(() => {
      void readSheet(input, options).then((read) => {
        if (current) setView(read);
      });
    }, DEBOUNCE_MS);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [input, options, readSheet]);

  const take = (next: SheetInput): void => {
    setInput(next);
    setOptions({});
    setChosen(0);
    setProblem(null);
    setNote(null);
  };
  const open = async (opened: File): Promise<void> => {
    const read = await readSheetFile(opened, say);
    if (read.ok) {
      take(read.input);
      setNote(read.note);
    } else setProblem(read.problem);
  };
  const sample = view?.samples[chosen] ?? view?.samples[0];
  const given = "cells" in input || input.text.trim() !== "";
  return (
    <div
      className="sheet"
      onDragOver={(event) => {
        event.preventDefault();
      }}
      onDrop={(event) => {
        const dropped = event.dataTransfer.files[0];
        if (dropped === undefined) return;
        event.preventDefault();
        void open(dropped);
      }}
    >
      <label htmlFor="sheet-text">{say("Text or table of the sheet")}</label>
      <p id="sheet-about" className="about">
        {say("Paste lines or cells, or drop a file here. Nothing on it is left out unsaid.")}
      </p>
      <textarea
        id="sheet-text"
        aria-describedby="sheet-about"
        rows={6}
        spellCheck={false}
        value={"cells" in input ? input.cells.map((row) => row.join("\t")).join("\n") : input.text}
        onChange={(event) => {
          take({ text: event.target.value });
        }}
      />
      <button type="button" className="quiet" onClick={() => file.current?.click()}>
        {say("Open a sheet file")}
      </button>
      <input
        ref={file}
        type="file"
        className="visually-hidden"
        aria-label={say("Sheet file")}
        tabIndex={-1}
        onChange={(event) => {
          const opened = event.target.files?.[0];
          event.target.value = "";
          if (opened !== undefined) void open(opened);
        }}
      />
      {problem !== null && <IssueText severity="error" words={problem} alert />}
      {note !== null && <IssueText severity="warning" words={note} />}
      {view?.decimalAsked === true && (
        <AskDecimal
          onChoose={(decimal) => {
            setOptions({ ...options, decimal });
          }}
        />
      )}
      {(view?.unitAsked === true || options.bareUnit !== undefined) && (
        <AskUnit
          unit={options.bareUnit ?? ""}
          onChoose={(bareUnit) => {
            setOptions({ ...options, bareUnit });
          }}
        />
      )}
      {view !== null && view.samples.length > 1 && (
        <ChooseSample view={view} chosen={chosen} onChoose={setChosen} />
      )}
      {given && view !== null && sample === undefined && (
        <IssueText
          severity="warning"
          words={say("No reading found. Expected lines such as “Calcium 92 mg/L”.")}
        />
      )}
      {given && view !== null && sample !== undefined && (
        <SamplePreview
          key={`${String(chosen)} ${JSON.stringify(options)} ${sample.label ?? ""} ${String(sample.entries.length)}`}
          sample={sample}
          onTaken={onTaken}
        />
      )}
      {given && view !== null && <OtherText view={view} />}
    </div>
  );
}

/** Numbers such as 1,250 have two readings; one answer settles the whole sheet. */
function AskDecimal({ onChoose }: { onChoose: (mark: "." | ",") => void }): ReactElement {
  const say = useSay();
  return (
    <div className="message message-warning" role="group" aria-label={say("Decimal mark of the sheet")}>
      {say("How does this sheet write one and a half?")}
      <div className="asks">
        {([".", ","] as const).map((mark) => (
          <button
            key={mark}
            type="button"
            className="quiet"
            onClick={() => {
              onChoose(mark);
            }}
          >
            1{mark}5
          </button>
        ))}
      </div>
    </div>
  );
}

const BARE_UNITS = ["mg/L", "mmol/L", "meq/L", "µg/L"];

/** Concentrations that stand without a unit; one answer settles the whole sheet. */
function AskUnit({ unit, onChoose }: { unit: string; onChoose: (unit: string) => void }): ReactElement {
  const say = useSay();
  return (
    <div className="field">
      <label htmlFor="sheet-unit">{say("Unit of concentrations that stand without one")}</label>
      <select
        id="sheet-unit"
        value={unit}
        onChange={(event) => {
          onChoose(event.target.value);
        }}
      >
        {unit === "" && <option value="">{say("choose")}</option>}
        {BARE_UNITS.map((one) => (
          <option key={one} value={one}>
            {one}
          </option>
        ))}
      </select>
    </div>
  );
}

interface ChooseSampleProps {
  readonly view: SheetView;
  readonly chosen: number;
  readonly onChoose: (index: number) => void;
}

function ChooseSample({ view, chosen, onChoose }: ChooseSampleProps): ReactElement {
  const say = useSay();
  return (
    <div className="field">
      <label htmlFor="sheet-sample">{say("Sample, one of {count}", { count: view.samples.length })}</label>
      <select
        id="sheet-sample"
        value={chosen}
        onChange={(event) => {
          onChoose(Number(event.target.value));
        }}
      >
        {view.samples.map((one, index) => (
          <option key={`${String(index)} ${one.label ?? ""}`} value={index}>
            {one.label ?? say("Sample {number}", { number: index + 1 })}
            {one.sampled === null ? "" : `, ${one.sampled}`}
          </option>
        ))}
      </select>
    </div>
  );
}

/** Lines that hold no reading, so that a person can see that none was missed. */
function OtherText({ view }: { view: SheetView }): ReactElement | null {
  const say = useSay();
  if (view.other.length === 0) return null;
  return (
    <details>
      <summary>
        {view.other.length === 1
          ? say("1 line without a reading")
          : say("{count} lines without a reading", { count: view.other.length })}
      </summary>
      <ul className="raw-lines">
        {view.other.map((text) => (
          <li key={`${String(text.line)} ${text.text}`}>
            {say("Line {number}:", { number: text.line })} <code>{text.text}</code>
          </li>
        ))}
      </ul>
    </details>
  );
}
