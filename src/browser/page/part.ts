/**
 * What a script of a page works on: the part in whose end it stands, where several pages have become one document, and
 * the whole document otherwise. It is known only while the script begins.
 */
export const part: ParentNode = document.currentScript?.closest("[data-part]") ?? document;
