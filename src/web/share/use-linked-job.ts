import { useCallback, useEffect, useState } from "react";
import { addJob, openJob, samePlain } from "../../records/index.ts";
import { draftOf } from "../job/from-document.ts";
import { contentOf, jobName } from "../jobs/job-content.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { newStamp } from "../jobs/start-book.ts";
import type { BookView } from "../jobs/use-book.ts";
import { holdsJob, readJobLink } from "./job-link.ts";

/** What became of a link. */
export interface LinkOutcome {
  readonly ok: boolean;
  readonly words: string;
}

/** Opens jobs that come in a link: the page's own address, or a text with a link in it. */
export function useLinkedJob(view: BookView): {
  readonly outcome: LinkOutcome | null;
  openLink(text: string): Promise<void>;
} {
  const { change } = view;
  const language = useLanguage();
  const [outcome, setOutcome] = useState<LinkOutcome | null>(null);
  const openLink = useCallback(
    async (text: string): Promise<void> => {
      const say = sayIn(language);
      const read = await readJobLink(text);
      if (!read.ok) {
        setOutcome({ ok: false, words: say(read.problem) });
        return;
      }
      const content = contentOf({ draft: draftOf(read.document, "file"), undo: [] });
      const stamp = newStamp();
      change((book) => {
        // The same link is opened more than once; its job is then there already.
        const there = book.jobs.find((job) => samePlain(job.document, content.document));
        return there === undefined
          ? addJob(book, content, { ...stamp, untouched: false })
          : openJob(book, there.id);
      });
      setOutcome({
        ok: true,
        words: say("“{name}” came with the link and is open.", { name: jobName(content, say) }),
      });
    },
    [change, language],
  );
  useEffect(() => {
    const look = (): void => {
      const { hash, pathname, search } = window.location;
      if (!holdsJob(hash)) return;
      // Taken out of the address, so that a reload goes on with what was typed since.
      window.history.replaceState(null, "", `${pathname}${search}`);
      void openLink(hash);
    };
    look();
    window.addEventListener("hashchange", look);
    return () => {
      window.removeEventListener("hashchange", look);
    };
  }, [openLink]);
  return { outcome, openLink };
}
