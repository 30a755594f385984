import type { Light, LightName } from "./light.ts";
import type { Random } from "./random.ts";
import { hex, type Rgb, scaled, unit, type Vec3 } from "./vector.ts";

/** Which light a picture taken at this hour of this month has. */
export function lightAt(month: number, hour: number, random: Random): LightName {
  const summer = Math.cos(((month - 6.7) / 12) * 2 * Math.PI);
  const sunset = 18.2 + 2.2 * summer;
  const sunrise = 6.4 - 1.2 * summer;
  if (hour > sunset + 0.6 || hour < sunrise) return random.chance(0.62) ? "lamp" : "strip";
  if (hour > sunset - 0.8) return "dusk";
  return random.chance(0.3) ? "sun" : "daylight";
}

const warm: Rgb = [1, 0.74, 0.47];
const warmer: Rgb = [1, 0.66, 0.36];
const cool: Rgb = hex("#cfe0ff");
const neutral: Rgb = hex("#fff4e4");

/**
 * The light of a shop.
 *
 * @param from Which side the main light is on, degrees round the upright axis
 *   from the viewer: -90 is the left, 90 the right, 180 behind the subject.
 */
export function shopLight(name: LightName, from: number, random: Random): Light {
  const toward = (round: number, above: number): Vec3 => {
    const [r, a] = [(round * Math.PI) / 180, (above * Math.PI) / 180];
    return unit([Math.sin(r) * Math.cos(a), Math.sin(a), Math.cos(r) * Math.cos(a)]);
  };
  const sway = random.sway(10);
  switch (name) {
    case "lamp":
      return {
        zenith: [0.085, 0.1, 0.13],
        horizon: [0.13, 0.105, 0.09],
        ground: [0.1, 0.066, 0.04],
        indoors: true,
        patches: [
          { toward: toward(from + sway, 48), wide: 15, high: 11, color: scaled(warm, 7) },
          { toward: toward(from + 150, 22), wide: 24, high: 15, color: [0.16, 0.25, 0.42] },
          { toward: toward(from - 70, 30), wide: 9, high: 26, color: scaled(warmer, 0.5) },
        ],
        lamps: [
          {
            toward: toward(from + sway, 50 + random.sway(6)),
            away: 3.2,
            radius: 0.3,
            color: scaled(warm, 2.1),
            cone: 40,
          },
        ],
        exposure: 1.12,
        vignette: 0.52,
        cast: [1, 1, 1.04],
      };
    case "strip":
      return {
        zenith: [0.34, 0.34, 0.33],
        horizon: [0.26, 0.255, 0.24],
        ground: [0.17, 0.145, 0.12],
        indoors: true,
        patches: [
          { toward: toward(from + 90, 74), wide: 7, high: 44, color: scaled(neutral, 4.2) },
          { toward: toward(from - 60, 52), wide: 6, high: 40, color: scaled(neutral, 3.2) },
          { toward: toward(from + 160, 16), wide: 18, high: 12, color: [0.1, 0.14, 0.24] },
        ],
        lamps: [
          {
            toward: toward(from + sway, 68),
            away: 3.2,
            radius: 0.85,
            color: scaled(neutral, 1.15),
          },
        ],
        exposure: 0.98,
        vignette: 0.34,
        cast: [1.0, 1.0, 0.97],
      };
    case "sun":
      return {
        zenith: [0.42, 0.45, 0.5],
        horizon: [0.36, 0.35, 0.34],
        ground: [0.27, 0.225, 0.18],
        indoors: true,
        patches: [
          { toward: toward(from - 8, 30), wide: 34, high: 24, color: scaled(cool, 1.9) },
          { toward: toward(from - 130, 40), wide: 16, high: 12, color: scaled(cool, 0.7) },
        ],
        lamps: [
          {
            toward: toward(from + sway, 36 + random.sway(5)),
            away: 9,
            radius: 0.22,
            color: scaled([1, 0.84, 0.62], 2.2),
          },
        ],
        exposure: 0.8,
        vignette: 0.3,
        cast: [1.02, 1, 0.97],
      };
    case "dusk":
      return {
        zenith: [0.18, 0.19, 0.24],
        horizon: [0.28, 0.22, 0.19],
        ground: [0.17, 0.12, 0.085],
        indoors: true,
        patches: [
          { toward: toward(from, 16), wide: 36, high: 15, color: scaled([1, 0.6, 0.36], 1.7) },
          {
            toward: toward(from + 140, 34),
            wide: 26,
            high: 20,
            color: scaled(hex("#8fb0e8"), 0.7),
          },
        ],
        lamps: [
          {
            toward: toward(from + sway, 27 + random.sway(4)),
            away: 6,
            radius: 0.5,
            color: scaled([1, 0.62, 0.36], 1.75),
          },
        ],
        exposure: 1.05,
        vignette: 0.42,
        cast: [1.03, 1, 0.96],
      };
    case "daylight":
      return {
        zenith: [0.44, 0.46, 0.5],
        horizon: [0.38, 0.38, 0.38],
        ground: [0.25, 0.22, 0.185],
        indoors: true,
        patches: [
          { toward: toward(from, 30), wide: 38, high: 26, color: scaled(cool, 1.6) },
          { toward: toward(from + 125, 42), wide: 18, high: 14, color: scaled(cool, 0.6) },
        ],
        lamps: [
          {
            toward: toward(from + sway, 40 + random.sway(6)),
            away: 3,
            radius: 0.75,
            color: scaled(hex("#eef3ff"), 1.15),
          },
        ],
        exposure: 0.98,
        vignette: 0.32,
        cast: [0.99, 1, 1.01],
      };
  }
}

/** What the sky is like. */
interface Sky {
  readonly night: boolean;
  readonly winter: boolean;
  readonly evening: boolean;
}

/** The light out of doors. */
export function openLight({ night, winter, evening }: Sky, from: number, random: Random): Light {
  const toward = (round: number, above: number): Vec3 => {
    const [r, a] = [(round * Math.PI) / 180, (above * Math.PI) / 180];
    return unit([Math.sin(r) * Math.cos(a), Math.sin(a), Math.cos(r) * Math.cos(a)]);
  };
  if (night) {
    return {
      zenith: [0.012, 0.02, 0.045],
      horizon: [0.05, 0.065, 0.11],
      ground: winter ? [0.05, 0.055, 0.075] : [0.02, 0.02, 0.025],
      indoors: false,
      patches: [],
      lamps: [{ toward: toward(from, 52), away: 6, radius: 0.1, color: [0.05, 0.07, 0.13] }],
      exposure: 1.7,
      vignette: 0.4,
      cast: [1, 1, 1.02],
    };
  }
  const grey = winter && random.chance(0.6);
  return {
    zenith: grey ? [0.5, 0.53, 0.58] : [0.26, 0.42, 0.72],
    horizon: evening ? [0.95, 0.66, 0.45] : grey ? [0.72, 0.74, 0.77] : [0.78, 0.86, 0.95],
    ground: winter ? [0.5, 0.52, 0.56] : [0.2, 0.21, 0.13],
    indoors: false,
    patches: [],
    lamps: [
      {
        toward: toward(from, evening ? 15 + random.between(0, 6) : winter ? 26 : 44),
        away: 9,
        radius: grey ? 1.6 : 0.16,
        color: evening ? [2.4, 1.45, 0.8] : grey ? [0.5, 0.5, 0.5] : [1.9, 1.66, 1.36],
      },
    ],
    exposure: grey ? 0.82 : 0.72,
    vignette: 0.26,
    cast: evening ? [1.02, 1, 0.97] : [1, 1, 1],
  };
}
