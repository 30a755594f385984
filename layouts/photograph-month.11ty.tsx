import { Photo } from "./parts/photo.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { template } from "./parts/template.tsx";

export const { data, render } = template("photographMonth", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    {page.days.map(({ id, text, photos }, index) => (
      <Section id={id} title={text} figure={`${photos.length}`}>
        <div class="contact">
          {photos.map((photo, place) => (
            <Photo
              of={photo}
              sizes="(min-width: 60rem) 22rem, 92vw"
              first={index + place === 0}
              dated
            />
          ))}
        </div>
      </Section>
    ))}
  </Sheet>
));
