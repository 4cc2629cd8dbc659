import { useCallback, useEffect, useState, useSyncExternalStore } from "react";
import { onWorkerState, takeNewer, workerState } from "./service-worker.ts";
import type { WorkerState } from "./service-worker.ts";

/** What the page knows about itself without a network. */
export interface OfflineView extends WorkerState {
  /** Takes the newer version at once: the page starts anew, with every text in its place. */
  useNewer(): void;
  /** Offers to install the page as an app; null where the browser has no such offer or it is installed. */
  readonly install: (() => void) | null;
}

/** What browsers that can install a page send; it is in no standard, so no library types it. */
interface InstallOffer extends Event {
  prompt(): Promise<unknown>;
}

/** Follows the service worker and the browser's offer to install the page. */
export function useOffline(): OfflineView {
  const state = useSyncExternalStore(onWorkerState, workerState, workerState);
  return { ...state, useNewer: takeNewer, install: useInstall() };
}

function useInstall(): (() => void) | null {
  const [offer, setOffer] = useState<InstallOffer | null>(null);
  useEffect(() => {
    const onOffer = (event: Event): void => {
      // The page has its own button for it.
      event.preventDefault();
      setOffer(event as InstallOffer);
    };
    const onInstalled = (): void => {
      setOffer(null);
    };
    window.addEventListener("beforeinstallprompt", onOffer);
    window.addEventListener("appinstalled", onInstalled);
    return () => {
      window.removeEventListener("beforeinstallprompt", onOffer);
      window.removeEventListener("appinstalled", onInstalled);
    };
  }, []);
  const install = useCallback(() => {
    // An offer can be taken up once.
    setOffer(null);
    offer?.prompt().catch(() => undefined);
  }, [offer]);
  return offer === null ? null : install;
}
