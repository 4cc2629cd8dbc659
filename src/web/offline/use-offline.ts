import { useCallback, useEffect, useRef, useState } from "react";
import type { Workbox } from "workbox-window";

/** What the page knows about itself without a network. */
export interface OfflineView {
  /** True once everything is on this device. */
  readonly isReady: boolean;
  /** True when a newer version waits. It comes by itself once all windows are closed. */
  readonly isNewerReady: boolean;
  /** Takes the newer version at once: the page starts anew, with every text in its place. */
  useNewer(): void;
  /** Offers to install the page as an app; null where the browser has no such offer or it is installed. */
  readonly install: (() => void) | null;
}

/** What browsers that can install a page send; it is in no standard, so no library types it. */
interface InstallOffer extends Event {
  prompt(): Promise<unknown>;
}

/** How often [ms] a page that stays open looks for a newer version, at most. */
const LOOK_AGAIN_MS = 3_600_000;

/** Registers the service worker and follows it. */
export function useOffline(): OfflineView {
  const [isReady, setReady] = useState(false);
  const [isNewerReady, setNewerReady] = useState(false);
  const worker = useRef<Workbox | null>(null);
  useEffect(() => {
    // A page from an address that is not secure has no service workers, whatever its type says.
    if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
    let stop: (() => void) | null = () => undefined;
    const follow = async (): Promise<void> => {
      const made = await newWorker();
      if (stop === null) return;
      worker.current = made;
      made.addEventListener("waiting", () => {
        setNewerReady(true);
      });
      // Whichever window took the newer version, none may go on with files that are gone.
      made.addEventListener("controlling", (event) => {
        if (event.isUpdate === true) window.location.reload();
      });
      void navigator.serviceWorker.ready.then(() => {
        setReady(true);
      });
      stop = lookNowAndThen(made);
      await made.register();
    };
    // Without a service worker the page works as any other does, from the network.
    follow().catch(() => undefined);
    return () => {
      stop?.();
      stop = null;
    };
  }, []);
  const useNewer = useCallback(() => {
    worker.current?.messageSkipWaiting();
  }, []);
  return { isReady, isNewerReady, useNewer, install: useInstall() };
}

/** What follows a service worker is fetched when the page stands: the first field does not wait for it. */
async function newWorker(): Promise<Workbox> {
  const { Workbox } = await import("workbox-window");
  return new Workbox("./sw.js", { updateViaCache: "none" });
}

/** Looks for a newer version when the page is shown again. @returns how to stop it */
function lookNowAndThen(worker: Workbox): () => void {
  let looked_ms = Date.now();
  const look = (): void => {
    if (window.document.visibilityState !== "visible" || Date.now() - looked_ms < LOOK_AGAIN_MS) return;
    looked_ms = Date.now();
    worker.update().catch(() => undefined);
  };
  window.document.addEventListener("visibilitychange", look);
  return () => {
    window.document.removeEventListener("visibilitychange", look);
  };
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
