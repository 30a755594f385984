import { Photo } from "./parts/photo.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { template } from "./parts/template.tsx";

export const { data, render } = template("photographMonth", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <div class="contact">
      {page.photos.map((photo, index) => (
        <Photo of={photo} sizes="(min-width: 60rem) 22rem, 92vw" first={index === 0} dated />
      ))}
    </div>
  </Sheet>
));
