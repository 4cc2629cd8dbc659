import type { ReactElement, ReactNode } from "react";

interface SectionProps {
  readonly id: string;
  readonly title: string;
  readonly children: ReactNode;
  /** One line under the heading. */
  readonly lead?: string;
}

/** A group of the page with its heading, which the bottom bar of a phone can jump to. */
export function Section({ id, title, lead, children }: SectionProps): ReactElement {
  return (
    <section id={id} className="section" aria-labelledby={`${id}-title`} data-section={title}>
      <h3 id={`${id}-title`} tabIndex={-1}>
        {title}
      </h3>
      {lead !== undefined && <p className="lead">{lead}</p>}
      {children}
    </section>
  );
}
