import { useEffect, useState } from "react";
import type { ReactElement } from "react";
import { findJob } from "../../records/index.ts";
import { jobName } from "../jobs/job-content.ts";
import type { BookView } from "../jobs/use-book.ts";
import { useSay } from "../language/language-context.ts";
import { saveText } from "../save-text.ts";
import { jobLink } from "./job-link.ts";

interface SendProps {
  readonly view: BookView;
  readonly onSaid: (words: string) => void;
  readonly onOpenLink: (text: string) => Promise<void>;
}

/** Sends the open job as a link or as a file, and opens a link that was sent. */
export function SendJob({ view, onSaid, onOpenLink }: SendProps): ReactElement {
  const job = findJob(view.book, view.book.open);
  const link = useLinkOf(job?.document ?? {});
  const say = useSay();
  const name = job === null ? "" : jobName(job, say);
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(link);
      onSaid(say("Link copied. It holds the whole job in {count} characters.", { count: link.length }));
    } catch {
      window.document.querySelector<HTMLInputElement>("#job-link")?.select();
      onSaid(say("The browser does not let the page copy. The link is marked; copy it by hand."));
    }
  };
  return (
    <>
      <h3>{say("Send the open job")}</h3>
      <p className="about">
        {say("The job is in the link itself. No server keeps it; whoever has the link can read it.")}
        {isOnThisComputer() &&
          ` ${say("This page runs on this computer alone: the other side pastes the link into its own page, below.")}`}
      </p>
      <div className="add-row">
        <div className="field">
          <label htmlFor="job-link">{say("Link that holds “{name}”", { name })}</label>
          <input
            id="job-link"
            type="text"
            readOnly
            value={link}
            onFocus={(event) => {
              event.target.select();
            }}
          />
        </div>
        <button type="button" onClick={() => void copy()}>
          {say("Copy the link")}
        </button>
        {"share" in navigator && (
          <button
            type="button"
            className="quiet"
            onClick={() => {
              // A person who thinks better of it is no fault.
              navigator.share({ title: name, url: link }).catch(() => undefined);
            }}
          >
            {say("Send the link")}
          </button>
        )}
        <button
          type="button"
          className="quiet"
          onClick={() => {
            saveText(fileName(name), `${JSON.stringify(job?.document, null, 2)}\n`, "application/json");
            onSaid(say("“{name}” saved as a file. “Open file” opens it, here and elsewhere.", { name }));
          }}
        >
          {say("Save as a file")}
        </button>
      </div>
      <SentLink onOpen={onOpenLink} />
    </>
  );
}

/** Opens a link that another person sent. */
function SentLink({ onOpen }: { onOpen: (text: string) => Promise<void> }): ReactElement {
  const say = useSay();
  const [pasted, setPasted] = useState("");
  return (
    <form
      className="add-row"
      onSubmit={(event) => {
        event.preventDefault();
        setPasted("");
        void onOpen(pasted);
      }}
    >
      <div className="field">
        <label htmlFor="pasted-link">{say("A link that was sent to you")}</label>
        <input
          id="pasted-link"
          type="text"
          autoComplete="off"
          value={pasted}
          onChange={(event) => {
            setPasted(event.target.value);
          }}
        />
      </div>
      <button type="submit" className="quiet">
        {say("Open the link")}
      </button>
    </form>
  );
}

/** The link of a document, as soon as it is made. */
function useLinkOf(document: Readonly<Record<string, unknown>>): string {
  const [link, setLink] = useState("");
  useEffect(() => {
    let isNewest = true;
    void jobLink(document, window.location.href).then((made) => {
      if (isNewest) setLink(made);
    });
    return () => {
      isNewest = false;
    };
  }, [document]);
  return link;
}

/** A file name that every system takes. */
function fileName(name: string): string {
  const plain = name.replaceAll(/[^\p{L}\p{N}]+/gu, "-").replaceAll(/^-|-$/g, "");
  return `${plain.slice(0, 60) || "job"}.json`;
}

function isOnThisComputer(): boolean {
  return ["127.0.0.1", "localhost", "[::1]"].includes(window.location.hostname);
}
