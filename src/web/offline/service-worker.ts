import type { Workbox } from "workbox-window";

/** What is known of the service worker, which puts the page on the device. */
export interface WorkerState {
  /** True once everything is on this device. */
  readonly isReady: boolean;
  /** True when a newer version waits. It comes by itself once all windows are closed. */
  readonly isNewerReady: boolean;
}

/** How often [ms] a page that stays open looks for a newer version, at most. */
const LOOK_AGAIN_MS = 3_600_000;

let state: WorkerState = { isReady: false, isNewerReady: false };
let worker: Workbox | null = null;
const listeners = new Set<() => void>();

function set(change: Partial<WorkerState>): void {
  state = { ...state, ...change };
  for (const tell of listeners) tell();
}

/** The state now; the same object until something changes. */
export function workerState(): WorkerState {
  return state;
}

/** Calls `tell` at every change. @returns how to end it */
export function onWorkerState(tell: () => void): () => void {
  listeners.add(tell);
  return () => {
    listeners.delete(tell);
  };
}

/** Takes the newer version at once: all windows start anew, with every text in its place. */
export function takeNewer(): void {
  worker?.messageSkipWaiting();
}

/**
 * Registers the service worker, whatever the screen, and follows it. Without one the page works as any other does, from
 * the network.
 *
 * @param atRest settles when nobody waits for an answer any more: what is put by for later must not keep it waiting
 */
export async function followServiceWorker(atRest: Promise<unknown>): Promise<void> {
  // A page from an address that is not secure has no service workers, whatever its type says.
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  void navigator.serviceWorker.ready.then(() => {
    set({ isReady: true });
  });
  await atRest;
  try {
    const { Workbox } = await import("workbox-window");
    const made = new Workbox("./sw.js", { updateViaCache: "none" });
    worker = made;
    made.addEventListener("waiting", () => {
      set({ isNewerReady: true });
    });
    // Whichever window took the newer version, none may go on with files that are gone.
    made.addEventListener("controlling", (event) => {
      if (event.isUpdate === true) window.location.reload();
    });
    lookNowAndThen(made);
    await made.register();
  } catch {
    return;
  }
}

/** Looks for a newer version when the page is shown again. */
function lookNowAndThen(worker: Workbox): void {
  let looked_ms = Date.now();
  window.document.addEventListener("visibilitychange", () => {
    if (window.document.visibilityState !== "visible" || Date.now() - looked_ms < LOOK_AGAIN_MS) return;
    looked_ms = Date.now();
    worker.update().catch(() => undefined);
  });
}
