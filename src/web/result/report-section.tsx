import type { ReactElement } from "react";
import type { Programme } from "../../agronomy/index.ts";
import type { EngineView } from "../engine/use-engine.ts";
import { Section } from "../form/section.tsx";
import { useSay } from "../language/language-context.ts";
import { saveText } from "../save-text.ts";

interface ReportSectionProps {
  readonly plan: number;
  readonly programme: Programme;
  readonly askAbout: EngineView<"plan">["askAbout"];
}

/** The report on the picked way, to print or to save as one file. */
export function ReportSection({ plan, programme, askAbout }: ReportSectionProps): ReactElement {
  const say = useSay();
  const withReport = async (use: (page: string) => void): Promise<void> => {
    const reply = await askAbout({ plan, programme: programme.id, what: "report" });
    if (reply !== null) use(reply.report);
  };
  return (
    <Section
      id="section-report"
      title="Report for the grower"
      lead="A page of plain words, then the reasoning, then the sources."
    >
      <div className="asks">
        <button
          type="button"
          onClick={() =>
            void withReport((page) => {
              printPage(page, say("Report for the grower"));
            })
          }
        >
          {say("Print the report")}
        </button>
        <button
          type="button"
          className="quiet"
          onClick={() =>
            void withReport((page) => {
              saveText("report.html", page, "text/html");
            })
          }
        >
          {say("Save the report (HTML)")}
        </button>
      </div>
    </Section>
  );
}

/** Prints a page by itself, out of a frame that is not seen. */
function printPage(page: string, title: string): void {
  const frame = document.createElement("iframe");
  frame.className = "print-frame";
  frame.title = title;
  frame.setAttribute("aria-hidden", "true");
  frame.srcdoc = page;
  frame.onload = () => {
    frame.contentWindow?.addEventListener("afterprint", () => {
      frame.remove();
    });
    frame.contentWindow?.print();
  };
  document.body.append(frame);
}
