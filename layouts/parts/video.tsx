import type { VideoView } from "../../src/present/pages/views/video-view.ts";
import { Picture } from "./photo.tsx";
import { Table } from "./table.tsx";
import { Joined, Words } from "./words.tsx";

/** A recording: its picture and its times. Nothing of it is loaded before it is followed. */
export function Video({ of }: { of: VideoView }) {
  const { title, href, where, length, picture, step, assembly, times } = of;
  const still = picture && (
    <Picture
      of={{ ...picture, alt: `Still: ${picture.alt}` }}
      sizes="(min-width: 60rem) 24rem, 92vw"
    />
  );
  return (
    <article class="video" id={of.anchor} aria-labelledby={`${of.anchor}-head`}>
      {still && <p data-pagefind-ignore>{still}</p>}
      <div>
        <h3 id={`${of.anchor}-head`}>{href === undefined ? title : <a href={href}>{title}</a>}</h3>
        <p class="legend">
          <Joined
            by=", "
            of={[
              length !== undefined && `${length} long`,
              where,
              (step ?? assembly) && <Words of={step ?? assembly ?? { text: "" }} />,
            ]}
          />
        </p>
        {times.length > 0 && (
          <Table caption={`Times in ${title}`} quiet heads={["#Time", "What is seen", "Step"]}>
            {times.map((each) => (
              <tr>
                <th scope="row" class="n">
                  {each.href === undefined ? each.at : <a href={each.href}>{each.at}</a>}
                </th>
                <td>{each.what}</td>
                <td class="nb">{each.step && <Words of={each.step} />}</td>
              </tr>
            ))}
          </Table>
        )}
      </div>
    </article>
  );
}
