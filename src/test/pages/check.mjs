// Holds pages of HTML to a validator and, in a browser, to a checker of accessibility: on a
// telephone, on a desk and in print, by day and by night. Ends with 1 if anything is wrong.
// node check.mjs BROWSER FOLDER: every *.html in FOLDER; screenshots go beside them.
import { readFileSync, readdirSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";
import { HtmlValidate } from "html-validate";
import { chromium } from "playwright-core";

const [browserPath, folder] = process.argv.slice(2);
const pages = readdirSync(folder)
  .filter((name) => name.endsWith(".html"))
  .sort();
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const faults = [];
const LONGEST = 16000;

// Pages are XML as well as HTML, so empty elements close themselves.
const validator = new HtmlValidate({
  extends: ["html-validate:standard", "html-validate:a11y"],
  rules: { "void-style": ["error", { style: "selfclose" }], "no-inline-style": "error" },
});

async function validated(file) {
  const report = await validator.validateFile(file);
  for (const result of report.results) {
    for (const one of result.messages) {
      faults.push(`${basename(file)}:${one.line}:${one.column} ${one.ruleId}: ${one.message}`);
    }
  }
}

const views = [
  { name: "phone", viewport: { width: 390, height: 844 }, colorScheme: "light" },
  { name: "phone-dark", viewport: { width: 390, height: 844 }, colorScheme: "dark" },
  { name: "desk", viewport: { width: 1280, height: 900 }, colorScheme: "light" },
  { name: "desk-dark", viewport: { width: 1280, height: 900 }, colorScheme: "dark" },
  // The room between the margins of a sheet of A4 and of Letter, at 96 dots to the inch.
  { name: "a4", viewport: { width: 688, height: 1000 }, colorScheme: "light", media: "print" },
  { name: "letter", viewport: { width: 710, height: 940 }, colorScheme: "light", media: "print" },
];

async function seen(browser, file, view) {
  const context = await browser.newContext({
    viewport: view.viewport,
    colorScheme: view.colorScheme,
  });
  const page = await context.newPage();
  const where = `${basename(file)} (${view.name})`;
  page.on("request", (request) => {
    if (request.url() !== pathToFileURL(file).href) {
      faults.push(`${where} fetches ${request.url()}`);
    }
  });
  page.on("console", (message) => faults.push(`${where} says ${message.text()}`));
  await page.emulateMedia({ media: view.media ?? "screen", colorScheme: view.colorScheme });
  await page.goto(pathToFileURL(file).href);
  await page.evaluate(axe);
  const found = await page.evaluate(() => window.axe.run(document));
  for (const one of found.violations) {
    for (const node of one.nodes) {
      faults.push(`${where} ${one.id}: ${one.help}: ${node.html.slice(0, 160)}`);
    }
  }
  const [wide, room, long] = await page.evaluate(() => [
    document.documentElement.scrollWidth,
    document.documentElement.clientWidth,
    document.documentElement.scrollHeight,
  ]);
  if (wide > room) {
    faults.push(`${where} is ${wide} wide in ${room}`);
  }
  // A picture of a whole book is more than a browser can draw.
  await page.screenshot({
    path: file.replace(/html$/, `${view.name}.png`),
    fullPage: long <= LONGEST,
  });
  await context.close();
}

const browser = await chromium.launch({ executablePath: browserPath, args: ["--no-sandbox"] });
for (const name of pages) {
  const file = resolve(join(folder, name));
  await validated(file);
  for (const view of views) {
    await seen(browser, file, view);
  }
}
await browser.close();
faults.forEach((fault) => console.log(fault));
console.log(`${pages.length} pages, ${views.length} views each, ${faults.length} faults`);
process.exit(pages.length > 0 && faults.length === 0 ? 0 : 1);
