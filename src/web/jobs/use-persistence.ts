import { useCallback, useEffect, useState } from "react";

/** Whether the browser promised not to clear the jobs when space runs short; "unknown" where it cannot say. */
export type Persistence = "promised" | "not promised" | "unknown";

const ASKED = "hardstand asked to keep";

/**
 * The browser's promise to keep what is stored. It is asked for by itself once a device, when there is something worth
 * keeping; some browsers then ask the person.
 *
 * @param isWorthKeeping true as soon as a person's own words are stored
 */
export function usePersistence(isWorthKeeping: boolean): {
  readonly persistence: Persistence;
  ask(): void;
} {
  const [persistence, setPersistence] = useState<Persistence>("unknown");
  const ask = useCallback(() => {
    void promised((storage) => storage.persist()).then(setPersistence);
  }, []);
  useEffect(() => {
    void promised((storage) => storage.persisted()).then(setPersistence);
  }, []);
  useEffect(() => {
    if (isWorthKeeping && persistence === "not promised" && isFirstTime()) ask();
  }, [isWorthKeeping, persistence, ask]);
  return { persistence, ask };
}

async function promised(question: (storage: StorageManager) => Promise<boolean>): Promise<Persistence> {
  // Only a page from a secure address has a storage manager, whatever its type says.
  const storage = navigator.storage as StorageManager | undefined;
  if (storage === undefined) return "unknown";
  try {
    return (await question(storage)) ? "promised" : "not promised";
  } catch {
    return "unknown";
  }
}

function isFirstTime(): boolean {
  try {
    if (window.localStorage.getItem(ASKED) !== null) return false;
    window.localStorage.setItem(ASKED, "yes");
    return true;
  } catch {
    return false;
  }
}
