import { Sheet } from "./parts/sheet.tsx";
import { template } from "./parts/template.tsx";

export const { data, render } = template("notFound", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="summary">There is no sheet at this address. It may have been mistyped.</p>
    <ul class="advice">
      {page.ways.map(({ text, href }) => (
        <li>
          <a href={href}>{text}</a>
        </li>
      ))}
    </ul>
  </Sheet>
));
