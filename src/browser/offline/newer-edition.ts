/** The line that says that a newer edition of the site is ready. */
import { t } from "../../engine/words.ts";
import { button, element } from "../page/element.ts";
import { take } from "./messages.ts";

export class NewerEdition {
  /** On the page before anything is said in it, so that it is read out. */
  readonly #place = element("div", { class: "newer-edition", role: "status" });

  constructor() {
    document.querySelector("main")?.before(this.#place);
  }

  watch(registration: ServiceWorkerRegistration): void {
    const look = (): void => {
      if (registration.waiting !== null && registration.active !== null) this.#say(registration);
    };
    look();
    registration.addEventListener("updatefound", () => {
      registration.installing?.addEventListener("statechange", look);
    });
  }

  #say(registration: ServiceWorkerRegistration): void {
    if (this.#place.hasChildNodes()) return;
    const use = button(t`Use it now`, () => useNow(registration));
    this.#place.append(element("p", {}, t`A newer edition of this site is ready.`, " ", use));
  }
}

/** The page begins anew with the newer edition. Another page may have taken it already. */
function useNow({ waiting }: ServiceWorkerRegistration): void {
  if (waiting === null) location.reload();
  waiting?.addEventListener("statechange", () => {
    if (waiting?.state === "activated") location.reload();
  });
  waiting?.postMessage(take);
}
