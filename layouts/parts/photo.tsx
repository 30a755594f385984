import type {
  PhotoView,
  PictureView,
  ThumbnailView,
} from "../../src/present/pages/views/photo-view.ts";
import { Joined, Words } from "./words.tsx";

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
        width={of.width}
        height={of.height}
        alt={of.alt}
        decoding="async"
        {...(first ? { fetchpriority: "high" } : { loading: "lazy" })}
      />
    </picture>
  );
}

/** The smallest size, for lists. */
export function Thumbnail({ of }: { of: ThumbnailView }) {
  return (
    <picture>
      <source type="image/avif" srcset={of.avif} />
      <img src={of.jpeg} width={of.width} height={of.height} alt={of.alt} loading="lazy" />
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
          {caption}{" "}
          {(dated || step || assembly || shows.length > 0) && (
            <small>
              <Joined
                by=", "
                of={[
                  dated && <Words of={day} />,
                  (step ?? assembly) && <Words of={step ?? assembly ?? day} />,
                  shows.length > 0 && `shows ${shows.join(", ")}`,
                ]}
              />
            </small>
          )}
        </span>
      </figcaption>
    </figure>
  );
}
