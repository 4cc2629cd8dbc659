import type { ComponentProps, ReactElement } from "react";
import { Section } from "./section.tsx";

/**
 * A group of fields, as a form of its own. Browsers look through all fields that belong to no form at every key, to
 * offer to fill them: on a slow phone that was a fifth of the time to a new answer. Nothing is ever sent.
 */
export function FieldGroup({ children, ...section }: ComponentProps<typeof Section>): ReactElement {
  return (
    <Section {...section}>
      <form
        autoComplete="off"
        onSubmit={(event) => {
          event.preventDefault();
        }}
      >
        {children}
      </form>
    </Section>
  );
}
