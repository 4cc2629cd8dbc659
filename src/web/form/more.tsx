import type { ReactElement, ReactNode } from "react";
import { useSay } from "../language/language-context.ts";
import { useForm } from "./form-context.ts";

interface MoreProps {
  /** What is behind it. */
  readonly title: string;
  /** How many of its questions were answered, so that a closed one hides nothing. */
  readonly said: number;
  /** Paths of the document behind it. */
  readonly paths: readonly string[];
  readonly children: ReactNode;
}

/** Questions that not every job needs, folded away. What was filled in, or is wrong there, is told on the outside. */
export function More({ title, said, paths, children }: MoreProps): ReactElement {
  const { issues } = useForm();
  const say = useSay();
  const wrong = issues.some(
    ({ path, severity, missing }) =>
      severity === "error" && !missing && paths.some((own) => path === own || isUnder(path, own)),
  );
  const told = [
    ...(said > 0 ? [say("{count} filled in", { count: said })] : []),
    ...(wrong ? [say("▲ to look at")] : []),
  ];
  return (
    <details className="more">
      <summary>
        <span>
          {say(title)}
          {told.length > 0 && <span className="more-told"> ({told.join(", ")})</span>}
        </span>
      </summary>
      {children}
    </details>
  );
}

function isUnder(path: string, above: string): boolean {
  return path.startsWith(`${above}.`) || path.startsWith(`${above}[`);
}
