/** Folders in which words for the site are marked. What commands say to authors stays in English. */
export const folders = ["layouts", "src/browser", "src/derive", "src/engine", "src/model", "src/render"];
