import type { ReactElement } from "react";
import { useSay } from "../language/language-context.ts";
import { useOffline } from "./use-offline.ts";
import "./offline.css";

/** Whether the page works without a network, the way to install it, and the newer version when there is one. */
export function OfflineBar(): ReactElement {
  const say = useSay();
  const { isReady, isNewerReady, useNewer, install } = useOffline();
  return (
    <div className="offline" data-offline={isReady ? "ready" : "not yet"}>
      <p className="about" role="status">
        {isReady ? say("Works without a network.") : ""}
      </p>
      {install !== null && (
        <button type="button" className="quiet" onClick={install}>
          {say("Install on this device")}
        </button>
      )}
      {isNewerReady && (
        <div className="message message-note" role="status">
          <p>
            {say(
              "A newer Hardstand is here. It starts when you next open the page, or now; nothing typed is lost.",
            )}
          </p>
          <button type="button" onClick={useNewer}>
            {say("Start the newer one now")}
          </button>
        </div>
      )}
    </div>
  );
}
