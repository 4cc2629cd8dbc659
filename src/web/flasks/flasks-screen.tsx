import { useState } from "react";
import type { ComponentType, ReactElement, ReactNode } from "react";
import { sameContentsText } from "../../report/index.ts";
import { BenchPanel } from "./bench-panel.tsx";
import { DEMOS } from "./demos.ts";
import { FarmPanel } from "./farm-panel.tsx";
import { FlasksToolbar } from "./flasks-toolbar.tsx";
import type { JobDocument } from "../job/to-document.ts";
import type { FlaskStepView, Picked, ShowView } from "./messages.ts";
import { useKept, keptPaper } from "../kept-paper.ts";
import type { KeptPaper } from "../kept-paper.ts";
import { sayIn, useLanguage, useSay } from "../language/language-context.ts";
import { Text } from "../language/text.tsx";
import { Refused } from "../refused.tsx";
import { saveText } from "../save-text.ts";
import { SeenPanel } from "./seen-panel.tsx";
import { useFlasks } from "./use-flasks.ts";
import "./flasks.css";

interface FlasksScreenProps {
  readonly job: JobDocument;
}

/** The screen of the demonstration, once the one that this browser keeps is at hand. */
export async function flasksScreen(): Promise<ComponentType<FlasksScreenProps>> {
  const paper = await keptPaper("demonstration");
  return (props) => <FlasksScreen {...props} paper={paper} />;
}

const FIRST: Picked = { count: 0, name: null, document: null, ...DEMOS[0] };

/** Flasks side by side, a slider for the steps, large enough for a projector. */
function FlasksScreen({ job, paper }: FlasksScreenProps & { paper: KeptPaper }): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  const [picked, setPicked] = useState(() => keptPicked(paper.newest()) ?? FIRST);
  const keeping = useKept(paper, picked);
  const [step, setStep] = useState(Infinity);
  const [large, setLarge] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const flasks = useFlasks(picked);
  const { view } = flasks;
  const key = `${language.tag} ${String(picked.count)}`;
  const most = view === null ? 0 : view.steps.length - 1;
  const at = Math.min(step, most);
  const state = flasks.working ? "working" : view === null ? "blocked" : "done";
  return (
    <div
      className={large ? "page flasks-page large" : "page flasks-page"}
      data-flasks={state}
      data-keeping={keeping}
    >
      <FlasksToolbar
        name={picked.name}
        onPick={(next) => {
          setPicked(({ count }) => ({ ...next, count: count + 1 }));
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
        <Refused
          keeping={keeping}
          saveWords="Save the demonstration"
          onSave={() => {
            saveText(
              "demonstration.json",
              `${JSON.stringify(picked.document, null, 2)}\n`,
              "application/json",
            );
          }}
        />
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
            <h2>{language.page(view.show.title ?? say("Flasks side by side"))}</h2>
            {view.show.about !== null && (
              <p>
                <Text of={view.show.about} />
              </p>
            )}
            <Drawing view={view} step={at} />
            <label className="step-slider">
              <span>{say("Step {step} of {count}", { step: at, count: most })}</span>
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
            <FarmPanel key={`farm ${key}`} flasks={flasks} job={job} />
            <BenchPanel key={`bench ${key}`} flasks={flasks} show={view.show} />
            <SeenPanel show={view.show} check={flasks.check} onCompare={flasks.compare} />
            <Figures view={view} />
          </>
        )}
      </main>
    </div>
  );
}

/** What this browser kept of what was picked last: a ready demonstration as it is today, or a file of one's own. */
function keptPicked(found: unknown): Picked | null {
  if (typeof found !== "object" || found === null || !("name" in found) || !("document" in found))
    return null;
  const { name, document } = found;
  if (name === null) return { count: 0, name, document };
  const ready = DEMOS.find((demo) => demo.name === name);
  return ready === undefined ? null : { count: 0, ...ready };
}

/** The drawing of the report: its text is escaped where it is made. */
function Drawing({ view, step }: { view: ShowView; step: number }): ReactElement {
  const say = useSay();
  return (
    <div
      className="flasks-drawing"
      role="group"
      aria-label={say("The flasks, drawn")}
      tabIndex={0}
      dangerouslySetInnerHTML={{ __html: view.steps[step]?.drawing ?? "" }}
    />
  );
}

function Steps({ flasks }: { flasks: readonly FlaskStepView[] }): ReactElement {
  const say = useSay();
  return (
    <section>
      <h3>{say("What goes in, and who has the metal")}</h3>
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
  const { page } = useLanguage();
  const told = useSay();
  return (
    <>
      <strong>{page(flask)}</strong>: {added ?? told("as before")}. {look}.
      {say !== null && (
        <em>
          {" "}
          “<Text of={say} />”
        </em>
      )}
      {held.length > 0 && <span className="about"> {held.join("; ")}.</span>}
      {remarks.map((text) => (
        <span key={text} className="about">
          {" "}
          <Text of={text} />
        </span>
      ))}
    </>
  );
}

function Comparison({ view, working }: { view: ShowView; working: boolean }): ReactElement {
  const { show, order } = view;
  const language = useLanguage();
  const say = sayIn(language);
  const heads = [say("Two flasks"), say("Difference ΔE00"), say("By the constants"), say("Seen as")];
  return (
    <section>
      <h3>{say("Side by side, after the last step")}</h3>
      <p role="status">
        {working
          ? say("Working out how sure the colours are …")
          : say("From dark to light: {order}", { order })}
      </p>
      <div
        className="flask-scroll"
        role="group"
        aria-label={say("Side by side, after the last step")}
        tabIndex={0}
      >
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
            {show.pairs.map(({ a, b, deltaE00, low, high, verdict }) => (
              <tr key={`${a} ${b}`}>
                <th scope="row">
                  {language.page(a)} – {language.page(b)}
                </th>
                <td>{deltaE00.toFixed(0)}</td>
                <td>
                  {working ? "…" : say("{low} to {high}", { low: low.toFixed(0), high: high.toFixed(0) })}
                </td>
                <td>{language.page(verdict)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {show.sameContents.map((same) => (
        <p key={`${same.a} ${same.b}`}>{sameContentsText(same, language)}</p>
      ))}
    </section>
  );
}

function Figures({ view }: { view: ShowView }): ReactElement {
  const { show, estimates } = view;
  const { page } = useLanguage();
  const say = useSay();
  const citation = (key: string): string => show.sources.find((one) => one.key === key)?.citation ?? key;
  return (
    <details>
      <summary>
        {say("Where the optical figures come from.")} {estimates}
      </summary>
      <div
        className="flask-scroll"
        role="group"
        aria-label={say("Where the optical figures come from.")}
        tabIndex={0}
      >
        <table className="flask-pairs">
          <tbody>
            {show.optics.map((one) => (
              <tr key={`${one.species} ${one.what} ${one.value}`}>
                <th scope="row">{one.species}</th>
                <td>
                  {page(one.what)}: {one.value} {one.unit}
                </td>
                <td>
                  {one.estimate ? `${say("Estimate.")} ` : ""}
                  <span lang="en">
                    {citation(one.source)}
                    {one.locator === null ? "" : `; ${one.locator}`}
                  </span>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
