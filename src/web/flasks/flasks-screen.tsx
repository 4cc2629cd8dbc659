import { useState } from "react";
import type { ReactElement, ReactNode } from "react";
import { BenchPanel } from "./bench-panel.tsx";
import { DEMOS } from "./demos.ts";
import { FarmPanel } from "./farm-panel.tsx";
import { FlasksToolbar } from "./flasks-toolbar.tsx";
import type { JobDocument } from "../job/to-document.ts";
import type { FlaskStepView, ShowView } from "./messages.ts";
import { SeenPanel } from "./seen-panel.tsx";
import { useFlasks } from "./use-flasks.ts";
import "./flasks.css";

/** The screen of the demonstration: flasks side by side, a slider for the steps, large enough for a projector. */
export function FlasksScreen({ job }: { job: JobDocument }): ReactElement {
  const [text, setText] = useState(DEMOS[0]?.text ?? "");
  const [step, setStep] = useState(Infinity);
  const [large, setLarge] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const flasks = useFlasks(text);
  const { view } = flasks;
  const most = view === null ? 0 : view.steps.length - 1;
  const at = Math.min(step, most);
  const state = flasks.working ? "working" : view === null ? "blocked" : "done";
  return (
    <div className={large ? "page flasks-page large" : "page flasks-page"} data-flasks={state}>
      <FlasksToolbar
        text={text}
        onPick={(next) => {
          setText(next);
          setStep(Infinity);
          setProblem(null);
        }}
        onProblem={setProblem}
        large={large}
        onLarge={setLarge}
        flasks={flasks}
        job={job}
      />
      <main className="flasks-main">
        {problem !== null && <p className="message message-error">{problem}</p>}
        {flasks.issues
          .filter(({ severity }) => severity === "error")
          .map(({ words }) => (
            <p key={words} className="message message-error">
              {words}
            </p>
          ))}
        {view !== null && (
          <>
            <h2>{view.show.title ?? "Flasks side by side"}</h2>
            {view.show.about !== null && <p>{view.show.about}</p>}
            <Drawing view={view} step={at} />
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
            <Steps flasks={view.steps[at]?.flasks ?? []} />
            <Comparison view={view} working={flasks.working} />
            <FarmPanel key={`farm ${text}`} flasks={flasks} job={job} />
            <BenchPanel key={`bench ${text}`} flasks={flasks} show={view.show} />
            <SeenPanel show={view.show} check={flasks.check} onCompare={flasks.compare} />
            <Figures view={view} />
          </>
        )}
      </main>
    </div>
  );
}

/** The drawing of the report: its text is escaped where it is made. */
function Drawing({ view, step }: { view: ShowView; step: number }): ReactElement {
  return (
    <div
      className="flasks-drawing"
      role="group"
      aria-label="The flasks, drawn"
      tabIndex={0}
      dangerouslySetInnerHTML={{ __html: view.steps[step]?.drawing ?? "" }}
    />
  );
}

function Steps({ flasks }: { flasks: readonly FlaskStepView[] }): ReactElement {
  return (
    <section>
      <h3>What goes in, and who has the metal</h3>
      <ul className="flask-steps">
        {flasks.map((flask) => (
          <li key={flask.flask}>
            <StepOf {...flask} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function StepOf({ flask, added, look, say, held, remarks }: FlaskStepView): ReactNode {
  return (
    <>
      <strong>{flask}</strong>: {added ?? "as before"}. {look}.{say !== null && <em> “{say}”</em>}
      {held.length > 0 && <span className="about"> {held.join("; ")}.</span>}
      {remarks.map((text) => (
        <span key={text} className="about">
          {" "}
          {text}
        </span>
      ))}
    </>
  );
}

function Comparison({ view, working }: { view: ShowView; working: boolean }): ReactElement {
  const { show, order } = view;
  return (
    <section>
      <h3>Side by side, after the last step</h3>
      <p role="status">
        {working ? "Working out how sure the colours are …" : `From dark to light: ${order}`}
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

function Figures({ view }: { view: ShowView }): ReactElement {
  const { show, estimates } = view;
  const citation = (key: string): string => show.sources.find((one) => one.key === key)?.citation ?? key;
  return (
    <details>
      <summary>Where the optical figures come from. {estimates}</summary>
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
