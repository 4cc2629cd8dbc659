import type { ReactElement, ReactNode } from "react";
import { useSay } from "../language/language-context.ts";

interface SectionProps {
  readonly id: string;
  readonly title: string;
  readonly children: ReactNode;
  /** One line under the heading. */
  readonly lead?: string;
}

/** A group of the page with its heading, which the bottom bar of a phone can jump to. */
export function Section({ id, title, lead, children }: SectionProps): ReactElement {
  const say = useSay();
  return (
    <section id={id} className="section" aria-labelledby={`${id}-title`} data-section={say(title)}>
      <h3 id={`${id}-title`} tabIndex={-1}>
        {say(title)}
      </h3>
      {lead !== undefined && <p className="lead">{say(lead)}</p>}
      {children}
    </section>
  );
}
