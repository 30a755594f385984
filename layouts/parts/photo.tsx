import type { PhotoView, PictureView } from "../../src/present/pages/views/photo-view.ts";
import { Words } from "./words.tsx";

/** The picture alone. `first` is for the one seen before scrolling. */
export function Picture({
  of,
  sizes,
  first = false,
}: {
  of: PictureView;
  sizes: string;
  first?: boolean;
}) {
  return (
    <picture>
      <source type="image/avif" srcset={of.avif} sizes={sizes} />
      <img
        src={of.src}
        srcset={of.jpeg}
        sizes={sizes}
        width={of.width}
        height={of.height}
        alt={of.alt}
        decoding="async"
        {...(first ? { fetchpriority: "high" } : { loading: "lazy" })}
      />
    </picture>
  );
}

/** A photograph with its numbered balloon and what it shows. */
export function Photo({
  of,
  sizes,
  first = false,
  dated = false,
}: {
  of: PhotoView;
  sizes: string;
  first?: boolean;
  dated?: boolean;
}) {
  const { picture, number, caption, day, step, assembly, shows } = of;
  return (
    <figure class="photo" id={of.anchor}>
      {picture ? (
        <a href={picture.full}>
          <Picture of={picture} sizes={sizes} first={first} />
        </a>
      ) : (
        <p class="missing">This photograph could not be read, so there is nothing to show.</p>
      )}
      <figcaption>
        <span class="balloon">{number}</span>
        <span>
          {caption}
          {(dated || step || assembly || shows.length > 0) && (
            <small>
              {dated && (
                <span>
                  <Words of={day} />
                </span>
              )}
              {(step ?? assembly) && (
                <span>
                  <Words of={step ?? assembly ?? day} />
                </span>
              )}
              {shows.length > 0 && <span>shows {shows.join(", ")}</span>}
            </small>
          )}
        </span>
      </figcaption>
    </figure>
  );
}
