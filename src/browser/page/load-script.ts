/** Loads a classic script of the site, which works from disk too. Rejects where it does not come. */
export function loadScript(src: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = src;
    script.addEventListener("load", () => resolve());
    script.addEventListener("error", () => reject(new Error(`${src} does not come`)));
    document.head.append(script);
  });
}
