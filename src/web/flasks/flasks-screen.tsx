import { useRef, useState } from "react";
import type { ReactElement, ReactNode } from "react";
import type { FlaskShow, FlaskShown } from "../../agronomy/index.ts";
import {
  estimatesInWords,
  flasksDrawing,
  lookInWords,
  orderInWords,
  sharesInWords,
  stateAt,
} from "../../report/index.ts";
import { saveText } from "../result/results.tsx";
import { DEMOS } from "./demos.ts";
import { SeenPanel } from "./seen-panel.tsx";
import { useFlasks } from "./use-flasks.ts";
import "./flasks.css";

/** Largest file opened [bytes]: the same limit as on the command line. */
const MOST_BYTES = 1_000_000;

/** The screen of the demonstration: flasks side by side, a slider for the steps, large enough for a projector. */
export function FlasksScreen(): ReactElement {
  const [text, setText] = useState(DEMOS[0]?.text ?? "");
  const [step, setStep] = useState(Infinity);
  const [large, setLarge] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const file = useRef<HTMLInputElement>(null);
  const view = useFlasks(text);
  const { show } = view;
  const most = show === null ? 0 : Math.max(...show.flasks.map(({ steps }) => steps.length));
  const at = Math.min(step, most);
  const pick = (next: string): void => {
    setText(next);
    setStep(Infinity);
    setProblem(null);
  };
  const open = async (chosen: File): Promise<void> => {
    if (chosen.size > MOST_BYTES) setProblem(`${chosen.name} is too large for a demonstration.`);
    else pick(await chosen.text());
  };
  const state = view.working ? "working" : show === null ? "blocked" : "done";
  return (
    <div className={large ? "page flasks-page large" : "page flasks-page"} data-flasks={state}>
      <header className="toolbar">
        <h1 tabIndex={-1}>Flasks</h1>
        <p className="about">A demonstration, computed before it is mixed.</p>
        <div className="tools">
          <a href="#plan">Back to the spray plan</a>
          <label className="tool-select">
            <span>Demonstration</span>
            <select value={text} onChange={(event) => pick(event.target.value)}>
              {DEMOS.map((demo) => (
                <option key={demo.name} value={demo.text}>
                  {demo.name}
                </option>
              ))}
              {DEMOS.every((demo) => demo.text !== text) && <option value={text}>own file</option>}
            </select>
          </label>
          <button type="button" onClick={() => file.current?.click()}>
            Open file
          </button>
          <input
            ref={file}
            type="file"
            hidden
            accept=".yaml,.yml,.json"
            onChange={(event) => {
              const chosen = event.target.files?.[0];
              if (chosen !== undefined) void open(chosen);
              event.target.value = "";
            }}
          />
          <button type="button" aria-pressed={large} onClick={() => setLarge(!large)}>
            Large, for a projector
          </button>
          <button
            type="button"
            disabled={show === null}
            onClick={() =>
              view.script((page) => {
                if (page !== null) saveText("flasks.html", page, "text/html");
              })
            }
          >
            Save the script to print
          </button>
        </div>
      </header>
      <main className="flasks-main">
        {problem !== null && <p className="message message-error">{problem}</p>}
        {view.issues
          .filter(({ severity }) => severity === "error")
          .map(({ words }) => (
            <p key={words} className="message message-error">
              {words}
            </p>
          ))}
        {show !== null && (
          <>
            <h2>{show.title ?? "Flasks side by side"}</h2>
            {show.about !== null && <p>{show.about}</p>}
            <Drawing show={show} step={at} />
            <label className="step-slider">
              <span>
                Step {at} of {most}
              </span>
              <input
                type="range"
                min={0}
                max={most}
                value={at}
                onChange={(event) => setStep(Number(event.target.value))}
              />
            </label>
            <Steps show={show} step={at} />
            <Comparison show={show} working={view.working} />
            <SeenPanel show={show} check={view.check} onCompare={view.compare} />
            <Figures show={show} />
          </>
        )}
      </main>
    </div>
  );
}

/** The drawing of the report: its text is escaped where it is made. */
function Drawing({ show, step }: { show: FlaskShow; step: number }): ReactElement {
  const svg = flasksDrawing(show, { step, id: "screen" }).html;
  return (
    <div
      className="flasks-drawing"
      role="group"
      aria-label="The flasks, drawn"
      tabIndex={0}
      dangerouslySetInnerHTML={{ __html: svg }}
    />
  );
}

function Steps({ show, step }: { show: FlaskShow; step: number }): ReactElement {
  return (
    <section>
      <h3>What goes in, and who has the metal</h3>
      <ul className="flask-steps">
        {show.flasks.map((flask) => (
          <li key={flask.name}>
            <StepOf flask={flask} step={step} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function StepOf({ flask, step }: { flask: FlaskShown; step: number }): ReactNode {
  const state = stateAt(flask, step);
  const held = Object.entries(state.heldBy).map(([metal, shares]) => `${metal}: ${sharesInWords(shares)}`);
  return (
    <>
      <strong>{flask.name}</strong>: {step > flask.steps.length ? "as before" : state.added}.{" "}
      {lookInWords(state)}.{state.say !== null && <em> “{state.say}”</em>}
      {held.length > 0 && <span className="about"> {held.join("; ")}.</span>}
      {state.remarks.map(({ text }) => (
        <span key={text} className="about">
          {" "}
          {text}
        </span>
      ))}
    </>
  );
}

function Comparison({ show, working }: { show: FlaskShow; working: boolean }): ReactElement {
  return (
    <section>
      <h3>Side by side, after the last step</h3>
      <p role="status">
        {working ? "Working out how sure the colours are …" : `From dark to light: ${orderInWords(show)}`}
      </p>
      <div className="flask-scroll" role="group" aria-label="Table of pairs" tabIndex={0}>
        <table className="flask-pairs">
          <thead>
            <tr>
              <th scope="col">Two flasks</th>
              <th scope="col">Difference ΔE00</th>
              <th scope="col">By the constants</th>
              <th scope="col">Seen as</th>
            </tr>
          </thead>
          <tbody>
            {show.pairs.map(({ a, b, deltaE00, low, high, verdict }) => (
              <tr key={`${a} ${b}`}>
                <th scope="row">
                  {a} – {b}
                </th>
                <td>{deltaE00.toFixed(0)}</td>
                <td>{working ? "…" : `${low.toFixed(0)} to ${high.toFixed(0)}`}</td>
                <td>{verdict}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {show.remarks.map(({ text }) => (
        <p key={text}>{text}</p>
      ))}
    </section>
  );
}

function Figures({ show }: { show: FlaskShow }): ReactElement {
  const citation = (key: string): string => show.sources.find((one) => one.key === key)?.citation ?? key;
  return (
    <details>
      <summary>Where the optical figures come from. {estimatesInWords(show)}</summary>
      <div className="flask-scroll" role="group" aria-label="Table of optical figures" tabIndex={0}>
        <table className="flask-pairs">
          <tbody>
            {show.optics.map((one) => (
              <tr key={`${one.species} ${one.what} ${one.value}`}>
                <th scope="row">{one.species}</th>
                <td>
                  {one.what}: {one.value} {one.unit}
                </td>
                <td>
                  {one.estimate ? "Estimate. " : ""}
                  {citation(one.source)}
                  {one.locator === null ? "" : `; ${one.locator}`}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
