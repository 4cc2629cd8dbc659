import { lazy } from "react";
import type { ComponentType, ReactElement } from "react";
import { useSay } from "./language/language-context.ts";

/**
 * A part of the page that is fetched apart, so that the first field does not wait for it. Where it cannot be had, that is
 * said in its place and the rest of the page goes on.
 *
 * @param load fetches the part; called when it is first shown
 */
export function late<Props extends object>(load: () => Promise<ComponentType<Props>>): ComponentType<Props> {
  return lazy(async () => {
    try {
      return { default: await load() };
    } catch {
      return { default: NotFetched };
    }
  });
}

function NotFetched(): ReactElement {
  const say = useSay();
  return (
    <p className="message message-error" role="alert">
      {say("A part of the page could not be fetched. Load the page again: what you typed is kept.")}
    </p>
  );
}
