/** Every page: has the site kept on the device, and tells of a newer edition. */
import { workerFile } from "../model/edition.ts";
import { NewerEdition } from "./offline/newer-edition.ts";

/** This script lies in a folder of the site's. */
const script = document.currentScript as HTMLScriptElement | null;
if (script !== null && isSecureContext && "serviceWorker" in navigator)
  void begin(new URL("../", script.src).href);

async function begin(root: string): Promise<void> {
  const notice = new NewerEdition();
  try {
    const registration = await navigator.serviceWorker.register(root + workerFile, {
      scope: root,
      updateViaCache: "none",
    });
    notice.watch(registration);
  } catch {
    // A browser may forbid it, as in private windows: the site works from the network.
  }
}
