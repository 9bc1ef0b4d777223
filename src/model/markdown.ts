/**
 * How Markdown is read: options of markdown-it, the same for the reader that makes the tokens and for the one that renders
 * them. HTML is not passed through; bare addresses are left as text, because no request leaves the site.
 */
export const markdownOptions = { html: false, linkify: false, typographer: true } as const;
