/**
 * The drawing of what must come before what: a box that takes the focus comes into sight as a whole. Left alone, a browser is
 * content with a corner of it.
 */
for (const drawing of document.querySelectorAll(".drawing")) {
  drawing.addEventListener("focusin", ({ target }) => {
    if (target !== drawing) (target as Element).scrollIntoView({ block: "nearest", inline: "nearest" });
  });
}

export {};
