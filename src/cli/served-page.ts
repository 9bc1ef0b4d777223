/** What a page says while its content is being written: that it has changed, or what is wrong with it. */

/** Pages load this as a file of the site's own origin, as the policy of the pages demands. */
export const servedScript = `const changes = new EventSource("/_changes");
changes.onmessage = () => location.reload();
changes.addEventListener("faults", (event) => {
  const report = JSON.parse(event.data);
  const old = document.getElementById("content-faults");
  const box = document.createElement("section");
  box.id = "content-faults";
  box.setAttribute("role", "alert");
  box.setAttribute("aria-label", "Faults of the content");
  box.style.cssText = "padding:1rem;border:4px double;background:Canvas;color:CanvasText;max-height:60vh;overflow:auto";
  const heading = document.createElement("p");
  heading.style.cssText = "font-weight:bold;margin:0";
  heading.textContent = "The content has faults. Below them stands the last good site; it is made anew once they are mended.";
  const text = document.createElement("pre");
  text.style.cssText = "white-space:pre-wrap;margin:1rem 0 0";
  text.textContent = report;
  box.append(heading, text);
  box.tabIndex = 0;
  if (old) old.replaceWith(box);
  else document.body.prepend(box);
});
navigator.serviceWorker?.getRegistrations().then((all) => all.forEach((each) => each.update().catch(() => {})));
`;

/** The script's place in a page. */
export const withScript = (page: string): string =>
  page.replace("</body>", '<script src="/_reload.js"></script></body>');

/** Shown in place of any page while there is no good site yet. */
export const noSite = withScript(`<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>No site yet</title></head>
<body><main><h1>There is no site yet</h1><p>The content has faults. The site is made, and this page replaced, once they are mended.</p></main></body></html>
`);
