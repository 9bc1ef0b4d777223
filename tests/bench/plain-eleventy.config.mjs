/**
 * What the build is measured against: Eleventy as it comes, with one Nunjucks layout, on the same Markdown. It renders
 * front matter and prose; of steps, trays and questions it knows nothing.
 */
const layout = `<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><title>{{ title }}</title><meta name="description" content="{{ summary }}"></head>
<body>
<header><a href="/">Home</a></header>
<main>
<h1>{{ title }}</h1>
{{ content | safe }}
</main>
</body>
</html>
`;

export default function configure(settings) {
  settings.addTemplate("_includes/page.njk", layout);
  settings.addGlobalData("layout", "page.njk");
  return { templateFormats: ["md"], markdownTemplateEngine: "njk" };
}
